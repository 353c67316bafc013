package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside its place and moves it there: readers see the old one or the new one. */
final class Replace {
    private Replace() {}

    /** Something that writes. */
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    /** Returns false, and leaves the file alone, where it has the same bytes already. */
    static boolean file(Path file, Content content) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        Files.createDirectories(folder);
        Path aside = folder.resolve("." + file.getFileName() + ".new");
        try {
            try (OutputStream out = Files.newOutputStream(aside)) {
                content.to(out);
            }
            if (isSame(aside, file)) {
                return false;
            }
            move(aside, file);
            return true;
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private static boolean isSame(Path one, Path other) throws IOException {
        return Files.isRegularFile(other)
                && Files.size(one) == Files.size(other)
                && Files.mismatch(one, other) < 0;
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
