package org.oldwood.calendar;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.TRUNCATE_EXISTING;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file beside its place and moves it there: readers see the old one or the new one. What was not
 * {@link #finish finished} leaves no trace. As long as the octets are those that stand there already they are only
 * compared, so that a file without a change is not written at all.
 */
final class Replace implements AutoCloseable {
    private final Path file;
    private final Path aside;
    private final OutputStream out = new Out();
    private byte[] theirs = {};
    private long same;

    /** The file that stands, while nothing was found to differ. */
    private @Nullable FileChannel standing;

    /** The new file, from the first difference on. */
    private @Nullable FileChannel written;

    /** Something that writes. */
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    private Replace(Path file, Path aside) throws IOException {
        this.file = file;
        this.aside = aside;
        if (Files.isRegularFile(file)) {
            standing = FileChannel.open(file, READ);
        } else {
            written = created(aside);
        }
    }

    private static FileChannel created(Path aside) throws IOException {
        return FileChannel.open(aside, CREATE, TRUNCATE_EXISTING, WRITE);
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
        FileChannel old = standing;
        if (old != null && old.size() == same) {
            return false;
        }
        written().close();
        move(aside, file);
        return true;
    }

    @Override
    public void close() throws IOException {
        try (FileChannel old = standing;
                FileChannel now = written) {
            // closed even where one of them cannot be
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    /** The new file; it begins with what was found to be the same. */
    private FileChannel written() throws IOException {
        FileChannel now = written;
        if (now == null) {
            now = created(aside);
            written = now;
        }
        FileChannel old = standing;
        if (old != null) {
            for (long done = 0; done < same; ) {
                done += old.transferTo(done, same - done, now);
            }
            // a file that is open cannot be replaced everywhere
            old.close();
            standing = null;
        }
        return now;
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private final class Out extends OutputStream {
        @Override
        public void write(int octet) throws IOException {
            write(new byte[] {(byte) octet}, 0, 1);
        }

        @Override
        public void write(byte[] octets, int from, int length) throws IOException {
            FileChannel old = standing;
            if (old != null && isNext(old, octets, from, length)) {
                same += length;
                return;
            }
            FileChannel now = written();
            ByteBuffer rest = ByteBuffer.wrap(octets, from, length);
            while (rest.hasRemaining()) {
                now.write(rest);
            }
        }

        private boolean isNext(FileChannel old, byte[] octets, int from, int length) throws IOException {
            if (theirs.length < length) {
                theirs = new byte[length];
            }
            ByteBuffer read = ByteBuffer.wrap(theirs, 0, length);
            while (read.hasRemaining() && old.read(read) >= 0) {
                // until all was read that there is
            }
            return !read.hasRemaining() && Arrays.equals(theirs, 0, length, octets, from, from + length);
        }
    }
}
