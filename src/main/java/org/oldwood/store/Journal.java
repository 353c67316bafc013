package org.oldwood.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A file of lines that only grows. A line counts once its line end is on the disk: {@link Writing#append} returns after that
 * and not before. What a crash left of an unfinished last line is set aside in a file of its own, never swallowed and
 * never fatal. Two writers are kept apart by a lock on a file beside the journal.
 */
public final class Journal {
    private static final int LOCK_TRIES = 50;
    private static final long LOCK_PAUSE_MS = 100;

    private final Path file;

    public Journal(Path file) { this.file = file; }

    /**
     * What the file holds.
     *
     * @param lines the whole lines, with their numbers from 1; blank ones left out
     * @param torn the unfinished text after the last line end that is no JSON, if any
     */
    public record Contents(List<Line> lines, Optional<Line> torn) {}

    public record Line(int number, String text) {}

    /** Reads the file; one that is not there is empty. */
    public Contents read() throws IOException {
        return contents(Text.isThere(file) ? Text.octets(file) : new byte[0]);
    }

    private static Contents contents(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        List<Line> lines = new ArrayList<>();
        int number = 1;
        int start = text.startsWith("\uFEFF") ? 1 : 0;
        for (int end = text.indexOf('\n', start); end >= 0; end = text.indexOf('\n', start)) {
            add(lines, new Line(number, text.substring(start, end).stripTrailing()));
            number++;
            start = end + 1;
        }
        Line last = new Line(number, text.substring(start));
        boolean whole = JsonReader.readLine(last.text, "", number, new Problems()).isPresent();
        if (whole) { add(lines, last); }
        return new Contents(lines, whole || last.text.isBlank() ? Optional.empty() : Optional.of(last));
    }

    private static void add(List<Line> lines, Line line) { if (!line.text.isBlank()) { lines.add(line); } }

    /**
     * Takes the lock, for one who reads first and then adds: what was read stays true until the lock is given back.
     *
     * @throws RecordException where another program holds the lock for more than five seconds
     */
    public Writing begin() throws IOException {
        if (Files.exists(lockPath())) { Text.octets(lockPath()); }
        FileChannel channel = FileChannel.open(lockPath(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            return new Writing(channel, lock(channel));
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    /** The right to add lines, until it is closed. */
    public final class Writing implements AutoCloseable {
        private final FileChannel channel;
        private final FileLock held;

        private Writing(FileChannel channel, FileLock held) {
            this.channel = channel;
            this.held = held;
        }

        /**
         * Adds all the lines or none, and makes sure that they are on the disk.
         *
         * @param lines without line ends
         */
        public void append(List<String> lines) throws IOException { if (!lines.isEmpty()) { appendLocked(lines); } }

        @Override
        public void close() throws IOException {
            held.release();
            channel.close();
        }
    }

    private Path lockPath() { return file.resolveSibling("." + file.getFileName() + ".lock"); }

    private FileLock lock(FileChannel channel) throws IOException {
        for (int i = 0; i < LOCK_TRIES; i++) {
            FileLock lock = tryLock(channel);
            if (lock != null) { return lock; }
            pause();
        }
        throw new RecordException(Problem.of("busy", Place.of(String.valueOf(file.getFileName()))));
    }

    private static @org.jspecify.annotations.Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private static void pause() {
        try {
            Thread.sleep(LOCK_PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void appendLocked(List<String> lines) throws IOException {
        boolean fresh = !Text.isThere(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE,
                fresh ? StandardOpenOption.CREATE : StandardOpenOption.READ)) {
            long end = mendTail(channel);
            ByteBuffer bytes = ByteBuffer.wrap((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            try {
                write(channel, bytes, end);
            } catch (IOException e) {
                channel.truncate(end);
                throw new FileSystemException(file.toString(), null, e.getMessage());
            }
        }
        if (fresh) { syncFolder(file); }
    }

    private static void write(FileChannel channel, ByteBuffer bytes, long end) throws IOException {
        long at = end;
        while (bytes.hasRemaining()) {
            at += channel.write(bytes, at);
        }
        channel.force(true);
    }

    /** Ends a whole last line that lacks its line end; sets a torn one aside. Returns where to write. */
    private long mendTail(FileChannel channel) throws IOException {
        long size = channel.size();
        if (size == 0 || endsWithNewline(channel, size)) { return size; }
        byte[] all = Files.readAllBytes(file);
        Contents contents = contents(all);
        if (contents.torn.isEmpty()) {
            write(channel, ByteBuffer.wrap(new byte[]{'\n'}), size);
            return size + 1;
        }
        int start = all.length;
        while (start > 0 && all[start - 1] != '\n') {
            start--;
        }
        setAside(Arrays.copyOfRange(all, start, all.length), contents.torn.get().number);
        channel.truncate(start);
        return start;
    }

    private static boolean endsWithNewline(FileChannel channel, long size) throws IOException {
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, size - 1);
        return last.get(0) == '\n';
    }

    private void setAside(byte[] torn, int line) throws IOException {
        Path aside = file.resolveSibling(file.getFileName() + ".torn-line-" + line);
        for (int i = 2; Files.exists(aside); i++) {
            aside = file.resolveSibling(file.getFileName() + ".torn-line-" + line + "-" + i);
        }
        try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            write(channel, ByteBuffer.wrap(torn), 0);
        }
        syncFolder(aside);
    }

    /** So that a new file's name survives a crash too; a system that cannot do it is no worse off. */
    static void syncFolder(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        if (parent == null) { return; }
        try (FileChannel folder = FileChannel.open(parent, StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            // Windows does not open folders; the file itself is on the disk
        }
    }
}
