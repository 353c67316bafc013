package org.oldwood.store;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Text of files that people and other programs wrote. */
public final class Text {
    /** Stands for octets that are no text. */
    public static final char UNREADABLE = '\uFFFD';

    private Text() {}

    /**
     * The text of a table.
     *
     * @param file its name, for a message
     * @throws RecordException where it is not in UTF-8, with the line
     */
    public static String of(byte[] octets, String file) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(octets))
                    .toString();
        } catch (CharacterCodingException e) {
            String read = new String(octets, StandardCharsets.UTF_8);
            long line = read.substring(0, Math.max(0, read.indexOf(UNREADABLE)))
                            .chars()
                            .filter(c -> c == '\n')
                            .count()
                    + 1;
            throw new RecordException(new Problem(
                    "not-utf-8",
                    Place.of(file, (int) line),
                    "holds octets that are no text in UTF-8",
                    "Save the table as CSV in UTF-8."));
        }
    }
}
