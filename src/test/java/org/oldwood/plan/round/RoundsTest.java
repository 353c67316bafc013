package org.oldwood.plan.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Planning;
import org.oldwood.crop.RecordReader;
import org.oldwood.facts.KeepApart;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Rules;
import org.oldwood.plan.SmallGarden;
import org.oldwood.plan.Task;
import org.oldwood.store.Documents;

/** Rounds hold all tasks, once each, and keep their identity while the work goes on. */
class RoundsTest {
    private static final Rounds ROUNDS = Rounds.read(Documents.bundled());

    private static GardenState state(String garden, LocalDate day) {
        return GardenFolder.open(Path.of("demo-data", garden)).on(day);
    }

    private static Plan plan(String garden, LocalDate day) throws IOException {
        GardenFolder folder = GardenFolder.open(Path.of("demo-data", garden));
        return Planning.planner(folder, folder.on(day)).plan();
    }

    private static List<Round> rounds(String garden, LocalDate day) throws IOException {
        return ROUNDS.of(plan(garden, day), state(garden, day));
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "terrace-school,2027-05-10", "fire-station-hedges,2026-11-25",
            "fire-station-hedges,2027-05-10"})
    void every_task_is_in_one_round_on_a_day_of_its_window_or_waits_for_it(String garden, LocalDate day)
            throws IOException {
        Plan plan = plan(garden, day);
        List<String> gathered = new ArrayList<>();
        for (Round round : ROUNDS.of(plan, state(garden, day))) {
            assertThat(round.title()).isNotBlank().hasSizeLessThanOrEqualTo(40);
            round.finished().forEach(task -> gathered.add(task.id()));
            for (Task task : round.tasks()) {
                gathered.add(task.id());
                assertThat(round.day()).as(task.id()).isBeforeOrEqualTo(task.window().last());
                assertThat(round.later().contains(task)).as(task.id())
                        .isEqualTo(round.day().isBefore(task.window().first()));
            }
        }
        assertThat(gathered).isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(plan.tasks().stream().map(Task::id).toList());
    }

    /** Month by month: ids are never doubled, and a task's round is the same all year, unless it is one of a week. */
    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void a_task_stays_in_its_round_whatever_the_day(String garden) throws IOException {
        Map<String, String> roundOf = new HashMap<>();
        for (int month = 0; month < 12; month++) {
            List<Round> rounds = rounds(garden, LocalDate.of(2026, 11, 25).plusMonths(month));
            assertThat(rounds).extracting(Round::id).doesNotHaveDuplicates();
            for (Round round : rounds) {
                for (Task task : round.all()) {
                    if (round.kind().by() != RoundKind.By.WEEK) {
                        String known = roundOf.putIfAbsent(task.id(), round.id());
                        assertThat(round.id()).as(task.id()).isEqualTo(known == null ? round.id() : known);
                    }
                }
            }
        }
        assertThat(roundOf).hasSizeGreaterThan(50);
    }

    /** Washington State University, scouting: about every two weeks is often enough. */
    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "terrace-school,2027-03-20", "fire-station-hedges,2027-05-10"})
    void one_looks_for_pests_once_a_fortnight_at_most(String garden, LocalDate day) throws IOException {
        List<Long> fortnights = rounds(garden, day).stream().filter(Round::open)
                .filter(round -> round.tasks().stream().anyMatch(task -> task.rule().id().startsWith("look-")))
                .map(round -> ChronoUnit.WEEKS.between(LocalDate.of(1970, 1, 5), round.day())).toList();

        assertThat(fortnights).hasSizeBetween(3, 27).doesNotHaveDuplicates().allMatch(week -> week % 2 == 0);
    }

    /** Nor 9 days after the last look, where all of the walk is in time on a later working day of its week. */
    @Test
    void looks_lie_two_weeks_apart() throws IOException {
        List<LocalDate> looks = rounds("fire-station-hedges", LocalDate.parse("2026-11-25")).stream()
                .filter(Round::open)
                .filter(round -> round.due().stream().anyMatch(task -> task.rule().id().startsWith("look-")))
                .map(Round::day).sorted().toList();

        assertThat(looks).hasSizeGreaterThan(3);
        for (int i = 1; i < looks.size(); i++) {
            assertThat(ChronoUnit.DAYS.between(looks.get(i - 1), looks.get(i))).as("%s", looks).isGreaterThan(13);
        }
    }

    /** Seen as soon as a year begins, a garden's rounds are spread, in order, on the days on which one works. */
    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "fire-station-hedges,2027-05-10"})
    void rounds_are_spread_over_working_days_in_the_order_of_work(String garden, LocalDate day) throws IOException {
        GardenState state = state(garden, day);
        List<Round> rounds = rounds(garden, day).stream().filter(round -> round.open() && round.wanted(state.wishes()))
                .toList();
        Map<LocalDate, Integer> onDay = new HashMap<>();
        Map<String, LocalDate> dayOf = new HashMap<>();
        for (Round round : rounds) {
            onDay.merge(round.day(), 1, Integer::sum);
            round.due().forEach(
                    task -> dayOf.put(task.rule().id() + "@" + task.subject().id() + task.season(), round.day()));
            assertThat(state.garden().workDays()).as(round.id()).contains(round.day().getDayOfWeek());
        }
        assertThat(onDay.values()).allMatch(number -> number <= 3);
        for (Round round : rounds) {
            for (Task task : round.due()) {
                for (String rule : task.rule().after()) {
                    LocalDate before = dayOf.get(rule + "@" + task.subject().id() + task.season());
                    assertThat(before == null || !before.isAfter(round.day())).as("%s after %s", task.id(), rule)
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "terrace-school,2027-02-06", "fire-station-hedges,2027-05-10"})
    void materials_stay_as_far_apart_as_their_tasks(String garden, LocalDate day) throws IOException {
        KeepApart apart = KeepApart.read(Documents.bundled(), state(garden, day).beds().values());
        for (Round round : rounds(garden, day)) {
            for (Task task : round.due()) {
                if (!task.tags().isEmpty() && task.subject().bed().isPresent()) {
                    String bed = task.subject().bed().get().bed().id();
                    assertThat(apart.clash(bed, round.day(), task.tags())).as(task.id()).isEmpty();
                    apart.given(bed, round.day(), task.tags(), task.id());
                }
            }
        }
    }

    private static SmallGarden currants(SmallGarden garden) {
        return garden.note("2020-05-15", "'planted','plant':'bc-1','crop':'blackcurrant','bed':'a'").note("2020-05-15",
                "'planted','plant':'bc-2','crop':'blackcurrant','bed':'a'");
    }

    private static Round round(SmallGarden garden, String day, String id) {
        return ROUNDS.of(garden.plan(day), garden.on(day)).stream().filter(round -> round.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError("no round " + id));
    }

    @ParameterizedTest
    @CsvSource({"north,2026-12-01,2027-02-08,2027,2028", "south,2026-06-01,2026-08-08,2026-27,2027-28"})
    void a_round_outlives_bushes_days_and_half_done_work_and_comes_anew_next_season(String where, String today,
            String later, String season, String next) {
        SmallGarden garden = currants(where.equals("north") ? SmallGarden.north() : SmallGarden.south());
        String id = "cut@%s.blackcurrant".formatted(season);
        Round before = round(garden, today, id);
        assertThat(before.bushes()).isEqualTo(2);
        assertThat(round(garden, later, id).day()).isAfter(before.day());

        garden.note(today, "'planted','plant':'bc-3','crop':'blackcurrant','bed':'a'")
                .note(today, "'counted','plant':'bc-1','stems':{'1':5,'2':4,'3':4,'4+':3}")
                .note(today, "'skipped','task':'inspect-big-bud@bc-1@%s'".formatted(season));
        Round counted = round(garden, today, id);
        assertThat(counted.finished()).isNotEmpty();
        assertThat(counted.tasks()).extracting(Task::id).contains("winter-cut@bc-1@" + season,
                "count-stems@bc-2@" + season);

        garden.note(later, "'pruned','plant':'bc-1','stems':{'4+':3}").note(later, "'grubbed','plant':'bc-2'");
        assertThat(round(garden, later, id).finished()).extracting(Task::id).contains("winter-cut@bc-1@" + season);
        assertThat(ROUNDS.of(garden.plan(later), garden.on(later))).extracting(Round::id).contains(id)
                .doesNotHaveDuplicates();
        String nextYear = LocalDate.parse(today).plusYears(1).toString();
        assertThat(round(garden, nextYear, "cut@%s.blackcurrant".formatted(next)).open()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"52,2026-12-01,2027", "-42,2026-06-01,2026-27"})
    void a_title_counts_the_beds_that_are_left(double latitude, String day, String season) {
        String beds = "{'id':'a','name':'Bed A','areaM2':4},{'id':'b','name':'Bed B','areaM2':4}";
        SmallGarden garden = currants(new SmallGarden(latitude, beds, "")).note("2020-05-15",
                "'planted','plant':'bc-9','crop':'blackcurrant','bed':'b'");
        String id = "soil@" + season;
        assertThat(round(garden, day, id).title()).isEqualTo("Soil test, 2 beds");

        garden.note(day, "'soil-test','bed':'a','ph':6.5");
        assertThat(round(garden, day, id).title()).isEqualTo("Soil test, Bed B");

        garden.note(day, "'soil-test','bed':'b','ph':6.5");
        assertThat(round(garden, day, id).title()).isEqualTo("Soil test, 2 beds");
    }

    /** A bare number says of what only behind the bushes' own name; a row of canes is no bush. */
    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "terrace-school,2027-05-20", "fire-station-hedges,2027-05-10"})
    void a_title_says_what_it_counts(String garden, LocalDate day) throws IOException {
        List<Round> rounds = rounds(garden, day);

        assertThat(rounds).filteredOn(round -> round.kind().by() == RoundKind.By.WEEK).extracting(Round::title)
                .noneMatch(title -> title.matches(".*: \\d+"));
        assertThat(rounds)
                .filteredOn(round -> round.all().stream()
                        .allMatch(task -> task.subject().crop().filter(crop -> crop.inRows()).isPresent()))
                .isNotEmpty().allSatisfy(round -> assertThat(round.bushesInWords()).doesNotContain("bush"));
    }

    @Test
    void a_walk_to_a_row_and_bushes_counts_both() {
        SmallGarden garden = currants(new SmallGarden(52, "{'id':'a','name':'Bed A','areaM2':9}", ""))
                .note("2020-05-15", "'planted','plant':'ra','crop':'summer-raspberry','bed':'a','lengthM':3");
        Round walk = ROUNDS.of(garden.plan("2027-06-20"), garden.on("2027-06-20")).stream()
                .filter(round -> round.kind().by() == RoundKind.By.WEEK)
                .filter(round -> round.tasks().stream().map(task -> task.rule().id()).toList()
                        .containsAll(List.of("pick-raspberries", "pick-currants")))
                .findFirst().orElseThrow();

        assertThat(walk.bushesInWords()).matches("\\d plants");
        assertThat(walk.title()).startsWith("Pick, feel soil and ").doesNotContain("bush");
    }

    @Test
    void what_to_take_along_is_tools_and_sums_of_materials() throws IOException {
        Round feed = rounds("terrace-school", LocalDate.of(2026, 11, 25)).stream()
                .filter(round -> round.id().equals("feed@2027.rubus")).findFirst().orElseThrow();
        double grams = feed.tasks().stream().flatMap(task -> task.amount().orElseThrow().buys().stream())
                .filter(buys -> buys.material().equals("poultry-pellets")).mapToDouble(buys -> buys.amount()).sum();

        assertThat(feed.takeAlong()).startsWith("scale", "bucket").noneMatch(each -> each.contains("pack"));
        assertThat(feed.materials()).filteredOn(sum -> sum.material().equals("poultry-pellets")).singleElement()
                .satisfies(sum -> assertThat(sum.amount()).isEqualTo(grams).isPositive());
        assertThat(feed.cautions()).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void every_rule_has_one_kind_of_round_and_every_kind_names_rules_that_are_there() {
        List<RoundKind> kinds = Documents.bundled().fields("rounds.json").objects("kinds").stream()
                .map(each -> RecordReader.read(each, RoundKind.class)).toList();
        assertThat(kinds).extracting(RoundKind::id).doesNotHaveDuplicates();
        Rules rules = Rules.read(Documents.bundled());
        assertThat(kinds.stream().flatMap(kind -> kind.jobs().stream()).flatMap(job -> job.rules().stream()).toList())
                .doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(rules.ids());
        // what is done again and again would be one round all season if it were not gathered by week
        rules.all().stream().filter(rule -> rule.repeatDays() > 0)
                .forEach(rule -> assertThat(ROUNDS.kind(rule).by()).as(rule.id()).isEqualTo(RoundKind.By.WEEK));
    }

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void nothing_is_cut_in_a_bed_after_its_prunings_were_carried_away(String garden) throws IOException {
        int cleared = 0;
        for (Round round : rounds(garden, LocalDate.of(2026, 11, 25))) {
            Map<String, Boolean> clear = new HashMap<>();
            for (Task task : round.tasks()) {
                String bed = task.subject().bed().map(in -> in.bed().id()).orElse("");
                boolean clears = task.rule().id().startsWith("clear-");
                assertThat(clears || !clear.getOrDefault(bed, false)).as(round.id() + ": " + task.id()).isTrue();
                clear.merge(bed, clears, Boolean::logicalOr);
                cleared += clears ? 1 : 0;
            }
        }
        assertThat(cleared).isPositive();
    }
}
