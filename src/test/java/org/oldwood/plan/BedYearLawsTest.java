package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.StandFeed;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Season;

/**
 * Gardens of chance, of up to 20 beds and any materials, fed as the plan has it: at the end of the season what a bed
 * needs is what earlier seasons left, what it was given, and what the plan said it could not give.
 * {@code -Dgardens=500} for the long run.
 */
class BedYearLawsTest {
    private static final FeedingBooks BOOKS = new FeedingBooks(TestGarden.DOCUMENTS);
    /** What is a mulch, too, would be laid besides. */
    private static final List<String> FEEDS = BOOKS.materials().feeds().stream().map(Feed::id).filter(
            id -> BOOKS.mulches().mulches().stream().noneMatch(mulch -> mulch.asFeed().filter(id::equals).isPresent()))
            .toList();

    private static final List<String> TEXTURES = List.of("sand", "sandy-loam", "loam", "silt-loam", "clay", "peat");
    private static final List<String> CROPS = List.of("blackcurrant", "redcurrant", "gooseberry", "summer-raspberry",
            "blueberry", "haskap");

    static IntStream gardens() {
        int first = Integer.getInteger("first", 1);
        return IntStream.range(first, first + Integer.getInteger("gardens", 4));
    }

    private final Map<String, Nutrients> given = new HashMap<>();
    private Random random = new Random();
    private boolean south;

    private <T> T any(List<T> of) { return of.get(random.nextInt(of.size())); }

    private SmallGarden garden(int beds) {
        List<String> declared = new ArrayList<>();
        for (int i = 0; i < beds; i++) {
            declared.add("{'id':'b%s','areaM2':%s,'texture':'%s'}".formatted(i, 2 + random.nextInt(15), any(TEXTURES)));
        }
        List<String> kept = IntStream.range(0, random.nextInt(6)).mapToObj(i -> any(FEEDS)).distinct()
                .map("'%s'"::formatted).toList();
        SmallGarden garden = new SmallGarden(south ? -42 : 52, String.join(",", declared),
                kept.isEmpty() ? "" : ",'materials':[%s]".formatted(String.join(",", kept)));
        for (int i = 0; i < beds; i++) {
            garden.note("2020-06-15", "'planted','plant':'p%s','crop':'%s','bed':'b%s','bushes':%s".formatted(i,
                    any(CROPS), i, 1 + random.nextInt(6)));
            if (random.nextBoolean()) {
                garden.note("2025-09-10", "'soil-test','bed':'b%s','ph':%s,'potassiumIndex':%s,'phosphorusIndex':%s"
                        .formatted(i, 4 + random.nextInt(30) / 10.0, random.nextInt(5), random.nextInt(5)));
            }
            if (random.nextInt(3) == 0) {
                garden.note("2026-01-20", "'fed','bed':'b%s','material':'%s','grams':%s".formatted(i, any(FEEDS),
                        50 + random.nextInt(600)));
            }
        }
        return garden;
    }

    @ParameterizedTest
    @MethodSource("gardens")
    void need_is_what_was_left_given_and_told_to_be_missing(int seed) {
        // small seeds next to each other begin alike: all of them in the south
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        south = random.nextBoolean();
        SmallGarden garden = garden(4 + random.nextInt(17));
        String begin = south ? "2026-08-01" : "2026-02-01";
        Planner planner = garden.planner(begin);
        Plan plan = planner.plan();
        Season season = south ? garden.on("2026-11-15").season() : garden.on(begin).season();
        Map<String, List<String>> missing = new HashMap<>();
        Map<String, Budget> before = new HashMap<>();
        for (Subject stand : planner.subjects().ofKind("stand")) {
            food(planner, garden.on(begin), stand, season).ifPresent(budget -> before.put(bed(stand), budget));
        }
        before.values().forEach(BedYearLawsTest::closes);
        shoppingIsWhatTheTasksTake(plan, ShoppingList.of(plan, garden.on(begin).garden()));
        List<Task> feeds = plan.tasks().stream()
                .filter(task -> task.season().equals(season) && task.state() == Task.State.OPEN
                        && task.rule().doneBy().kinds().contains(EntryKind.FED))
                .sorted(Comparator.comparing(Task::day)).toList();
        for (Task task : feeds) {
            task.amount().ifPresent(amount -> missing.computeIfAbsent(bed(task.subject()), bed -> new ArrayList<>())
                    .addAll(amount.lacks()));
            Booking.of(task).forEach(noted -> note(garden, task.day(), noted));
        }
        String end = south ? "2027-01-15" : "2026-07-15";
        Planner after = garden.planner(end);
        for (Subject stand : after.subjects().ofKind("stand")) {
            food(after, garden.on(end), stand, season).ifPresent(budget -> {
                closes(budget);
                nothingIsLost(budget, before.get(bed(stand)), given.getOrDefault(bed(stand), Nutrients.NONE));
                whatLacksWasTold(budget, String.join(" ", missing.getOrDefault(bed(stand), List.of())));
            });
        }
    }

    /** Ash keeps off the ammonium, and manure is too late before picking: neither may take the second dressing along. */
    @ParameterizedTest
    @CsvSource({"52,2026-01-20,2026-02-01,2026", "-42,2026-07-20,2026-08-01,2026-27"})
    void what_the_first_dressing_may_not_bring_the_second_does(double latitude, String ash, String day, String season) {
        SmallGarden garden = new SmallGarden(latitude, "{'id':'a','areaM2':9,'texture':'loam'}",
                ",'materials':['ammonium-sulphate-crystals','sheep-manure']")
                .note("2020-06-15", "'planted','plant':'bc','crop':'blackcurrant','bed':'a','bushes':4")
                .note(ash, "'fed','bed':'a','material':'wood-ash','grams':100");
        Plan plan = garden.plan(day);

        assertThat(plan.notices().toString()).contains("first dressing gives way", "The second dressing takes");
        assertThat(plan.tasks()).filteredOn(task -> task.id().equals("feed-second@a.blackcurrant.stool@" + season))
                .singleElement().satisfies(task -> assertThat(task.amount().orElseThrow().words())
                        .contains("ammonium sulphate").doesNotContain("manure"));
        assertThat(plan.tasks()).extracting(Task::id).doesNotContain("feed-first@a.blackcurrant.stool@" + season);
    }

    private static String bed(Subject subject) { return subject.bed().orElseThrow().bed().id(); }

    private static Optional<Budget> food(Planner planner, GardenState state, Subject stand, Season season) {
        Situation.World world = new Situation.World(state, new CalendarStages(), TestGarden.CROPS,
                TestGarden.DOCUMENTS);
        Situation situation = new Situation(world, stand, season, state.date());
        return StandFeed.of(BOOKS, situation).map(food -> food.budget(BOOKS, season));
    }

    /** To the gram: what ticking off every task would note is what the list has of each material. */
    private static void shoppingIsWhatTheTasksTake(Plan plan, ShoppingList list) {
        Map<String, Double> noted = new HashMap<>();
        plan.tasks().stream().filter(task -> task.state() == Task.State.OPEN && task.amount().isPresent())
                .flatMap(task -> Booking.of(task).stream()).filter(each -> each.kind() == EntryKind.FED)
                .forEach(each -> noted.merge(each.says().getOrDefault("material", ""),
                        Double.parseDouble(each.says().getOrDefault("grams", "0")), Double::sum));
        noted.forEach((material,
                grams) -> assertThat(list.items().stream().map(ShoppingList.Item::total)
                        .filter(total -> total.material().equals(material)).mapToDouble(Purchase::amount).sum())
                        .as(material).isCloseTo(grams, within(0.5)));
    }

    /** Notes an entry, and adds up by the label what it brings the bed. */
    private void note(SmallGarden garden, LocalDate day, Amount.Noted noted) {
        StringBuilder says = new StringBuilder("'%s'".formatted(noted.kind().key()));
        noted.says().forEach((key, value) -> says
                .append(key.equals("grams") ? ",'%s':%s".formatted(key, value) : ",'%s':'%s'".formatted(key, value)));
        garden.note(day.toString(), says.toString());
        Feed feed = BOOKS.materials().feed(noted.says().get("material")).orElseThrow();
        double grams = Double.parseDouble(noted.says().get("grams"));
        GardenState state = garden.on(day.toString());
        String bed = noted.says().containsKey("bed") ? noted.says().get("bed")
                : "b" + noted.says().get("plant").substring(1);
        double area = state.bed(bed).orElseThrow().bed().areaM2();
        given.merge(bed, feed.percent().times(grams / 100 / area).times(feed.shares()), Nutrients::plus);
    }

    private static void closes(Budget budget) {
        for (Nutrient each : Nutrient.values()) {
            assertThat(budget.need().gPerM2().of(each) + budget.beyond().of(each)).isCloseTo(
                    budget.counting().all().of(each) + budget.dressed().of(each) + budget.undone().of(each),
                    within(1e-6));
        }
    }

    /** What counts at the end is what counted before and what was weighed out since. */
    private static void nothingIsLost(Budget now, Budget before, Nutrients weighed) {
        for (Nutrient each : Nutrient.values()) {
            assertThat(now.counting().all().of(each)).as("%s of %s", each, now.need())
                    .isCloseTo(before.counting().all().of(each) + weighed.of(each), within(0.02));
        }
    }

    private static void whatLacksWasTold(Budget budget, String told) {
        for (Nutrient each : Nutrient.values()) {
            double lacks = budget.need().gPerM2().of(each) - budget.counting().all().of(each);
            double smallest = BOOKS.tables().limits().smallest().of(each);
            if (budget.need().known().contains(each)
                    && lacks > smallest * 1.1 + 0.05 * budget.need().gPerM2().of(each)) {
                assertThat(told).as("%s g/m² of %s by %s", lacks, each, budget.inWords()).contains(each.symbol());
            }
        }
        assertThat(budget.counting().given().n()).isLessThanOrEqualTo(
                Math.max(budget.need().gPerM2().n() * 1.1 + 0.2, budget.counting().given().n() - budget.dressed().n()));
    }
}
