package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.RecordFiles;
import org.oldwood.store.Archive;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.store.Text;

/**
 * Gathers a garden's folder for an archive: everything but what is hidden, can be made again, or is an archive itself.
 * The record may stand behind links, wherever they lead, since the program reads it there; other links are followed
 * where they lead to a file of the folder, and told where they lead out of it.
 */
final class Gathering {
    private final Path folder;
    private final Archive archive;
    private final List<String> leftOut = new ArrayList<>();

    Gathering(Path folder, Archive archive) {
        this.folder = folder;
        this.archive = archive;
    }

    /** What was left out that one might think was packed, in sentences. */
    List<String> leftOut() { return leftOut; }

    /**
     * Gathers all.
     *
     * @throws RecordException where the record itself cannot be read
     */
    void all() throws IOException {
        gather(folder, "", List.of(folder.toRealPath()));
        if (!Text.isThere(folder.resolve(GardenFolder.JOURNAL_FILE))) {
            archive.add(GardenFolder.JOURNAL_FILE, new byte[0]);
        }
        for (String needed : List.of(GardenFolder.GARDEN_FILE, GardenFolder.JOURNAL_FILE)) {
            if (!archive.holds(needed)) {
                throw new RecordException(Problem.of("unreadable-file packed", Place.of(needed)));
            }
        }
    }

    private void gather(Path part, String before, List<Path> within) throws IOException {
        try (DirectoryStream<Path> members = Files.newDirectoryStream(part)) {
            for (Path member : members) {
                String name = before + member.getFileName();
                if (isWanted(name) && leadsInside(member, name)) { add(member, name, within); }
            }
        }
    }

    private void add(Path member, String name, List<Path> within) throws IOException {
        if (Files.isDirectory(member)) {
            Path real = member.toRealPath();
            if (within.contains(real)) {
                leftOut.add(name + " is a link to a folder that it stands in, and is left out.");
                return;
            }
            List<Path> deeper = new ArrayList<>(within);
            deeper.add(real);
            gather(member, name + "/", deeper);
        } else if (Files.isRegularFile(member) && Files.isReadable(member)) {
            archive.add(name, member);
        } else {
            leftOut.add(name + " is no file that can be read, and is left out.");
        }
    }

    private static boolean isWanted(String name) {
        String own = name.substring(name.lastIndexOf('/') + 1);
        boolean canBeMade = own.endsWith(".zip") || own.endsWith(".ics") || own.endsWith(".html");
        boolean isOurs = name.equals(PackCommand.ABOUT) || name.equals(Archive.SUMS);
        return !own.startsWith(".") && !own.equals("calendars") && !canBeMade && !isOurs;
    }

    private boolean leadsInside(Path member, String name) throws IOException {
        String first = name.substring(0, Math.max(name.indexOf('/'), 0));
        boolean isRecord = RecordFiles.FILES.contains(name) || RecordFiles.FOLDERS.contains(name)
                || RecordFiles.FOLDERS.contains(first);
        if (!Files.isSymbolicLink(member) || isRecord) { return true; }
        boolean isInside = Files.exists(member) && member.toRealPath().startsWith(folder.toRealPath());
        if (!isInside) { leftOut.add(name + " is a link that leads out of the garden's folder, and is left out."); }
        return isInside;
    }
}
