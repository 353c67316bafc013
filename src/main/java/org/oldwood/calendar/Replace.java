package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file beside its place and moves it there: readers see the old one or the new one. What
 * was not {@link #finish finished} leaves no trace.
 */
final class Replace implements AutoCloseable {
    private final Path file;
    private final Path aside;
    private final OutputStream out;

    /** Something that writes. */
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    private Replace(Path file, Path aside) throws IOException {
        this.file = file;
        this.aside = aside;
        this.out = Files.newOutputStream(aside);
    }

    static Replace of(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        Files.createDirectories(folder);
        return new Replace(file, folder.resolve("." + file.getFileName() + ".new"));
    }

    /** Returns false, and leaves the file alone, where it has the same bytes already. */
    static boolean file(Path file, Content content) throws IOException {
        try (Replace replace = of(file)) {
            content.to(replace.out);
            return replace.finish();
        }
    }

    /** Where to write. */
    OutputStream out() {
        return out;
    }

    /** Returns false, and leaves the file alone, where it has the same bytes already. */
    boolean finish() throws IOException {
        out.close();
        if (isSame(aside, file)) {
            return false;
        }
        move(aside, file);
        return true;
    }

    @Override
    public void close() throws IOException {
        try {
            out.close();
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
