package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** RFC 5545, 3.1 (lines and folds) and 3.3.11 (text). */
class ContentLinesTest {
    @Test
    void a_line_of_exactly_75_octets_is_not_folded() throws IOException {
        assertThat(text("X", "a".repeat(73))).isEqualTo("X:" + "a".repeat(73) + "\r\n");
    }

    @Test
    void the_76th_octet_goes_to_a_line_of_its_own_and_no_line_is_empty() throws IOException {
        assertThat(text("X", "a".repeat(74))).isEqualTo("X:" + "a".repeat(73) + "\r\n a\r\n");
    }

    @Test
    void octets_are_counted_not_characters() throws IOException {
        String bush = "\uD83E\uDED0".repeat(40);

        assertThat(text("SUMMARY", bush).lines()).allMatch(line -> line.getBytes(UTF_8).length <= 75).hasSize(3);
    }

    @Test
    void backslash_semicolon_comma_and_line_feed_are_escaped_and_nothing_else() throws IOException {
        assertThat(text("X", "a\\b;c,d\ne:f\"g\"")).isEqualTo("X:a\\\\b\\;c\\,d\\ne:f\"g\"\r\n");
    }

    @Test
    void empty_text_makes_no_property() throws IOException { assertThat(text("X", "")).isEmpty(); }

    @Test
    void a_line_longer_than_the_buffer_comes_through() throws IOException {
        String lengthy = "č,\n".repeat(300_000);

        assertThat(unfoldedValue(text("X", lengthy))).isEqualTo(lengthy);
    }

    @Property(tries = 2000)
    void any_text_keeps_the_rules_and_comes_back(@ForAll @StringLength(max = 400) String raw) throws IOException {
        String wanted = Hygiene.text(raw);

        String written = text("DESCRIPTION", wanted);

        for (String line : written.split("\r\n", -1)) {
            assertThat(line.getBytes(UTF_8).length).isLessThanOrEqualTo(75);
            assertThat(line).doesNotContain("\n", "\r").isNotEqualTo(" ");
        }
        if (!wanted.isEmpty()) { assertThat(unfoldedValue(written)).isEqualTo(wanted); }
    }

    private static String text(String name, String value) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ContentLines lines = new ContentLines(out);
        lines.text(name, value);
        lines.flush();
        return strictly(out.toByteArray());
    }

    /** A fold inside a character would fail here. */
    private static String strictly(byte[] bytes) throws CharacterCodingException {
        int from = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from, i + 1 - from));
                from = i + 1;
            }
        }
        return new String(bytes, UTF_8);
    }

    /** An unescaper written apart from the writer, after the grammar of 3.3.11. */
    private static String unfoldedValue(String written) {
        String line = written.replace("\r\n ", "").replace("\r\n", "");
        String escaped = line.substring(line.indexOf(':') + 1);
        StringBuilder value = new StringBuilder();
        for (int i = 0; i < escaped.length(); i++) {
            char c = escaped.charAt(i);
            if (c == '\\') {
                char next = escaped.charAt(++i);
                value.append(next == 'n' ? '\n' : next);
            } else {
                value.append(c);
            }
        }
        return value.toString();
    }
}
