package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/**
 * Digging, liming and soil samples where winters are hard. Minneapolis: the daily mean lies below -1 °C from late
 * November to about 10 March (means of the place's own stations).
 */
class FrozenGroundTest {
    private static final String HARD = "44.9, \"longitude\": -93.2, \"heightM\": 260";
    private static final String MILD = "52.0, \"longitude\": -2.3, \"heightM\": 40";

    @TempDir
    Path folder;

    private void garden(String at) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": %s, "zone": "UTC"}, "workDays": ["saturday"],
                 "beds": [{"id": "a", "areaM2": 4}]}
                """.formatted(at));
        Files.writeString(folder.resolve("journal.jsonl"), """
                {"id":"e1","date":"2020-03-15","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a"}
                """);
    }

    private String soilTest(String today) { return day("soil@", today); }

    private String day(String round, String today) {
        String json = Cli.in(folder).run("tasks", "year", "--json", "--today=" + today).out();
        return Pattern.compile("(?s)\"id\": \"%s.*?\"day\": \"([0-9-]+)\"".formatted(round)).matcher(json).results()
                .map((MatchResult found) -> found.group(1)).findFirst().orElse("none");
    }

    @Test
    void soil_is_tested_before_the_ground_freezes() throws IOException {
        garden(HARD);
        assertThat(soilTest("2026-05-01")).isBetween("2026-11-01", "2026-11-25");
        garden(MILD);
        assertThat(soilTest("2026-05-01")).isBetween("2026-11-20", "2026-12-05");
    }

    @Test
    void bushes_are_cut_when_the_hard_frost_is_over() throws IOException {
        garden(HARD);
        assertThat(day("cut@", "2026-11-30")).isBetween("2027-03-01", "2027-03-20");
        garden(MILD);
        assertThat(day("cut@", "2026-11-30")).isBetween("2026-12-01", "2027-02-28");
    }

    @Test
    void what_is_good_in_any_month_waits_for_the_thaw() throws IOException {
        garden(HARD);
        assertThat(soilTest("2027-01-10")).isBetween("2027-03-25", "2027-04-10");
        assertThat(Cli.in(folder).run("tasks", "--today=2027-01-10").err()).doesNotContain("frozen");
        assertThat(Cli.in(folder).run("why", "soil-test@a@2027", "--today=2027-01-10").out().replaceAll("\\s+", " "))
                .contains("frost holds until its time ends on 2027-02-15; it is still good until 2027-10-31");
    }

    /** It is neither possible today nor tomorrow, and the calendar says from when on it is. */
    @Test
    void what_waits_for_the_thaw_is_next_and_not_possible_now() throws IOException {
        garden(HARD);
        assertThat(possible("2027-01-10")).doesNotContain("Soil test", "blackcurrants");
        assertThat(Cli.in(folder).run("tasks", "year", "--json", "--today=2027-01-10").out())
                .containsPattern("(?s)\"id\": \"soil@.*?\"firstGoodDay\": \"2027-(03-2[5-9]|03-3|04-0)");
        assertThat(Cli.in(folder).run("tasks", "year", "--json", "--today=2026-11-01").out())
                .containsPattern("(?s)\"id\": \"soil@.*?\"firstGoodDay\": \"2026-(09|10|11)-");
        assertThat(Cli.in(folder).run("tasks", "year", "--each", "--today=2027-01-10").out()).containsPattern(
                "from (2[6-9] Mar|3[01] Mar|[1-7] Apr) 2027 to 31 Oct 2027, both included[^a-z]*days\\s+soil-test@a");
        assertThat(possible("2027-03-15")).contains("clear blackcurrants");
        garden(MILD);
        assertThat(possible("2027-01-10")).contains("clear blackcurrants");
    }

    private String possible(String today) {
        String now = Cli.in(folder).run("now", "--today=" + today).out();
        return now.replaceFirst("(?s)Next\\R.*", "");
    }

    @Test
    void what_has_no_other_time_says_that_it_is_frozen() throws IOException {
        garden(HARD);
        Files.writeString(folder.resolve("journal.jsonl"), """
                {"id":"e2","date":"2026-06-15","entry":"soil-test","bed":"a","ph":5.2}
                """, java.nio.file.StandardOpenOption.APPEND);
        assertThat(Cli.in(folder).run("tasks", "--today=2027-01-10").err().replaceAll("\\s+", " "))
                .contains("Lime a: by the climate's means frost holds until its time ends on 2027-02-15");
    }
}
