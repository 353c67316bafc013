package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** Work whose time is the spring of the place: where snow lies until April, and where spring comes early. */
class SpringOfThePlaceTest {
    private static final Pattern TASK = Pattern
            .compile("(?s)\"id\": \"([^\"]+@20(?:27|26-27)[^\"]*)\",\\s+\"rule\".*?\"first\": \"([0-9-]+)\""
                    + ".*?\"last\": \"([0-9-]+)\".*?\"day\": \"([0-9-]+)\"");

    @TempDir
    Path folder;

    private record Days(LocalDate first, LocalDate last, LocalDate day) {}

    private void garden(String latitude, String longitude, String heightM) throws IOException {
        String year = latitude.startsWith("-") ? "2020-07-15" : "2020-03-15";
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": %s, "longitude": %s, "heightM": %s, "zone": "UTC"},
                 "beds": [{"id": "cur", "areaM2": 8}, {"id": "blu", "areaM2": 8, "texture": "sand"},
                          {"id": "can", "areaM2": 20}, {"id": "tub", "areaM2": 0.3, "tubLitres": 60}]}
                """.formatted(latitude, longitude, heightM));
        StringBuilder journal = new StringBuilder();
        for (String plant : new String[]{"blackcurrant|cur", "redcurrant|cur", "blueberry|blu", "blueberry|tub",
                "summer-raspberry|can", "autumn-raspberry|can", "erect-blackberry|can", "haskap|can", "haskap|can",
                "haskap|can", "haskap|can", "haskap|can", "haskap|can", "haskap|can"}) {
            String[] is = plant.split("\\|");
            journal.append("""
                    {"id":"p%s","date":"%s","entry":"planted","plant":"%s-%s","crop":"%s","bed":"%s"}
                    """.formatted(journal.length(), year, is[1], journal.length(), is[0], is[1]));
        }
        note(journal, "2026-05-20", "\"soil-test\",\"bed\":\"cur\",\"ph\":5.2");
        note(journal, "2026-05-20", "\"soil-test\",\"bed\":\"blu\",\"ph\":6.4");
        note(journal, "2026-05-25", "\"inspected\",\"plant\":\"cur-0\",\"finding\":\"big-bud\"");
        note(journal, "2026-06-01", "\"mulched\",\"bed\":\"can\",\"material\":\"straw\",\"depthCm\":10");
        Files.writeString(folder.resolve("journal.jsonl"), journal);
    }

    private static void note(StringBuilder journal, String date, String rest) {
        journal.append("{\"id\":\"n%s\",\"date\":\"%s\",\"entry\":%s}\n".formatted(journal.length(), date, rest));
    }

    /** The coming season's first task of a rule in each bed, by rule and bed. */
    private Map<String, Days> plan(String today) {
        Map<String, Days> days = new HashMap<>();
        TASK.matcher(Cli.in(folder).run("tasks", "year", "--each", "--json", "--today=" + today).out()).results()
                .forEach(found -> days.putIfAbsent(found.group(1).replaceFirst("@([a-z]+)[^@]*@.*", "@$1"),
                        new Days(LocalDate.parse(found.group(2)), LocalDate.parse(found.group(3)),
                                LocalDate.parse(found.group(4)))));
        return days;
    }

    /** Minneapolis, Tampere, Calgary, Corvallis, lowland Britain, Tasmania, Temuco. */
    @ParameterizedTest
    @CsvSource({"44.9, -93.2, 253, 2026-10-01", "61.5, 23.8, 119, 2026-10-01", "51.05, -114.07, 1045, 2026-10-01",
            "44.6, -123.3, 70, 2026-10-01", "52, -2, 40, 2026-10-01", "-43, 147, 50, 2026-06-01",
            "-38.7, -72.6, 114, 2026-06-01"})
    void a_bed_is_cleared_fed_and_mulched_in_this_order(String lat, String lon, String high, String today)
            throws IOException {
        garden(lat, lon, high);
        Map<String, Days> plan = plan(today);
        for (String[] bed : new String[][]{{"cur", "feed-first"}, {"blu", "feed-blueberry-first"}}) {
            Days feed = plan.get(bed[1] + "@" + bed[0]);
            assertThat(plan.get("clear-under@" + bed[0]).day()).isBeforeOrEqualTo(feed.day());
            assertThat(plan.get("mulch@" + bed[0]).day()).isBetween(feed.day(), feed.day().plusDays(30));
        }
        Days second = plan.get("feed-second@cur");
        assertThat(second.first()).isAfter(plan.get("feed-first@cur").last());
        assertThat(second.day()).isAfter(plan.get("mulch@cur").day())
                .isBefore(plan.get("pick-currants@cur").first().minusDays(14));
    }

    /**
     * Snow lies until the middle of April at Tampere; frost leaves the ground in early April at Minneapolis; canes grow as
     * tall by the warmth that brings the flowers.
     */
    @ParameterizedTest
    @CsvSource({"61.5, 23.8, 119, clear-under@cur, 2027-04-10, 2027-05-05",
            "61.5, 23.8, 119, clear-under@blu, 2027-04-10, 2027-05-20",
            "61.5, 23.8, 119, mulch@cur, 2027-05-01, 2027-05-31",
            "61.5, 23.8, 119, pick-big-buds@cur, 2027-03-15, 2027-04-27",
            "64.84, -147.7, 136, inspect-big-bud@cur, 2027-04-10, 2027-04-25",
            "61.5, 23.8, 119, repot-tub@tub, 2027-04-05, 2027-05-16",
            "61.5, 23.8, 119, acidify@blu, 2027-04-20, 2027-06-10",
            "44.9, -93.2, 253, clear-under@cur, 2027-03-28, 2027-04-20",
            "44.9, -93.2, 253, mulch@cur, 2027-04-14, 2027-05-15",
            "51.05, -114.07, 1045, shelter-tub@tub, 2026-10-15, 2026-11-05",
            "66.5, 25.7, 195, lime@cur, 2026-10-01, 2026-10-31",
            "62.45, -114.4, 205, feed-second@cur, 2027-06-15, 2027-06-30",
            "-43, 147, 50, tip-erect@can, 2026-11-15, 2026-12-10",
            "44.6, -123.3, 70, tip-erect@can, 2027-05-25, 2027-06-15"})
    void what_hangs_on_the_season_waits_for_it(String lat, String lon, String high, String task, LocalDate from,
            LocalDate to) throws IOException {
        garden(lat, lon, high);
        assertThat(plan("2026-10-01").get(task).day()).isBetween(from, to);
    }

    /**
     * Michigan: on sand half goes on in early to middle June. Cornell: in cold gardens none after flowering, so all before.
     */
    @Test
    void blueberries_on_sand_get_the_second_half_in_time_or_all_at_first() throws IOException {
        garden("44.9", "-93.2", "253");
        Days second = plan("2026-10-01").get("feed-blueberry-second@blu");
        assertThat(second.first()).isBetween("2027-05-20", "2027-06-05");
        assertThat(second.day()).isBetween("2027-06-01", "2027-06-15");
        assertThat(feed()).contains("Give between bud burst and bloom: 140 g", "Give after flowering: 140 g");
        garden("61.5", "23.8", "119");
        assertThat(plan("2026-10-01")).doesNotContainKey("feed-blueberry-second@blu");
        assertThat(feed()).contains("Give between bud burst and bloom: 280 g").doesNotContain("after flowering");
    }

    /** At the Arctic Circle snow may lie in October. */
    @Test
    void mulch_is_pulled_back_before_the_snow() throws IOException {
        garden("66.5", "25.7", "195");
        assertThat(plan("2026-10-20").get("mulch-gap@can").day()).isBetween("2027-09-07", "2027-10-05");
        garden("52", "-2", "40");
        assertThat(plan("2026-11-20").get("mulch-gap@can").day()).isBetween("2027-10-01", "2027-10-31");
    }

    private String feed() {
        return Cli.in(folder).run("feed", "blu", "--today=2027-04-01").out().replaceAll("\\s+", " ");
    }

    /** Raspberries stand where haskaps are the most: the bed's own crop tells nothing of when their canes are cut. */
    @Test
    void canes_are_carried_away_by_their_own_crop() throws IOException {
        garden("44.6", "-123.3", "70");
        String all = Cli.in(folder).run("tasks", "year", "--each", "--json", "--today=2026-10-01").out();
        assertThat(all).contains("clear-canes-winter@can.autumn-raspberry", "clear-canes-winter@can.summer-raspberry",
                "clear-canes-winter@can.erect-blackberry");
    }
}
