package org.oldwood.garden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/** Which files a garden's record consists of, and that nothing which can be made again is written over them. */
public final class RecordFiles {
    /** Files that the record consists of, those that only some gardens have included. */
    public static final List<String> FILES = List.of(GardenFolder.GARDEN_FILE, GardenFolder.JOURNAL_FILE, "weather.csv",
            "calendar-state.jsonl", "calendar-servers.jsonl");

    /** Folders for data of the garden's own. */
    public static final List<String> FOLDERS = List.of("crops", "rules", "materials", "climates", "season", "sources");

    private RecordFiles() {}

    /** Whether a file is part of the record of the garden in {@code folder}, under whatever name or link, or would become it. */
    public static boolean isPart(Path folder, Path file) throws IOException {
        Path beside = file.toAbsolutePath().getParent();
        if (beside != null && Files.exists(beside) && Files.isSameFile(beside, folder)
                && FILES.contains(file.toAbsolutePath().getFileName().toString())) {
            return true;
        }
        if (!Files.exists(file)) { return false; }
        for (String name : FILES) {
            Path part = folder.resolve(name);
            if (Files.exists(part) && Files.isSameFile(part, file)) { return true; }
        }
        Path real = file.toRealPath();
        for (String name : FOLDERS) {
            Path part = folder.resolve(name);
            if (Files.exists(part) && real.startsWith(part.toRealPath())) { return true; }
        }
        return false;
    }

    /**
     * Stops where something that stands must not be replaced.
     *
     * @param file what is to be written, calendar, sheet or archive
     * @param allowed whether what stands there was written for this garden, or the person said that it may go
     * @throws RecordException where it is part of the record, or not allowed
     */
    public static void mayReplace(Path folder, Path file, boolean allowed) throws IOException {
        if (isPart(folder, file)) {
            throw new RecordException(Problem.of("part-of-the-record", Place.of(file.toString())));
        }
        if (!allowed && Files.isRegularFile(file) && Files.size(file) > 0) {
            throw new RecordException(Problem.of("not-ours", Place.of(file.toString())));
        }
    }
}
