package org.oldwood.store;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.UUID;

/**
 * A whole file being written. It is written beside its place under a name of its own, so that two that write at once do
 * not meet, and moved there when it is whole and on the disk: readers see the old one or the new one, never a half.
 * What was not {@link #finish finished} leaves no trace. A symbolic link stays one, and a file's mode stays as it was.
 */
public final class Output implements AutoCloseable {
    private static final int MOST_LINKS = 40;
    private static final String BEGUN = ".oldwood-";
    private static final Duration STALE = Duration.ofDays(1);

    private final Path file;
    private final Path aside;
    private final FileChannel channel;
    private final OutputStream out;

    private Output(Path file, Path aside) throws IOException {
        this.file = file;
        this.aside = aside;
        this.channel = FileChannel.open(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        this.out = new BufferedOutputStream(new Named(Channels.newOutputStream(channel)), 1 << 16);
    }

    /**
     * Begins a file in a folder that is there.
     *
     * @throws IOException where no file can be there, a folder or a device for example
     */
    public static Output to(Path named) throws IOException {
        Path file = behindLinks(named);
        Path folder = file.getParent();
        if (folder == null || (Files.exists(file) && !Files.isRegularFile(file))) {
            throw new FileSystemException(named.toString(), null, "is no file that could be replaced");
        }
        Output begun = new Output(file, folder.resolve(BEGUN + UUID.randomUUID() + ".new"));
        begun.sweep();
        return begun;
    }

    /** Writes a whole file of text, in UTF-8; returns false, and leaves it alone, where it has the same bytes already. */
    public static boolean write(Path file, String text) throws IOException {
        try (Output output = to(file)) {
            output.out.write(text.getBytes(StandardCharsets.UTF_8));
            return output.finish();
        }
    }

    /** Takes away what runs that were killed long ago left behind. */
    private void sweep() throws IOException {
        Path folder = Objects.requireNonNull(aside.getParent());
        Instant now = Files.getLastModifiedTime(aside).toInstant();
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, BEGUN + "*.new")) {
            for (Path each : left) {
                if (Files.getLastModifiedTime(each).toInstant().isBefore(now.minus(STALE))) {
                    Files.deleteIfExists(each);
                }
            }
        } catch (NoSuchFileException e) {
            // another run was faster
        }
    }

    /** The file that a chain of links leads to, whether or not it is there. */
    private static Path behindLinks(Path named) throws IOException {
        Path file = named.toAbsolutePath();
        for (int i = 0; Files.isSymbolicLink(file); i++) {
            if (i == MOST_LINKS) {
                throw new FileSystemException(named.toString(), null, "is a link that leads to itself");
            }
            file = file.resolveSibling(Files.readSymbolicLink(file));
        }
        return file;
    }

    /** Says of which file it was that the disk is full. */
    private final class Named extends FilterOutputStream {
        Named(OutputStream beneath) { super(beneath); }

        @Override
        public void write(byte[] octets, int from, int length) throws IOException {
            try {
                out.write(octets, from, length);
            } catch (IOException e) {
                throw new FileSystemException(file.toString(), null, e.getMessage());
            }
        }
    }

    public OutputStream out() { return out; }

    /** What was written so far, to be read again. */
    Path written() throws IOException {
        out.flush();
        return aside;
    }

    /** Returns false, and leaves the file alone, where it has the same bytes already. */
    public boolean finish() throws IOException {
        out.flush();
        if (Files.isRegularFile(file) && Files.mismatch(aside, file) < 0) { return false; }
        channel.force(true);
        channel.close();
        keepMode();
        move();
        Journal.syncFolder(file);
        return true;
    }

    private void keepMode() throws IOException {
        try {
            Files.setPosixFilePermissions(aside, Files.getPosixFilePermissions(file));
        } catch (NoSuchFileException | UnsupportedOperationException e) {
            // a new file, or a system without modes
        }
    }

    private void move() throws IOException {
        try {
            Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            Files.deleteIfExists(aside);
        }
    }
}
