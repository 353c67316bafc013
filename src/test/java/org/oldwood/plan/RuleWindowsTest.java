package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.store.Documents;

/**
 * Every rule's window, for every crop that it speaks of: never empty, half a year apart in the two halves of the world,
 * and where a publication names the time of year, at that time.
 */
class RuleWindowsTest {
    private static final LocalDate NORTHERN_DAY = LocalDate.of(2025, 11, 5);
    private static final LocalDate SOUTHERN_DAY = LocalDate.of(2025, 5, 5);

    @TempDir
    static Path folder;

    private static Map<String, Window> north = Map.of();
    private static Map<String, Window> south = Map.of();
    private static Rules rules = Rules.read(Documents.bundled());
    private static final Crops CROPS = new Crops(Documents.bundled());

    @BeforeAll
    static void find_all_windows() throws IOException {
        north = windows(NORTHERN_DAY, 52);
        south = windows(SOUTHERN_DAY, -42);
    }

    @Test
    void every_rule_by_stage_or_day_has_a_window_in_both_halves() {
        for (Rule rule : rules.all()) {
            if (!hangsOnTheRecord(rule)) {
                assertThat(north.keySet()).anyMatch(key -> key.startsWith(rule.id() + " "));
            }
        }
        assertThat(south.keySet()).isEqualTo(north.keySet());
    }

    @Test
    void the_south_works_half_a_year_apart() {
        north.forEach((key, window) -> {
            Window other = Optional.ofNullable(south.get(key)).orElseThrow();
            assertThat(ChronoUnit.DAYS.between(other.first(), window.first())).as(key).isBetween(178L, 188L);
            assertThat(ChronoUnit.DAYS.between(other.last(), window.last())).as(key).isBetween(178L, 188L);
        });
    }

    /**
     * Each row names the publication; {@code from} and {@code to} are the time it gives, read as the widest days its
     * words allow in the north.
     */
    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/rules/published-windows.csv", numLinesToSkip = 1)
    void lies_within_the_published_time_or_the_miss_is_told(String rule, String crop, LocalDate from, LocalDate to,
            String source, String misses) {
        Window window = Optional.ofNullable(north.get(rule + " " + crop)).orElseThrow();
        boolean within = !window.first().isBefore(from) && !window.last().isAfter(to);
        assertThat(within).as("%s: %s to %s", source, window.first(), window.last()).isEqualTo(misses == null);
    }

    /**
     * Each edge, beside the printed time in which it lies or the advice that it times; the edges are our choice within.
     */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/rules/windows.txt", delimiter = '|')
    void opens_and_closes_where_its_reason_has_it(String id, String opens, String closes, String latest,
            String source) {
        Rule rule = rules.find(id).orElseThrow();

        assertThat(edge(rule.opens())).as(source).isEqualTo(opens);
        assertThat(edge(rule.closes())).as(source).isEqualTo(closes);
        assertThat(rule.noLaterThan().map(RuleWindowsTest::edge)).as(source).isEqualTo(Optional.ofNullable(latest));
    }

    /** The day within the window, where print or the order of the work tells it. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/rules/days.csv", numLinesToSkip = 1)
    void its_task_stands_on_the_day_that_its_reason_has(String rule, String crop, String from, String to,
            String reason) {
        assertThat(day(rule, crop)).as(reason).isBetween(told(from, crop), told(to, crop));
    }

    private static LocalDate told(String when, String crop) {
        if (when.matches("\\d\\d-\\d\\d")) {
            return LocalDate.parse((when.compareTo("11") < 0 ? "2026-" : "2025-") + when);
        }
        String[] parts = when.split(" ");
        LocalDate day = Stage.find(parts[0]).map(stage -> new CalendarStages()
                .date(CROPS.get(crop.equals("-") ? "gooseberry" : crop), new Season(2026, Hemisphere.NORTH), stage)
                .date()).orElseGet(() -> day(parts[0], crop));
        return parts.length == 1 ? day : day.plusDays(Integer.parseInt(parts[1]));
    }

    private static LocalDate day(String rule, String crop) {
        Window window = Optional.ofNullable(north.get(rule + " " + (crop.equals("-") ? "gooseberry" : crop)))
                .orElseThrow();
        return window.first().plusDays(Math.round((window.days() - 1) * rules.find(rule).orElseThrow().best()));
    }

    /** What missing it costs, judged from the work's reason. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/rules/missed.txt", delimiter = '|')
    void to_miss_it_harms_as_much_as_its_reason_has_it(String ids, String costs, String reason) {
        int harm = Map.of("nothing", 0, "little", 1, "season", 2, "spreads", 3, "kills", 3).get(costs);
        assertThat(Stream.of(ids.split(" ")).filter(id -> rules.find(id).orElseThrow().ifMissed().harm() != harm))
                .as(reason).isEmpty();
    }

    @Test
    void what_it_costs_to_miss_it_is_told_of_every_rule() throws IOException {
        String rows = Files.readString(Path.of("src/test/resources/rules/missed.txt"));
        assertThat(rows.lines().skip(1).flatMap(row -> Stream.of(row.split("\\|")[0].split(" "))))
                .containsExactlyInAnyOrderElementsOf(rules.ids());
    }

    private static String edge(WindowEnd anchor) {
        String of = anchor.of().map(" of "::concat).orElse("");
        String days = anchor.plusDays() == 0 ? "" : " %+d".formatted(anchor.plusDays());
        return anchor.by() + " " + anchor.name() + of + days;
    }

    @Test
    void five_leaves_are_cut_in_december_and_january_in_the_south() {
        Window window = Optional.ofNullable(south.get("spur-cut-summer gooseberry")).orElseThrow();
        assertThat(window.first()).isEqualTo(LocalDate.of(2025, 12, 15));
        assertThat(window.last()).isEqualTo(LocalDate.of(2026, 1, 31));
    }

    private static boolean hangsOnTheRecord(Rule rule) {
        boolean noted = rule.opens().by().equals("entry") || rule.subject().equals("lot");
        return noted || (rule.opens().by().equals("fact") && !rule.subject().equals("stand"));
    }

    private static Map<String, Window> windows(LocalDate day, int latitude) throws IOException {
        GardenFolder garden = AllCropsGarden.at(folder, latitude, "2016-06-10");
        GardenState state = garden.on(day);
        Situation.World world = new Situation.World(state, new CalendarStages(), garden.crops(), garden.documents());
        Judge judge = new Judge(world, new AllCrafts());
        Subjects subjects = new Subjects(state, garden.crops());
        assertThat(garden.problems().list()).isEmpty();
        Map<String, Window> windows = new LinkedHashMap<>();
        for (Rule rule : rules.all()) {
            for (Subject subject : subjects.ofKind(rule.subject())) {
                if (!hangsOnTheRecord(rule) && rule.concerns(subject)) {
                    Verdict verdict = judge.judge(rule, subject, state.season());
                    assertThat(verdict.because()).as(rule.id() + " " + subject.id()).isEmpty();
                    windows.put(rule.id() + " " + subject.crop().map(Crop::id).orElse(""),
                            verdict.window().orElseThrow());
                }
            }
        }
        return windows;
    }
}
