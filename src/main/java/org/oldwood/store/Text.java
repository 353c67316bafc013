package org.oldwood.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Text of files that people and other programs wrote. */
public final class Text {
    /** Stands for octets that are no text. */
    public static final char UNREADABLE = '\uFFFD';

    private Text() {}

    /** Whether something bears that name: a link that leads nowhere, too, since what it led to is missed. */
    public static boolean isThere(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * All octets of a file that a folder may hold.
     *
     * @throws FileSystemException where it is a folder, a link that leads nowhere, or a pipe or device, which might
     *         never end
     */
    public static byte[] octets(Path file) throws IOException {
        if (isThere(file) && !Files.isRegularFile(file)) {
            throw new FileSystemException(file.toString(), null, "is no file");
        }
        return Files.readAllBytes(file);
    }

    /**
     * The text of a table.
     *
     * @throws RecordException where it is not in UTF-8, with the line
     */
    public static String of(byte[] octets, String file) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(octets)).toString();
        } catch (CharacterCodingException e) {
            String read = new String(octets, StandardCharsets.UTF_8);
            long line = read.substring(0, Math.max(0, read.indexOf(UNREADABLE))).chars().filter(c -> c == '\n').count()
                    + 1;
            throw new RecordException(Problem.of("not-utf-8", Place.of(file, (int) line)));
        }
    }
}
