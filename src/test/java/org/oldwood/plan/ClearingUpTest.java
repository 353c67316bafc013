package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where no cut is made nothing is to be cleared away. */
class ClearingUpTest {
    private static List<String> clearing(SmallGarden garden, String day, String season) {
        return garden.plan(day).tasks().stream().map(Task::id).filter(id -> id.startsWith("clear-"))
                .filter(id -> !id.startsWith("clear-under") && id.endsWith("@" + season)).toList();
    }

    @ParameterizedTest
    @CsvSource({"52, 2026-12-20, 2027", "-42, 2026-06-20, 2026-27"})
    void prunings_of_a_bed_are_cleared_unless_every_cut_in_it_was_skipped(double latitude, String day, String season) {
        SmallGarden garden = new SmallGarden(latitude, "{'id':'a','areaM2':9}", "")
                .note("2019-06-15", "'planted','plant':'bc','crop':'blackcurrant','bed':'a'")
                .note("2019-06-15", "'planted','plant':'bl','crop':'blueberry','bed':'a'");
        assertThat(clearing(garden, day, season)).containsExactly("clear-prunings@a@" + season);

        garden.note(day, "'skipped','task':'winter-cut@bc@%s'".formatted(season));
        assertThat(clearing(garden, day, season)).containsExactly("clear-prunings@a@" + season);

        garden.note(day, "'skipped','task':'winter-cut-blueberry@bl@%s'".formatted(season));
        assertThat(clearing(garden, day, season)).isEmpty();

        garden.note(day, "'pruned','plant':'bl','stems':{'4+':1},'cut':'winter'");
        garden.note(day, "'done','task':'winter-cut-blueberry@bl@%s'".formatted(season));
        assertThat(clearing(garden, day, season)).containsExactly("clear-prunings@a@" + season);
    }

    @ParameterizedTest
    @CsvSource({"52, 2027-08-20, 2027", "-42, 2027-02-20, 2026-27"})
    void no_canes_are_carried_away_that_were_left_standing(double latitude, String day, String season) {
        SmallGarden garden = new SmallGarden(latitude, "{'id':'a','areaM2':9}", "").note("2019-06-15",
                "'planted','plant':'ra','crop':'summer-raspberry','bed':'a','lengthM':3");
        assertThat(clearing(garden, day, season)).contains("clear-canes@a.summer-raspberry.cane-row@" + season);

        garden.note(day, "'skipped','task':'canes-out@ra@%s'".formatted(season));
        assertThat(clearing(garden, day, season)).doesNotContain("clear-canes@a.summer-raspberry.cane-row@" + season);
    }

    /** Once the canes of a bed were carried away in one job. */
    @ParameterizedTest
    @CsvSource({"52, 2027-02-20, 2027", "-42, 2026-08-20, 2026-27"})
    void an_old_journal_that_names_the_bed_settles_its_plantings(double latitude, String day, String season) {
        SmallGarden garden = new SmallGarden(latitude, "{'id':'a','areaM2':9}", "")
                .note("2019-06-15", "'planted','plant':'ra','crop':'autumn-raspberry','bed':'a','lengthM':3")
                .note(day, "'done','task':'clear-canes-winter@a@%s'".formatted(season));

        assertThat(
                garden.plan(day).find("clear-canes-winter@a.autumn-raspberry.cane-row@" + season).orElseThrow().state())
                .isEqualTo(Task.State.DONE);
    }
}
