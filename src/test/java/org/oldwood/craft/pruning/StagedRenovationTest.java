package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stems;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.store.Documents;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;

/** How a plant too crowded for the limit of a season is brought back over some winters. */
class StagedRenovationTest {
    private final RenewalSchool six = Schools.stool("blueberry", "six-ages");
    private final StagedRenovation half = six.staged().orElseThrow();

    private static Stems old(int canes) { return Stems.of(0, 0, 0, 0, 0, 0, canes); }

    @Test
    void half_goes_in_the_first_winter_and_the_rest_over_the_next_three() {
        // tribune-blueberry-2017: half of the oldest, then the others over two to three years
        Cut cut = six.winter(Bush.of(old(45)));

        assertThat(cut.of(Why.SPENT)).isEqualTo(23);
        assertThat(cut.life()).isEqualTo(StageOfLife.NEGLECTED);
        StagedRenovation.Part part = cut.staged().orElseThrow();
        assertThat(part.winter()).isEqualTo(1);
        assertThat(part.due()).isEqualTo(45);
        assertThat(part.now()).isEqualTo(23);
        assertThat(part.later()).containsExactly(8, 7, 7);
        assertThat(cut.remarks()).isEmpty();
    }

    @Test
    void it_begins_at_its_bound_and_not_below_it() {
        int from = (int) half.from().is();

        assertThat(six.winter(Bush.of(old(from))).staged()).isPresent();
        assertThat(six.winter(Bush.of(old(from - 1))).staged()).isEmpty();
        // a fifth of the canes: fruit-handbook-blueberry
        assertThat(six.winter(Bush.of(old(from - 1))).number()).isEqualTo(4);
    }

    @Test
    void once_begun_it_goes_on_in_equal_parts_below_the_bound_too() {
        Bush bush = Bush.of(Stems.of(2, 2, 0, 0, 0, 0, 10));

        assertThat(six.winter(bush).of(Why.SPENT)).isEqualTo(2);
        assertThat(six.winter(bush.inRenovationWinter(2)).of(Why.SPENT)).isEqualTo(4);
        assertThat(six.winter(bush.inRenovationWinter(3)).of(Why.SPENT)).isEqualTo(5);
        assertThat(six.winter(bush.inRenovationWinter(4)).of(Why.SPENT)).isEqualTo(10);
        assertThat(six.winter(bush.inRenovationWinter(4)).staged().orElseThrow().later()).isEmpty();
        assertThat(six.winter(bush.inRenovationWinter(5)).of(Why.SPENT)).isEqualTo(2);
    }

    @Test
    void it_is_over_when_nothing_is_due() {
        Bush last = Bush.of(Stems.of(2, 2, 2, 2, 2, 2, 2)).inRenovationWinter(3);
        Bush over = Bush.of(Stems.of(2, 2, 2, 2, 2, 2)).inRenovationWinter(3);

        assertThat(six.winter(last).of(Why.SPENT)).isEqualTo(2);
        assertThat(six.winter(last).nextRenovationWinter(six, 3)).isEqualTo(1);
        assertThat(six.winter(over).staged()).isEmpty();
        assertThat(six.winter(over).life()).isEqualTo(StageOfLife.BEARING);
    }

    @Test
    void surplus_canes_that_are_not_spent_count_and_go_after_the_spent_ones() {
        // 4 spent, 36 - 2 too many of five years: 38 due, 19 go
        Cut cut = six.winter(Bush.of(Stems.of(2, 2, 2, 2, 36, 0, 4)));

        assertThat(cut.taken()).containsExactly(new Cut.Taken(7, 4, Why.SPENT), new Cut.Taken(5, 15, Why.CROWDED));
        assertThat(cut.staged().orElseThrow().later()).containsExactly(7, 6, 6);
    }

    @Test
    void the_last_older_cane_stays_and_dead_ones_do_not_count() {
        Bush last = Bush.of(old(3)).inRenovationWinter(4);
        Bush dead = Bush.of(old(45)).withFaults(old(25), Stems.NONE);

        assertThat(six.winter(last).after().from(2)).isEqualTo(1);
        assertThat(six.winter(dead).staged()).isEmpty();
        assertThat(six.winter(dead).of(Why.SICK)).isEqualTo(25);
    }

    @Test
    void a_frame_loses_a_third_of_the_branches_too_many_each_winter() {
        School red = Schools.school("redcurrant", "leg", "open-bush");
        Bush bush = Bush.of(Stems.of(3, 28));

        Cut first = red.winter(bush);
        Cut second = red.winter(Bush.of(Stems.of(0, 0, 18)).inRenovationWinter(2));

        assertThat(first.of(2)).isEqualTo(6);
        assertThat(first.of(1)).isEqualTo(3);
        assertThat(first.staged().orElseThrow().later()).containsExactly(6, 6);
        // at its bound it begins with little: a branch more is not many more on the list
        assertThat(red.winter(Bush.of(Stems.of(0, 21))).of(2)).isEqualTo(2);
        assertThat(red.winter(Bush.of(Stems.of(0, 24))).of(2)).isEqualTo(4);
        assertThat(first.nextRenovationWinter(red, 1)).isEqualTo(2);
        assertThat(second.of(3)).isEqualTo(4);
        assertThat(red.winter(Bush.of(Stems.of(0, 20))).number()).isEqualTo(2);
    }

    @Test
    void young_low_shoots_stay_as_far_as_the_frame_has_use_for_them() {
        School red = Schools.school("redcurrant", "leg", "open-bush");

        // room for two more branches of ten
        assertThat(red.winter(Bush.of(Stems.of(5, 8))).after().at(1)).isEqualTo(2);
        // two old branches go and two shoots follow them; the frame is full
        assertThat(red.winter(Bush.of(Stems.of(9, 8, 0, 0, 0, 2))).after().at(1)).isEqualTo(2);
        assertThat(red.winter(Bush.of(Stems.of(9, 16))).after().at(1)).isZero();
    }

    @Test
    void of_a_winter_that_may_take_one_branch_none_follows_while_there_are_too_many() {
        // a sixth of eleven is one (swedish-gooseberry-renewal)
        School eight = Schools.school("gooseberry", "leg", "eight-branches");

        Cut cut = eight.winter(Bush.of(Stems.of(4, 0, 0, 0, 0, 11)));

        assertThat(cut.of(6)).isEqualTo(1);
        assertThat(cut.after().at(1)).isZero();
    }

    @Test
    void the_outlook_goes_on_with_it_and_then_keeps_the_bush_in_order() {
        FormPruning stool = Schools.form("blueberry", "stool");
        Outlook.Basis basis = new Outlook.Basis(six, stool, java.util.Optional.empty(),
                stool.newShoots().orElseThrow());

        List<Outlook.Winter> winters = Outlook.of(Bush.of(old(45)), Habit.plan(six, six), basis, 6).winters();

        assertThat(winters.subList(0, 5)).extracting(winter -> winter.cut().of(7)).containsExactly(23, 8, 7, 7, 0);
        assertThat(winters.get(4).cut().life()).isEqualTo(StageOfLife.BEARING);
    }

    @Test
    void it_is_told_with_its_part_its_cost_and_what_may_be_chosen_instead() {
        Cut first = six.winter(Bush.of(old(45)));
        Cut last = six.winter(Bush.of(Stems.of(2, 2, 2, 0, 0, 0, 7)).inRenovationWinter(4));

        assertThat(CutWords.remarks(first)).containsExactly(
                "So crowded that the limit of a winter would need more than ten winters,"
                        + " so it is renewed in 4 (half-first): half of the canes too many"
                        + " or too old go this winter, the oldest first, and the rest in"
                        + " equal parts over the next three winters.",
                "Winter 1 of 4: 45 canes are too many or too old; 23 go now, then 8, 7 and"
                        + " 7, and with them what grows too old meanwhile.",
                "Print promises a moderate crop meanwhile, without a figure.",
                "You may choose instead: the way balance, which takes a fifth of the canes"
                        + " a year at most, the oldest, and goes on for longer; or the way"
                        + " cut-down, which cuts all down at once; print reckons two to"
                        + " three years until there are flower buds again. prune --variant"
                        + " shows a way, \"choices\" in garden.json keeps it.");
        assertThat(CutWords.remarks(last)).startsWith("The renovation in 4 winters goes on (half-first).",
                "Winter 4 of 4: 7 canes are too many or too old; 7 go now, and then it is done.");
        assertThat(CutWords.stagedInShort(first.staged().orElseThrow()))
                .isEqualTo("45 canes are too many or too old: winter 1 of 4 of the renovation half-first");
    }

    @Test
    void every_way_to_choose_instead_is_one_of_the_form() {
        for (String id : Schools.CROPS.ids()) {
            for (FormPruning form : Pruning.read(Schools.CROPS.get(id)).orElseThrow().forms().values()) {
                for (School school : form.schools()) {
                    school.staged()
                            .ifPresent(staged -> assertThat(staged.instead()).extracting(StagedRenovation.Instead::way)
                                    .isSubsetOf(form.schoolIds()).doesNotContain(school.id()));
                }
            }
        }
    }

    @Provide
    Arbitrary<RenewalSchool> staged() {
        return Arbitraries.of(Schools.renewals().stream().filter(it -> it.staged().isPresent()).toList());
    }

    @Provide
    Arbitrary<int[]> counts() { return Arbitraries.integers().between(0, 14).array(int[].class).ofSize(10); }

    @Property
    void across_the_bound_more_old_wood_never_means_fewer_older_stems_cut(@ForAll("staged") RenewalSchool way,
            @ForAll("counts") int[] counts, @ForAll @IntRange(min = 2, max = 10) int age,
            @ForAll @IntRange(min = 1, max = 5) int winter) {
        int[] more = counts.clone();
        more[age - 1]++;

        Cut few = way.winter(Bush.of(Stems.of(counts)).inRenovationWinter(winter));
        Cut many = way.winter(Bush.of(Stems.of(more)).inRenovationWinter(winter));

        assertThat(Schools.older(many)).isGreaterThanOrEqualTo(Schools.older(few));
        assertThat(many.of(Why.SPENT)).isGreaterThanOrEqualTo(few.of(Why.SPENT));
    }

    @Property
    void the_parts_told_add_up_to_what_is_due(@ForAll("staged") RenewalSchool way, @ForAll("counts") int[] counts,
            @ForAll @IntRange(min = 1, max = 5) int winter) {
        Cut cut = way.winter(Bush.of(Stems.of(counts)).inRenovationWinter(winter));

        cut.staged().ifPresent(part -> {
            assertThat(part.now()).isEqualTo(Schools.older(cut));
            int later = part.later().stream().mapToInt(Integer::intValue).sum();
            assertThat(part.now() + later).isEqualTo(part.due());
            assertThat(part.later()).hasSizeLessThanOrEqualTo(3);
        });
    }

    @Test
    void a_crop_of_a_garden_may_declare_its_own_and_is_told_what_is_wrong_with_it(@TempDir Path folder)
            throws IOException {
        School mine = own(folder, "1", new Problems()).orElseThrow();
        Problems problems = new Problems();

        own(folder, "0", problems);

        assertThat(mine.winter(Bush.of(Stems.of(0, 0, 0, 12))).number()).isEqualTo(6);
        assertThat(problems.list()).extracting(Problem::name).contains("staged-unclear");
    }

    private static java.util.Optional<School> own(Path folder, String first, Problems problems) throws IOException {
        String figure = "'source': 'oldwood', 'seen': 'assumed'}";
        Path file = folder.resolve("crops/blackcurrant/pruning.json");
        Files.createDirectories(file.getParent());
        Files.writeString(file,
                ("{'format': 1, 'forms': {'stool': {'craft': 'renewal', 'why': 'mine', 'schools':"
                        + " [{'id': 'mine', 'words': 'Mine.', 'source': 'oldwood', 'seen':"
                        + " 'assumed', 'spentAge': {'is': 4, 'unit': 'years', " + figure
                        + ", 'keep': {'stems': [3, 3, 3], " + figure + ", 'limit': {'share': 0.2, " + figure
                        + ", 'renovation': {'source': 'oldwood', 'seen': 'assumed',"
                        + " 'staged': {'id': 'all-at-once', 'words': 'All.', 'from': {'is': 9, 'unit': 'stems', "
                        + figure + ", 'winters': {'is': 2, 'unit': 'winters', " + figure + ", 'first': {'is': " + first
                        + ", 'unit': 'share', " + figure + ", 'meanwhile': 'None.'}}}]}}}").replace('\'', '"'));
        return Pruning.read(new Crops(Documents.with(folder, problems)).get("blackcurrant"))
                .flatMap(pruning -> pruning.form("stool")).flatMap(form -> form.school("mine"));
    }
}
