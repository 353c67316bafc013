package org.oldwood.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;
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

    private final SortedMap<String, byte[]> files = new TreeMap<>();

    /** Adds a file by its name, with {@code /} between folders. */
    public void add(String name, byte[] bytes) {
        files.put(name, bytes.clone());
    }

    public int count() {
        return files.size();
    }

    /**
     * Writes the archive, dated; returns false and leaves the file alone where it has the same bytes already.
     *
     * @throws IOException where it cannot be written, or does not read back as it was meant
     */
    public boolean write(Path file, LocalDateTime dated) throws IOException {
        Path fresh = file.resolveSibling("." + file.getFileName() + ".new");
        try {
            Map<String, byte[]> all = withSums();
            try (OutputStream out = Files.newOutputStream(fresh)) {
                put(out, all, dated.isBefore(FIRST) ? FIRST : dated);
            }
            verify(fresh, all);
            try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            if (Files.isRegularFile(file) && Files.mismatch(fresh, file) < 0) {
                return false;
            }
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            Journal.syncFolder(file);
            return true;
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private Map<String, byte[]> withSums() {
        StringBuilder sums = new StringBuilder();
        for (Map.Entry<String, byte[]> one : files.entrySet()) {
            sums.append(sum(one.getValue())).append("  ").append(one.getKey()).append('\n');
        }
        Map<String, byte[]> all = new TreeMap<>(files);
        all.put(SUMS, sums.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return all;
    }

    private static void put(OutputStream out, Map<String, byte[]> all, LocalDateTime dated) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.setMethod(ZipOutputStream.STORED);
            for (Map.Entry<String, byte[]> one : all.entrySet()) {
                byte[] bytes = one.getValue();
                CRC32 crc = new CRC32();
                crc.update(bytes);
                ZipEntry entry = new ZipEntry(one.getKey());
                entry.setTimeLocal(dated);
                entry.setSize(bytes.length);
                entry.setCompressedSize(bytes.length);
                entry.setCrc(crc.getValue());
                zip.putNextEntry(entry);
                zip.write(bytes);
                zip.closeEntry();
            }
        }
    }

    private static void verify(Path fresh, Map<String, byte[]> all) throws IOException {
        try (ZipFile zip = new ZipFile(fresh.toFile())) {
            if (zip.size() != all.size()) {
                throw new IOException(fresh + " holds " + zip.size() + " files, not " + all.size());
            }
            for (Map.Entry<String, byte[]> one : all.entrySet()) {
                ZipEntry entry = zip.getEntry(one.getKey());
                if (entry == null) {
                    throw new IOException(fresh + " lacks " + one.getKey());
                }
                try (InputStream in = zip.getInputStream(entry)) {
                    if (!MessageDigest.isEqual(in.readAllBytes(), one.getValue())) {
                        throw new IOException(fresh + " does not hold " + one.getKey() + " as it is");
                    }
                }
            }
        }
    }

    private static String sum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
