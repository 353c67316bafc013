package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;

/** What is bought is what the tasks would note as given, to the gram. */
class ShoppingEqualsTasksTest {
    private static final FeedingBooks BOOKS = new FeedingBooks(TestGarden.DOCUMENTS);
    private static final List<String> FEEDS = BOOKS.materials().feeds().stream().filter(feed -> !feed.bulky())
            .map(feed -> feed.id()).toList();

    private static void check(Plan plan, Garden garden) {
        Map<String, Double> bought = new TreeMap<>();
        for (ShoppingList.Item item : ShoppingList.of(plan, garden).items()) {
            if (item.total().unit().equals("g")) { bought.put(item.total().material(), item.total().amount()); }
        }
        Map<String, Double> noted = new TreeMap<>();
        for (Task task : plan.tasks()) {
            if (task.state() == Task.State.OPEN) {
                for (Amount.Noted entry : Booking.of(task)) {
                    if (entry.says().containsKey("grams")) {
                        noted.merge(entry.says().get("material"), Double.parseDouble(entry.says().get("grams")),
                                Double::sum);
                    }
                }
            }
        }
        for (Task task : plan.tasks()) {
            if (task.state() == Task.State.OPEN && task.amount().filter(it -> it.unit().equals("g")).isPresent()) {
                for (Purchase buy : task.amount().get().buys()) {
                    if (buy.unit().equals("l")) {
                        double density = BOOKS.mulches().mulch(buy.material()).orElseThrow().density().is();
                        bought.merge(buy.material(), buy.amount() * density, Double::sum);
                    }
                }
            }
        }
        assertThat(bought.keySet()).isEqualTo(noted.keySet());
        bought.forEach((material, grams) -> assertThat(noted.get(material)).as(material).isCloseTo(grams, within(0.5)));
    }

    @ParameterizedTest
    @CsvSource({"terrace-school, 2026-11-25", "terrace-school, 2027-02-01", "terrace-school, 2027-05-10",
            "fire-station-hedges, 2026-11-25", "fire-station-hedges, 2027-03-20", "fire-station-hedges, 2027-07-15"})
    void in_both_demo_gardens(String name, String day) throws Exception {
        GardenFolder folder = GardenFolder.open(Path.of("demo-data", name));
        GardenState state = folder.on(LocalDate.parse(day));
        Plan plan = new Planner(state, new CalendarStages(), folder.crops(), folder.documents(), new AllCrafts())
                .plan();

        check(plan, state.garden());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void in_gardens_of_chance_north_and_south(int seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        boolean south = random.nextBoolean();
        List<String> kept = new ArrayList<>();
        for (int i = random.nextInt(5); i >= 0; i--) {
            kept.add(FEEDS.get(random.nextInt(FEEDS.size())));
        }
        String day = (south ? "2026-0" : "2027-0") + (1 + random.nextInt(9)) + "-1" + random.nextInt(10);
        TestGarden garden = new TestGarden(south ? -41 : 52,
                ", \"materials\": [\"" + String.join("\", \"", kept.stream().distinct().toList()) + "\"]")
                .note("soil-test", "2025-09-20",
                        "'bed': 'ribes', 'ph': " + (5 + random.nextInt(20) / 10.0) + ", 'potassiumIndex': "
                                + random.nextInt(5))
                .note("soil-test", "2025-09-20", "'bed': 'blue', 'ph': " + (4 + random.nextInt(30) / 10.0));

        check(garden.plan(day), garden.on(day).garden());
    }
}
