package org.oldwood.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Files as one zip archive, with {@value #SUMS} over all of them. The same files and day are the same bytes on every
 * machine: in the order of their names, stored and not packed, with one time for all. Text stays readable in it even
 * where an archive is damaged. Read again and compared before it takes its place.
 */
public final class Archive {
    /** SHA-256 sums as {@code sha256sum -c} reads them. */
    public static final String SUMS = "SHA256SUMS";

    /** The earliest day that zip archives know. */
    private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final SortedMap<String, Source> files = new TreeMap<>();

    /** Where a file's octets come from; read several times, and never held whole. */
    private interface Source {
        InputStream open() throws IOException;
    }

    /** What a file held when it was first read. */
    private record Sums(Source source, long size, long crc, String sha256) {}

    /** Adds a small file by its name, with {@code /} between folders. */
    public void add(String name, byte[] bytes) {
        byte[] kept = bytes.clone();
        files.put(name, () -> new ByteArrayInputStream(kept));
    }

    /** Adds a file by its name, with {@code /} between folders; read when the archive is written. */
    public void add(String name, Path file) {
        files.put(name, () -> Files.newInputStream(file));
    }

    public boolean holds(String name) { return files.containsKey(name); }

    public int count() { return files.size(); }

    /**
     * Writes the archive, dated; returns false and leaves the file alone where it has the same bytes already.
     *
     * @throws IOException where it cannot be written, or does not read back as it was meant
     */
    public boolean write(Path file, LocalDateTime dated) throws IOException {
        SortedMap<String, Sums> all = summed();
        try (Output output = Output.to(file)) {
            put(output.out(), all, dated.isBefore(FIRST) ? FIRST : dated);
            verify(output.written(), all);
            return output.finish();
        }
    }

    private SortedMap<String, Sums> summed() throws IOException {
        SortedMap<String, Sums> all = new TreeMap<>();
        StringBuilder lines = new StringBuilder();
        for (Map.Entry<String, Source> one : files.entrySet()) {
            Sums sums = sums(one.getValue());
            all.put(one.getKey(), sums);
            lines.append(sums.sha256).append("  ").append(one.getKey()).append('\n');
        }
        byte[] text = lines.toString().getBytes(StandardCharsets.UTF_8);
        all.put(SUMS, sums(() -> new ByteArrayInputStream(text)));
        return all;
    }

    private static Sums sums(Source source) throws IOException {
        CheckedOutputStream crc = new CheckedOutputStream(OutputStream.nullOutputStream(), new CRC32());
        DigestOutputStream sha = new DigestOutputStream(crc, sha256());
        try (InputStream in = source.open()) {
            long size = in.transferTo(sha);
            return new Sums(source, size, crc.getChecksum().getValue(),
                    HexFormat.of().formatHex(sha.getMessageDigest().digest()));
        }
    }

    /** A sum to begin with: every Java has SHA-256. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void put(OutputStream out, SortedMap<String, Sums> all, LocalDateTime dated) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        zip.setMethod(ZipOutputStream.STORED);
        for (Map.Entry<String, Sums> one : all.entrySet()) {
            ZipEntry entry = new ZipEntry(one.getKey());
            entry.setTimeLocal(dated);
            entry.setSize(one.getValue().size);
            entry.setCompressedSize(one.getValue().size);
            entry.setCrc(one.getValue().crc);
            zip.putNextEntry(entry);
            try (InputStream in = one.getValue().source.open()) {
                in.transferTo(zip);
            }
            zip.closeEntry();
        }
        zip.finish();
    }

    private static void verify(Path fresh, SortedMap<String, Sums> all) throws IOException {
        try (ZipFile zip = new ZipFile(fresh.toFile())) {
            if (zip.size() != all.size()) {
                throw new IOException("the archive holds %s files, not %s".formatted(zip.size(), all.size()));
            }
            for (Map.Entry<String, Sums> one : all.entrySet()) {
                ZipEntry entry = zip.getEntry(one.getKey());
                boolean same = entry != null
                        && sums(() -> zip.getInputStream(entry)).sha256.equals(one.getValue().sha256);
                if (!same) { throw new IOException("the archive does not hold %s as it is".formatted(one.getKey())); }
            }
        }
    }
}
