package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CuttingsCommandTest {
    @TempDir Path folder;

    private Cli.Result run(String... args) {
        return Cli.in(folder).run(args);
    }

    private Cli.Result struck(String... more) {
        String[] first = {"cuttings", "--crop", "blackcurrant", "--struck", "12"};
        String[] all = new String[first.length + more.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return run(all);
    }

    @Test
    void a_lot_needs_no_garden() {
        Cli.Result result = struck("--on", "2026-11-20", "--at", "52,-2");

        assertThat(result.err()).isEmpty();
        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("7.9 plants", "first pick 2029", "10 Nov 2027");
    }

    @Test
    void the_cut_at_planting_decides_the_first_summer_with_fruit() {
        Cli.Result result = struck("--on", "2026-11-20", "--at", "52,-2", "--cut", "none");

        assertThat(result.out()).contains("first pick 2028", "left uncut");
    }

    @Test
    void in_the_south_the_summers_bear_two_years() {
        Cli.Result result = struck("--on", "2026-06-10", "--at", "-41,175", "--json");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("\"firstPick\": \"2028-29\"", "\"daysOutsideWindow\": 0");
    }

    @Test
    void a_strike_outside_its_window_is_dated_and_warned_about() {
        Cli.Result result = struck("--on", "2026-08-01", "--at", "52,-2");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("Struck 101 days before the window opens");
    }

    @Test
    void what_is_wanted_is_turned_into_a_number_and_a_day() {
        Cli.Result result =
                run(
                        "cuttings",
                        "--crop",
                        "blackcurrant",
                        "--at",
                        "52,-2",
                        "--today",
                        "2026-11-25",
                        "--want",
                        "10",
                        "--by",
                        "2030");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("Strike ", "m of row", "10 Mar 2028");
    }

    @Test
    void too_late_names_the_earliest_season() {
        Cli.Result result =
                run(
                        "cuttings",
                        "--crop",
                        "blackcurrant",
                        "--at",
                        "52,-2",
                        "--today",
                        "2026-11-25",
                        "--want",
                        "10",
                        "--by",
                        "2028");

        assertThat(result.out()).contains("Too late for season 2028", "season 2029");
    }

    @Test
    void a_wrong_word_is_answered_with_the_right_ones() {
        assertThat(struck("--on", "2026-11-20").err()).contains("--at");
        assertThat(struck("--on", "2026-11-20", "--at", "x").err()).contains("52,-2");
        assertThat(struck("--on", "2026-11-20", "--at", "52,-2", "--method", "graft").err())
                .contains("hardwood, layer");
        assertThat(
                        run(
                                        "cuttings",
                                        "--crop",
                                        "blackcurant",
                                        "--struck",
                                        "3",
                                        "--on",
                                        "2026-11-20",
                                        "--at",
                                        "1,1")
                                .err())
                .contains("blackcurrant");
    }
}
