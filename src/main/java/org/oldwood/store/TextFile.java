package org.oldwood.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes whole files so that a reader sees the old one or the new one, never a half. */
public final class TextFile {
    private TextFile() {}

    /** Replaces the file by {@code text}, in UTF-8. */
    public static void write(Path file, String text) throws IOException {
        Path fresh = file.resolveSibling("." + file.getFileName() + ".new");
        try {
            put(fresh, ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
        Journal.syncFolder(file);
    }

    private static void put(Path fresh, ByteBuffer bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                fresh, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }
}
