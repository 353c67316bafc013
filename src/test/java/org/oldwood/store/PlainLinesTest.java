package org.oldwood.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The thorough reader, which works with Jackson, is what plain lines are held against. */
class PlainLinesTest {
    private static final String FILE = "journal.jsonl";
    private static final int LINE = 7;
    private static final String ODD = "\"\\{}[],:.-+0159aeE \t\r\u0001\u007fü…";

    private static Optional<Json> plain(String text) {
        byte[] bytes = ("before\n" + text).getBytes(UTF_8);
        return Optional.ofNullable(new PlainLines(bytes, FILE).read(LINE, 7, bytes.length));
    }

    private static Optional<Json> thorough(String text) {
        Problems problems = new Problems();
        Optional<Json> value = JsonReader.readLine(text, FILE, LINE, problems);
        return problems.isEmpty() ? value : Optional.empty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                " \t{ } \t",
                "{\"a\":\"\"}",
                "{\"id\": \"e-1\", \"a\": \"b c\",\t\"d\" : 0 , \"e\":{\"1\": 5, \"4+\": 12}}",
                "{\"a\": 0.5, \"b\": 120.50, \"c\": 123456789012.345, \"d\": 999999999999999}",
                "{\"a\": 0.1, \"b\": 0.3, \"c\": 2.675, \"d\": 0.00000000000001}",
                "{\"1\":1,\"2\":2,\"3\":3,\"4\":4,\"5\":5,\"6\":6,\"7\":7,\"8\":8,\"9\":9}",
                "{\"a\": {}, \"b\": {\"a\": \"\u007f\"}}",
                "{\"a\": \"b\\n\\u00e4\", \"c\": -1, \"d\": 1e3, \"e\": 1.234567890123456789}"
            })
    void a_plain_line_says_the_same_at_the_same_places(String text) {
        assertThat(plain(text)).isPresent().isEqualTo(thorough(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "5",
                "\"a\"",
                "[]",
                "{\"a\": \"\uD83E\uDED0\"}",
                "{\"a\": \"\u0800\"}",
                "{\"a\": \"\uD7FF\"}",
                "{ü: 1}",
                "{\"ä\": \"grün … 5 €\", \"b\": {\"é\": 1, \"c\": \"\uFFFE\uFEFF\u0080\u07FF\"}, \"d\": 2}",
                "{\"a\": 1.}",
                "{\"a\": .5}",
                "{\"a\": 01}",
                "{\"a\": true}",
                "{\"a\": null}",
                "{\"a\": [1]}",
                "{\"a\": {\"b\": {}}}",
                "{\"a\": 1, \"a\": 1}",
                "{\"a\": 1,}",
                "{\"a\" 1}",
                "{\"a\": }",
                "{\"a\": 1 2}",
                "{\"a\": 1}}",
                "{\"a\": 1",
                "{\"a",
                "{",
                "{\"a\": 1} {}"
            })
    void of_any_other_line_it_makes_nothing(String text) {
        assertThat(plain(text)).isEmpty();
    }

    @Test
    void a_damaged_line_is_either_left_or_read_as_the_thorough_reader_reads_it() throws IOException {
        Random random = new Random(20261125);
        int read = 0;
        for (String line : demoLines()) {
            for (int i = 0; i < 20; i++) {
                String damaged = damaged(line, random);
                Optional<Json> plain = plain(damaged);
                if (plain.isPresent()) {
                    assertThat(plain).as(damaged).isEqualTo(thorough(damaged));
                    read++;
                }
            }
        }
        assertThat(read).isPositive();
    }

    @Test
    void bytes_that_spell_no_character_are_left() {
        String text = "{\"a\": \"grün … é\"}";
        byte[] bytes = text.getBytes(UTF_8);
        for (int at = 0; at < bytes.length; at++) {
            for (int other = 0; other < 256; other++) {
                byte[] damaged = bytes.clone();
                damaged[at] = (byte) other;
                Json plain = new PlainLines(damaged, FILE).read(LINE, 0, damaged.length);
                if (plain != null) {
                    String read = new String(damaged, UTF_8);
                    assertThat(Optional.of(plain)).as(read).isEqualTo(thorough(read));
                    assertThat(read).doesNotContain("\uFFFD");
                }
            }
        }
    }

    @Test
    void nearly_all_lines_that_we_write_are_plain() throws IOException {
        List<String> lines = demoLines();

        assertThat(lines.stream().filter(line -> plain(line).isPresent()).count())
                .isGreaterThan(lines.size() * 9L / 10);
    }

    private static List<String> demoLines() throws IOException {
        List<String> lines = new ArrayList<>();
        for (String garden : List.of("terrace-school", "fire-station-hedges")) {
            lines.addAll(Files.readAllLines(Path.of("demo-data", garden, FILE)));
        }
        return lines;
    }

    /** A character more, less, or another. */
    private static String damaged(String line, Random random) {
        int at = random.nextInt(line.length());
        int kind = random.nextInt(3);
        String odd = kind == 0 ? "" : String.valueOf(ODD.charAt(random.nextInt(ODD.length())));
        return line.substring(0, at) + odd + line.substring(kind == 1 ? at : at + 1);
    }
}
