package org.oldwood.cli.cuttings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

class CuttingsCommandTest {
    @TempDir
    Path folder;

    private Cli.Result run(String... args) { return Cli.in(folder).run(args); }

    private Cli.Result struck(String... more) {
        String[] first = {"cuttings", "--crop", "blackcurrant", "--struck", "12"};
        String[] all = new String[first.length + more.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return run(all);
    }

    @Test
    void a_lot_needs_no_garden() {
        Cli.Result result = struck("--on", "2026-11-20", "--at", "52,-35");

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
        Cli.Result result = struck("--on", "2026-08-01", "--at", "52,-35");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("Struck 101 days before the window opens");
    }

    @Test
    void a_named_climate_moves_the_days_and_is_named() {
        Cli.Result calendar = struck("--on", "2026-11-20", "--at", "57,-35");
        Cli.Result model = struck("--on", "2026-11-20", "--at", "57,-3", "--climate", "leuchars");

        assertThat(calendar.out()).contains("Days are by the calendar", "open sea");
        assertThat(model.exit()).as(model.err()).isZero();
        assertThat(model.out()).contains("mean climate of Leuchars, Fife, Scotland");
        assertThat(model.out().lines().filter(line -> line.contains("lift ")).toList())
                .isNotEqualTo(calendar.out().lines().filter(line -> line.contains("lift ")).toList());
    }

    @Test
    void a_climate_alone_says_where() {
        Cli.Result south = run("cuttings", "--crop=gooseberry", "--struck=3", "--on=2026-05-20", "--climate=hobart",
                "--json");

        assertThat(south.exit()).as(south.err()).isZero();
        assertThat(south.out()).contains("\"firstPick\": \"20");
        assertThat(south.out()).containsPattern("\"firstPick\": \"20\\d\\d-\\d\\d\"");
    }

    @Test
    void buds_kept_mean_a_stool_where_nothing_else_is_said() {
        Cli.Result result = run("cuttings", "--crop=redcurrant", "--method=hardwood", "--struck=12", "--on=2026-11-20",
                "--at=52,-2");

        assertThat(result.out()).contains("all buds kept", "tops cut to 20-25 cm at planting");
    }

    @Test
    void what_is_not_known_of_a_method_is_said() {
        Cli.Result result = run("cuttings", "--crop=haskap", "--struck=5", "--on=2026-11-20", "--at=52,-2");

        assertThat(result.out().replaceAll("\\s+", " ")).contains("Not known, no figure was found: ");
    }

    @Test
    void kilograms_can_be_wanted() {
        Cli.Result result = run("cuttings", "--crop=blackcurrant", "--at=52,-2", "--today=2026-11-25", "--want-kg=30",
                "--by=2031", "--sure=0.8", "--json");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).contains("\"wantKg\": 30", "\"sure\": 0.8", "\"strike\": ", "\"rowM\": ");
    }

    @Test
    void what_is_wanted_is_turned_into_a_number_and_a_day() {
        Cli.Result result = run("cuttings", "--crop", "blackcurrant", "--at", "52,-2", "--today", "2026-11-25",
                "--want", "10", "--by", "2030");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("Strike ", "m of row", "Mar 2028");
    }

    @Test
    void too_late_names_the_earliest_season() {
        Cli.Result result = run("cuttings", "--crop", "blackcurrant", "--at", "52,-2", "--today", "2026-11-25",
                "--want", "10", "--by", "2028");

        assertThat(result.out()).contains("Too late for season 2028", "season 2029");
    }

    @Test
    void a_wrong_word_is_answered_with_the_right_ones() {
        assertThat(struck("--on", "2026-11-20").err()).contains("--at");
        assertThat(struck("--on", "2026-11-20", "--at", "x").err()).contains("52.1,-2.3");
        assertThat(struck("--on", "2026-11-20", "--at", "52,-2", "--method", "graft").err())
                .contains("Known here: hardwood,");
        assertThat(run("cuttings", "--crop", "blackcurant", "--struck", "3", "--on", "2026-11-20", "--at", "1,1").err())
                .contains("blackcurrant");
    }
}
