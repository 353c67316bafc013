package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Short ways of putting texts together, held against the long ones. */
class PassageTest {
    @Property(tries = 1000)
    void adds_to_a_hash_what_its_characters_add(
            @ForAll @StringLength(max = 60) @CharRange(from = ' ', to = '\u0120') String text, @ForAll long hash) {
        Passage passage = new Passage(text);
        long other = hash * 31 + 7;

        for (long start : new long[] {hash, hash, other, hash + 0x100, hash, other}) {
            assertThat(passage.addTo(start)).isEqualTo(Fnv.characters(start, text));
        }
    }

    /** The vectors of 64-bit FNV-1a that its authors publish (isthe.com/chongo/tech/comp/fnv). */
    @Test
    void the_hash_is_fnv_1a() {
        assertThat(Fnv.characters(Fnv.START, "a")).isEqualTo(0xaf63dc4c8601ec8cL);
        assertThat(Fnv.characters(Fnv.START, "foobar")).isEqualTo(0x85944171f73967e8L);
    }

    @Property(tries = 1000)
    void folds_where_one_octet_after_the_other_would_be_folded(@ForAll @StringLength(max = 400) String raw)
            throws IOException {
        String text = "x" + Hygiene.text(raw);
        byte[] name = "SUMMARY:".getBytes(UTF_8);
        byte[] escaped = new Passage(text).escaped();
        byte[] line = Arrays.copyOf(name, name.length + escaped.length);
        System.arraycopy(escaped, 0, line, name.length, escaped.length);
        byte[] folded = new byte[Folding.most(line.length)];

        int end = Folding.fold(line, line.length, folded, 0);

        ByteArrayOutputStream wanted = new ByteArrayOutputStream();
        ContentLines lines = new ContentLines(wanted);
        lines.text("SUMMARY", text);
        lines.flush();
        assertThat(new String(folded, 0, end, UTF_8)).isEqualTo(wanted.toString(UTF_8));
    }

    @Property(tries = 1000)
    void lines_put_together_are_made_fit_as_one_text(
            @ForAll @Size(max = 4) List<@StringLength(max = 12) String> lines) {
        Text text = new Text.Maker().of(lines);

        String wanted = Hygiene.text(String.join("\n", lines));
        assertThat(text).hasToString(wanted);
        assertThat(text.isEmpty()).isEqualTo(wanted.isEmpty());
        assertThat(text.addTo(5)).isEqualTo(Fnv.add(5, wanted));
    }

    @Property(tries = 300)
    void blank_and_odd_ends_of_lines_go_as_in_one_text(
            @ForAll @Size(max = 3) List<@StringLength(max = 4) @CharRange(from = '\t', to = '!') String> lines) {
        assertThat(new Text.Maker().of(lines)).hasToString(Hygiene.text(String.join("\n", lines)));
    }
}
