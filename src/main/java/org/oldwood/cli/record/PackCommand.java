package org.oldwood.cli.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.oldwood.calendar.FileName;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.RecordFiles;
import org.oldwood.store.Archive;
import org.oldwood.store.Fields;
import org.oldwood.store.Journal;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import org.oldwood.words.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the whole record as one dated archive, to keep elsewhere. */
@Command(name = "pack")
public final class PackCommand extends GardenCommand {
    static final String ABOUT = "ABOUT-THIS-ARCHIVE.txt";

    @Option(names = "--out", paramLabel = "FILE|DIR")
    Optional<Path> out = Optional.empty();

    @Option(names = "--replace")
    boolean replace;

    @Override
    public int run() throws IOException {
        String name = opened().map(folder -> folder.garden().name()).orElse("garden");
        Path file = target(FileName.of(name) + "-" + today() + ".zip");
        RecordFiles.mayReplace(gardenPath(), file, replace || isPackOf(gardenPath(), file));
        Archive archive = new Archive();
        archive.add(ABOUT, about(name).getBytes(StandardCharsets.UTF_8));
        boolean isNew = write(archive, file);
        tell("%s%s: %s files, read again and the same. Keep it on another disk, or elsewhere."
                .formatted(isNew ? "Wrote " : "Unchanged: ", file, archive.count()));
        return 0;
    }

    /** A record with problems is packed all the same: a broken one needs it most. */
    private Optional<GardenFolder> opened() {
        if (!Files.isRegularFile(gardenPath().resolve(GardenFolder.GARDEN_FILE))) { folder(); }
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

    /** Under the journal's lock, so that no entry is cut in two; where there can be none, without. */
    private boolean write(Archive archive, Path file) throws IOException {
        if (!Files.isWritable(gardenPath())) { return writeAll(archive, file); }
        try (Journal.Writing held = new Journal(gardenPath().resolve(GardenFolder.JOURNAL_FILE)).begin()) {
            return writeAll(archive, file);
        }
    }

    private boolean writeAll(Archive archive, Path file) throws IOException {
        Gathering gathering = new Gathering(gardenPath(), archive);
        gathering.all();
        gathering.leftOut().forEach(told -> tell("Note: " + told));
        return archive.write(file, today().atStartOfDay());
    }

    /** Whether a file is an archive of this garden's record; the same day's is written anew. */
    private static boolean isPackOf(Path folder, Path file) {
        if (!Files.isRegularFile(file)) { return false; }
        try (ZipFile zip = new ZipFile(file.toFile());
                InputStream now = Files.newInputStream(folder.resolve(GardenFolder.GARDEN_FILE))) {
            ZipEntry then = zip.getEntry(GardenFolder.GARDEN_FILE);
            return zip.getEntry(ABOUT) != null && then != null && id(zip.getInputStream(then)).equals(id(now));
        } catch (IOException e) {
            return false;
        }
    }

    private static Optional<String> id(InputStream garden) throws IOException {
        return JsonReader.read(garden, GardenFolder.GARDEN_FILE, new Problems())
                .flatMap(json -> Fields.of(json, new Problems()).optionalText("id"));
    }

    private static String about(String name) {
        return Texts.sections("archive.txt").getOrDefault("about", "").formatted(FileName.of(name), Archive.SUMS)
                .concat("\n");
    }
}
