package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/** Writes a new garden's files: both or neither, and never over a garden that is there. */
final class NewFolder {
    private final Path folder;

    NewFolder(Path folder) {
        this.folder = folder;
    }

    /** Stops where the folder already holds one of the two files. */
    void refuseOverwriting() {
        refuse(folder.resolve(GardenFolder.GARDEN_FILE));
        refuse(folder.resolve(GardenFolder.JOURNAL_FILE));
    }

    /** Writes the journal first, because it is {@code garden.json} that makes a folder a garden. */
    void write(String garden, String journal) throws IOException {
        Path gardenFile = folder.resolve(GardenFolder.GARDEN_FILE);
        Path journalFile = folder.resolve(GardenFolder.JOURNAL_FILE);
        refuseOverwriting();
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw stop(folder, "is a file, not a folder");
        }
        boolean done = false;
        try {
            Output.write(journalFile, journal);
            Output.write(gardenFile, garden);
            done = true;
        } finally {
            if (!done) {
                Files.deleteIfExists(journalFile);
                Files.deleteIfExists(gardenFile);
            }
        }
    }

    private static void refuse(Path file) {
        if (Files.exists(file)) {
            throw stop(file, "is there already and is not overwritten");
        }
    }

    private static RecordException stop(Path file, String message) {
        return new RecordException(
                new Problem("already-there", Place.of(file.toString()), message, "Name another folder."));
    }
}
