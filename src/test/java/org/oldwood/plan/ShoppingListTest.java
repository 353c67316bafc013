package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oldwood.facts.Purchase;

/** What a year's tasks take, added up. */
class ShoppingListTest {
    private static final String TODAY = "2026-11-25";

    private static ShoppingList list(TestGarden garden) {
        return ShoppingList.of(garden.plan(TODAY), garden.on(TODAY).garden());
    }

    private static ShoppingList.Item item(ShoppingList list, String material) {
        return list.items().stream().filter(item -> item.total().material().equals(material)).findFirst()
                .orElseThrow(() -> new AssertionError(material + " is not on " + list));
    }

    @Test
    void totals_are_the_sums_of_what_the_tasks_take() {
        TestGarden garden = new TestGarden(52, ", \"materials\": [\"ammonium-sulphate\", \"straw\"]").note("soil-test",
                "2026-09-20", "'bed': 'ribes', 'ph': 6.0");
        ShoppingList list = list(garden);

        for (ShoppingList.Item item : list.items()) {
            assertThat(item.uses().stream().mapToDouble(ShoppingList.Use::amount).sum()).as(item.total().name())
                    .isCloseTo(item.total().amount(), within(1e-6));
            assertThat(item.neededBy()).isEqualTo(item.uses().get(0).day());
        }
        // pH 6.0 to 6.5 on sandy loam, factor 7: 350 g/m2 on 10 m2
        assertThat(item(list, "ground-limestone").total().amount()).isCloseTo(3500, within(1e-6));
        assertThat(item(list, "ground-limestone").kept()).isFalse();
        assertThat(item(list, "straw").kept()).isTrue();
    }

    @Test
    void both_dressings_of_the_year_are_bought_at_once() {
        ShoppingList list = list(new TestGarden(52, ", \"materials\": [\"ammonium-sulphate\", \"straw\"]"));
        double currants = item(list, "ammonium-sulphate").uses().stream()
                .filter(use -> use.bed().equals("the currant bed")).mapToDouble(ShoppingList.Use::amount).sum();

        // 14 g N/m2 on 10 m2 of sandy loam at 21 % N: 667 g, in two rounded dressings
        assertThat(currants).isCloseTo(667, within(10.0));
    }

    @Test
    void packs_are_whole_and_enough() {
        ShoppingList list = list(new TestGarden(52, ", \"materials\": [\"ammonium-sulphate\"]"));
        Purchase feed = item(list, "ammonium-sulphate").total();

        assertThat(feed.packs() * 1500.0).isGreaterThanOrEqualTo(feed.amount());
        assertThat((feed.packs() - 1) * 1500.0).isLessThan(feed.amount());
    }

    @Test
    void what_no_kept_material_brings_is_told() {
        ShoppingList list = list(new TestGarden(52, ", \"materials\": [\"kieserite\"]"));

        assertThat(list.lacking()).anyMatch(line -> line.contains("raspberr"));
    }

    /** A tub is fed every other week; what its feed lacks is wanted once. */
    @Test
    void what_the_same_work_wants_again_is_told_once() {
        TestGarden garden = new TestGarden(52, ", \"materials\": [\"kieserite\"]");
        Plan plan = garden.plan(TODAY);
        List<Task> twice = Stream.of(plan, plan).flatMap(each -> each.tasks().stream()).toList();
        Plan again = plan.part(twice, List.of());

        assertThat(ShoppingList.of(again, garden.on(TODAY).garden()).lacking()).isNotEmpty().doesNotHaveDuplicates();
    }

    @Test
    void nothing_due_is_an_empty_list() {
        Plan plan = new TestGarden(52, "").plan(TODAY);
        Plan none = plan.part(List.of(), List.of());

        assertThat(ShoppingList.of(none, new TestGarden(52, "").on(TODAY).garden()).items()).isEmpty();
    }
}
