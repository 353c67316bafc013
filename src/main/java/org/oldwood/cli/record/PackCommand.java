package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDateTime;
import java.util.Optional;
import org.oldwood.calendar.FileName;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Archive;
import org.oldwood.store.Journal;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the whole record as one dated archive, to keep elsewhere. */
@Command(
        name = "pack",
        description = {
            "write the whole record as one dated archive, to keep elsewhere",
            "",
            "A zip file that any system opens: the record, data of your own, a note on what",
            "is what, and check sums. Calendars and sheets are left out: they can be made again."
        },
        footer = {"", "Example:", "  oldwood pack --garden demo-data/terrace-school"})
public final class PackCommand extends GardenCommand {
    private static final String ABOUT = "ABOUT-THIS-ARCHIVE.txt";

    @Option(
            names = "--out",
            paramLabel = "FILE|DIR",
            description = "where to write; the current folder otherwise, as GARDEN-DATE.zip")
    Optional<Path> out = Optional.empty();

    @Override
    public int run() throws IOException {
        Optional<GardenFolder> good = opened();
        Archive archive = new Archive();
        gather(archive);
        String name = good.map(folder -> folder.garden().name()).orElse("garden");
        archive.add(ABOUT, about(name).getBytes(StandardCharsets.UTF_8));
        Path file = target(FileName.of(name) + "-" + today() + ".zip");
        boolean isNew = archive.write(file, dated());
        tell((isNew ? "Wrote " : "Unchanged: ")
                + file
                + ": "
                + archive.count()
                + " files, read again and the same. Keep it on another disk, or elsewhere.");
        return 0;
    }

    /** A record with problems is packed all the same: a broken one needs it most. */
    private Optional<GardenFolder> opened() throws IOException {
        if (!Files.isRegularFile(gardenPath().resolve(GardenFolder.GARDEN_FILE))) {
            folder();
        }
        try {
            return Optional.of(folder());
        } catch (RecordException e) {
            tell("The record has problems, and is packed as it is; oldwood check shows them.");
            return Optional.empty();
        }
    }

    private Path target(String name) {
        Path wanted = out.map(this::path).orElse(around().folder());
        return Files.isDirectory(wanted) || wanted.toString().isEmpty() ? wanted.resolve(name) : wanted;
    }

    private LocalDateTime dated() {
        return today().atStartOfDay();
    }

    /** Under the journal's lock, so that no entry is cut in two; where there can be none, without. */
    private void gather(Archive archive) throws IOException {
        Path folder = gardenPath();
        if (!Files.isWritable(folder)) {
            Files.walkFileTree(folder, new Gathering(folder, archive));
            return;
        }
        try (Journal.Writing held = new Journal(folder.resolve(GardenFolder.JOURNAL_FILE)).begin()) {
            Files.walkFileTree(folder, new Gathering(folder, archive));
        }
    }

    private static String about(String name) {
        return "The record of a garden, "
                + FileName.of(name)
                + ", packed by Oldwood. All text is UTF-8.\n\n"
                + "garden.json     what is declared: place, beds, choices (JSON)\n"
                + "journal.jsonl   what happened, one JSON object a line, oldest first as noted;\n"
                + "                \"entry\" says what, \"date\" when (year-month-day), the other keys\n"
                + "                what, where and how much, with the unit in the key's name\n"
                + "weather.csv     the days' weather, if there is any: degrees Celsius, mm\n"
                + "calendar-state.jsonl   what was last written to calendars; can be made again\n"
                + "crops, rules, materials, climates, season, sources   data of the garden's own\n"
                + Archive.SUMS
                + "      check sums: sha256sum -c "
                + Archive.SUMS
                + "\n\nTo use it again, unpack it into a folder: oldwood check --garden FOLDER\n";
    }

    /** Everything but what is hidden, can be made again, or is an archive itself. */
    private static final class Gathering extends SimpleFileVisitor<Path> {
        /** A record is text; what is larger lies in the folder by mistake. */
        private static final long LARGEST = 512L << 20;

        private final Path folder;
        private final Archive archive;

        Gathering(Path folder, Archive archive) {
            this.folder = folder;
            this.archive = archive;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path part, BasicFileAttributes about) {
            boolean isOther = !part.equals(folder) && (isHidden(part) || part.endsWith("calendars"));
            return isOther ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes about) throws IOException {
            String name = folder.relativize(file).toString().replace('\\', '/');
            boolean canBeMade = name.endsWith(".zip") || name.endsWith(".ics") || name.endsWith(".html");
            boolean isOurs = name.equals(ABOUT) || name.equals(Archive.SUMS);
            if (!about.isRegularFile() || isHidden(file) || canBeMade || isOurs) {
                return FileVisitResult.CONTINUE;
            }
            if (about.size() > LARGEST) {
                throw new RecordException(new Problem(
                        "too-large",
                        Place.of(name),
                        "has more than 512 MB, which no file of a record has",
                        "Take it out of the garden's folder."));
            }
            archive.add(name, Files.readAllBytes(file));
            return FileVisitResult.CONTINUE;
        }

        private static boolean isHidden(Path path) {
            return String.valueOf(path.getFileName()).startsWith(".");
        }
    }
}
