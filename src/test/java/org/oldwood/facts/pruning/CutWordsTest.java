package org.oldwood.facts.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Habit;
import org.oldwood.craft.pruning.Measures;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.RenewalSchool;
import org.oldwood.craft.pruning.Schools;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Stems;

/** Cuts and measures as people read them. */
class CutWordsTest {
    private final RenewalSchool halfYoung = Schools.stool("blackcurrant", "half-young");

    private Cut cut(String stems) { return halfYoung.winter(Bush.of(Stems.parse(stems))); }

    @Test
    void a_cut_is_told_with_how_many_of_how_many() {
        assertThat(CutWords.taken(cut("1=6,2=3,3=3,4+=2"), "stems"))
                .isEqualTo("take out 3 of 14 stems: 2 of age 4+ (spent), 1 of age 1 (more than its age needs)");
        assertThat(CutWords.taken(cut("1=5,2=3,3=3"), "canes")).isEqualTo("take none of the 11 canes out");
        assertThat(CutWords.beforeAndAfter(cut("1=5,2=3,3=3,4+=2")))
                .isEqualTo("1=5,2=3,3=3,4+=2 before, 1=5,2=3,3=3,4+=0 after");
    }

    /** A bush whose last count is two winters old has more stems than are known of it. */
    @Test
    void where_an_age_was_not_counted_the_number_is_not_that_of_the_bush() {
        assertThat(CutWords.taken(cut("3=5,4=3"), "stems"))
                .isEqualTo("take out 3 of 8 counted stems: 3 of age 4 (spent)");
        assertThat(CutWords.taken(cut("3=5"), "stems")).isEqualTo("take none of the 5 counted stems out");
    }

    @Test
    void bars_show_what_stays_and_what_goes_and_what_was_not_counted() {
        assertThat(CutWords.bars(cut("2=3,3=4,4+=2"))).containsExactly("   1  not counted ", "   2  3 -> 3      |||",
                "   3  4 -> 3      |||x", "  4+  2 -> 0      xx");
        assertThat(CutWords.bars(cut("1=400")).get(0)).contains("x".repeat(50)).hasSizeLessThan(80);
    }

    @Test
    void each_remark_is_a_sentence() {
        for (Cut.Remark remark : Cut.Remark.values()) {
            Cut cut = new Cut(StageOfLife.BEARING, Stems.ofOpen(1, 2), List.of(), Stems.ofOpen(1, 2), 3, 4,
                    java.util.EnumSet.of(remark), java.util.Optional.empty());
            assertThat(CutWords.remarks(cut)).singleElement().asString().matches("(?s)[A-Z0-9].*\\.")
                    .doesNotContain("null");
        }
        assertThat(CutWords.remarks(cut("1=5,2=2,3=0,4=5")).get(0)).startsWith("3 more are spent but wait");
        assertThat(CutWords.remarks(cut("1=1,2=21")).get(0)).startsWith("More could go");
    }

    @Test
    void a_number_of_new_shoots_to_leave_is_told_only_where_they_were_not_counted() {
        assertThat(CutWords.remarks(cut("2=3,3=3")).get(0)).endsWith("leave the 5 strongest.");
        assertThat(CutWords.remarks(cut("1=5,3=3")).get(0)).endsWith("is taken as none.");
    }

    @Test
    void the_parts_of_a_renovation_are_told_winter_by_winter() {
        FormPruning stool = Schools.form("blackcurrant", "stool");
        Outlook.Basis basis = new Outlook.Basis(halfYoung, stool.undying(), java.util.Optional.empty(),
                stool.newShoots().orElseThrow());
        Habit plan = Habit.plan(halfYoung, halfYoung);

        assertThat(parts("1=6,2=0,3=0,4+=10", plan, basis)).isEqualTo("4, then 3, then 3");
        assertThat(parts("1=6,2=0,3=0,4+=4", plan, basis)).isEqualTo("2, then 1, then 1");
    }

    private static String parts(String stems, Habit plan, Outlook.Basis basis) {
        return CutWords.parts(Outlook.of(Bush.of(Stems.parse(stems)), plan, basis, 12));
    }

    private static Figure figure(double is, double low, double high, String unit) {
        return new Figure(is, low, high, unit, List.of("oldwood"), Seen.READ, "");
    }

    @Test
    void measures_have_their_range_and_shares_their_names() {
        assertThat(Measures.inWords(figure(2, 1, 3, "buds"))).isEqualTo("2 buds (1 to 3)");
        assertThat(Measures.inWords(figure(1, 1, 3, "buds"))).isEqualTo("1 bud (1 to 3)");
        assertThat(Measures.inWords(figure(1, 1, 1, "cm"))).isEqualTo("1 cm");
        assertThat(Measures.inWords(figure(38, 30, 46, "cm"))).isEqualTo("38 cm (30 to 46 cm)");
        assertThat(Measures.inWords(figure(1.5, 1.5, 1.5, "m"))).isEqualTo("1.5 m");
        assertThat(Measures.inWords(figure(0.5, 0.33, 0.5, "share"))).isEqualTo("half (a third to half)");
        assertThat(Measures.share(0.25)).isEqualTo("a quarter");
        assertThat(Measures.share(0.2)).isEqualTo("a fifth");
        assertThat(Measures.share(1.0 / 6)).isEqualTo("a sixth");
        assertThat(Measures.share(0.15)).isEqualTo("15 %");
    }
}
