package org.oldwood.facts.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.TestGarden;

/** What a bed was given, added up by season. */
class BedLedgerTest {
    private static BedLedger ledger(TestGarden garden, String bed) {
        GardenState state = garden.on("2027-06-01");
        return BedLedger.of(
                new FeedingBooks(TestGarden.DOCUMENTS),
                state,
                TestGarden.CROPS,
                state.bed(bed).orElseThrow());
    }

    private static TestGarden north() {
        return new TestGarden(52, "");
    }

    @Test
    void a_bed_that_got_nothing_has_no_lines() {
        BedLedger empty = ledger(north(), "ribes");

        assertThat(empty.lines()).isEmpty();
        assertThat(empty.seasons()).isEmpty();
    }

    @Test
    void manure_counts_by_its_published_shares_and_leaves_some_nitrogen() {
        TestGarden garden =
                north().note("fed", "2026-04-01", "'bed': 'ribes', 'material': 'cattle-manure', 'grams': 30000");
        BedLedger ledger = ledger(garden, "ribes");

        // RB209 section 2: 3000 g/m2 of 0.60-0.32-0.94 with MgO 0.18; 10, 60 and 90 % of it count;
        // 5 % of the total N in the second year
        assertThat(ledger.lines()).hasSize(1);
        assertThat(ledger.lines().get(0).season().label()).isEqualTo("2026");
        assertThat(ledger.lines().get(0).notRead()).isEmpty();
        Nutrients first = ledger.seasons().get(0).counting();
        assertThat(first.n()).isCloseTo(1.8, within(1e-9));
        assertThat(first.p2o5()).isCloseTo(5.76, within(1e-9));
        assertThat(first.k2o()).isCloseTo(25.38, within(1e-9));
        assertThat(first.mgo()).isCloseTo(5.4, within(1e-9));
        assertThat(ledger.seasons().get(1).season().label()).isEqualTo("2027");
        assertThat(ledger.seasons().get(1).left().n()).isCloseTo(0.9, within(1e-9));
        assertThat(ledger.seasons().get(1).given().sum()).isZero();
    }

    @Test
    void what_one_plant_got_is_told_on_its_ground_and_spread_over_the_bed() {
        TestGarden garden = north().note(
                        "planted", "2021-11-20", "'plant': 'bc-5', 'crop': 'blackcurrant', 'bed': 'ribes'")
                .note("fed", "2027-03-20", "'plant': 'bc-5', 'material': 'ammonium-sulphate', 'grams': 100");
        BedLedger ledger = ledger(garden, "ribes");

        // one bush of five on 10 m2: 2 m2; 100 g of 21 % N
        assertThat(ledger.lines().get(0).plant()).contains("bc-5");
        assertThat(ledger.lines().get(0).gives().n()).isCloseTo(10.5, within(1e-9));
        assertThat(ledger.seasons().get(0).given().n()).isCloseTo(2.1, within(1e-9));
    }

    @Test
    void lime_and_sulphur_are_told_as_limestone_and_sulphur() {
        TestGarden garden = north().note(
                        "limed", "2026-12-01", "'bed': 'ribes', 'material': 'hydrated-lime', 'grams': 1000")
                .note("acidified", "2027-03-01", "'bed': 'blue', 'material': 'ferrous-sulphate', 'grams': 480");

        // neutralising values 70 and 50; ferrous sulphate at eight times the weight
        assertThat(ledger(garden, "ribes").seasons().get(0).limestone()).isCloseTo(140, within(1e-9));
        assertThat(ledger(garden, "blue").seasons().get(0).sulphur()).isCloseTo(10, within(1e-9));
    }

    @Test
    void remembered_figures_carry_their_mark_and_unknown_materials_count_for_nothing() {
        TestGarden garden = north().note("fed", "2027-03-01", "'bed': 'ribes', 'material': 'dried-blood', 'grams': 100")
                .note("fed", "2027-03-02", "'bed': 'ribes', 'material': 'magic-dust', 'grams': 100");
        BedLedger ledger = ledger(garden, "ribes");

        assertThat(ledger.lines().get(0).notRead()).contains("80 % of its N counts in the first year (from memory)");
        assertThat(ledger.lines().get(1).known()).isFalse();
        assertThat(ledger.lines().get(1).gives()).isEqualTo(Nutrients.NONE);
    }

    @Test
    void the_south_counts_by_its_own_seasons() {
        TestGarden south = new TestGarden(-42, "")
                .note("fed", "2026-09-10", "'bed': 'ribes', 'material': 'ammonium-sulphate', 'grams': 200");

        assertThat(ledger(south, "ribes").seasons().get(0).season().label()).isEqualTo("2026-27");
    }
}
