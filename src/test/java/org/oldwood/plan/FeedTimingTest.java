package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.feeding.NoteWarnings;

/** Last good days, waiting times, and the cautions of the material that was chosen. */
class FeedTimingTest {
    private static TestGarden keeping(String materials) {
        return new TestGarden(52, ", \"materials\": [" + materials + "]");
    }

    @Test
    void no_slow_nitrogen_is_planned_after_may_and_no_quick_after_june() {
        for (String kept : List.of("\"poultry-pellets\"", "\"ammonium-sulphate\"", "\"blood-fish-bone\"")) {
            TestGarden garden = keeping(kept).note("fed", "2027-03-20",
                    "'bed': 'ribes', 'material': 'ammonium-sulphate', 'grams': 50");
            LocalDate last = kept.contains("ammonium") ? LocalDate.of(2027, 6, 30) : LocalDate.of(2027, 5, 31);
            List<Task> feeds = garden.plan("2027-05-01").tasks().stream()
                    .filter(task -> task.rule().craft().equals("feeding"))
                    .filter(task -> task.state() == Task.State.OPEN)
                    .filter(task -> task.season().label().equals("2027")).filter(task -> task.amount().isPresent())
                    .toList();

            assertThat(feeds).as(kept).isNotEmpty();
            assertThat(feeds).as(kept).allSatisfy(task -> {
                assertThat(task.window().last()).isBeforeOrEqualTo(last);
                assertThat(task.day()).isBeforeOrEqualTo(last);
            });
        }
    }

    @Test
    void raw_manure_is_planned_90_days_before_picking_or_not_at_all() {
        TestGarden garden = keeping("\"cattle-manure\"");
        LocalDate picking = LocalDate.of(2027, 8, 1);

        assertThat(garden.plan("2026-11-25").tasks()).filteredOn(task -> task.amount().isPresent())
                .filteredOn(task -> task.amount().orElseThrow().tags().contains("manure")).isNotEmpty()
                .allMatch(task -> task.window().last().isBefore(picking.minusDays(90)));
    }

    @Test
    void a_late_feed_and_a_test_too_soon_are_told_at_once() {
        TestGarden garden = keeping("\"dried-blood\"").note("limed", "2027-06-20",
                "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3000");
        NoteWarnings warnings = new NoteWarnings(garden.on("2027-07-20"), TestGarden.CROPS, TestGarden.DOCUMENTS);

        assertThat(warnings
                .about(garden.entry("fed", "2027-07-20", "'bed': 'blue', 'material': 'dried-blood', 'grams': 100")))
                .anyMatch(said -> said.startsWith("Late: ") && said.contains("2027-06-15"));
        assertThat(warnings.about(garden.entry("soil-test", "2027-07-20", "'bed': 'ribes', 'ph': 6")))
                .anyMatch(said -> said.contains("90 days") && said.contains("2027-09-18"));
        assertThat(warnings.about(garden.entry("soil-test", "2027-09-18", "'bed': 'ribes', 'ph': 6"))).isEmpty();
    }

    @Test
    void fresh_wood_asks_for_nitrogen_first() {
        NoteWarnings warnings = new NoteWarnings(keeping("\"straw\"").on("2027-04-01"), TestGarden.CROPS,
                TestGarden.DOCUMENTS);
        TestGarden garden = keeping("\"straw\"");

        assertThat(warnings
                .about(garden.entry("mulched", "2027-04-01", "'bed': 'ribes', 'material': 'wood-chips', 'depthCm': 7")))
                .anyMatch(said -> said.contains("nitrogen first"));
        assertThat(warnings.about(
                garden.entry("mulched", "2027-04-01", "'bed': 'ribes', 'material': 'composted-bark', 'depthCm': 7")))
                .isEmpty();
    }

    @Test
    void a_task_shows_the_cautions_of_its_own_material_alone() {
        Task mineral = keeping("\"ammonium-sulphate\"").task("2026-11-25", "feed-first@ribes.blackcurrant.stool@2027");
        Task meal = keeping("\"dried-blood\"").task("2026-11-25", "feed-first@ribes.blackcurrant.stool@2027");

        assertThat(Cautions.lines(mineral.cautions())).anyMatch(line -> line.contains("Never mix lime"))
                .noneMatch(line -> line.contains("dogs") || line.contains("Raw manure"));
        assertThat(Cautions.lines(meal.cautions())).anyMatch(line -> line.contains("dogs that eat it"))
                .anyMatch(line -> line.contains("mask")).noneMatch(line -> line.contains("Raw manure"));
        Task mixed = keeping("\"blood-fish-bone\"").task("2026-11-25", "feed-first@ribes.blackcurrant.stool@2027");
        assertThat(mixed.amount().orElseThrow().lines()).anyMatch(line -> line.contains("(from memory)"));
    }
}
