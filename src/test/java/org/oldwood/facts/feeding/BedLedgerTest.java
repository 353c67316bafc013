package org.oldwood.facts.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.TestGarden;

/** What a bed was given, added up by season. */
class BedLedgerTest {
    private static BedLedger ledger(TestGarden garden, String bed) {
        GardenState state = garden.on("2027-06-01");
        return BedLedger.of(new FeedingBooks(TestGarden.DOCUMENTS), state, TestGarden.CROPS,
                state.bed(bed).orElseThrow());
    }

    private static TestGarden north() { return new TestGarden(52, ""); }

    @Test
    void a_bed_that_got_nothing_has_no_lines() {
        BedLedger empty = ledger(north(), "ribes");

        assertThat(empty.lines()).isEmpty();
        assertThat(empty.seasons()).isEmpty();
    }

    @Test
    void manure_counts_by_its_published_shares_and_leaves_some_nitrogen() {
        TestGarden garden = north().note("fed", "2026-04-01",
                "'bed': 'ribes', 'material': 'cattle-manure', 'grams': 30000");
        BedLedger ledger = ledger(garden, "ribes");

        // RB209 section 2: 3000 g/m2 of 0.60-0.32-0.94 with MgO 0.18; 10, 60 and 90 % of it count;
        // 5 % of the total N in the second year
        assertThat(ledger.lines()).hasSize(1);
        assertThat(ledger.lines().get(0).season().label()).isEqualTo("2026");
        assertThat(ledger.lines().get(0).notRead()).isEmpty();
        Nutrients first = ledger.seasons().get(0).given().plus(ledger.seasons().get(0).left());
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
        TestGarden garden = north()
                .note("planted", "2021-11-20", "'plant': 'bc-5', 'crop': 'blackcurrant', 'bed': 'ribes'")
                .note("fed", "2027-03-20", "'plant': 'bc-5', 'material': 'ammonium-sulphate', 'grams': 100");
        BedLedger ledger = ledger(garden, "ribes");

        // one bush of five on 10 m2: 2 m2; 100 g of 21 % N
        assertThat(ledger.lines().get(0).plant()).contains("bc-5");
        assertThat(ledger.lines().get(0).now().n()).isCloseTo(10.5, within(1e-9));
        assertThat(ledger.seasons().get(0).given().n()).isCloseTo(2.1, within(1e-9));
    }

    @Test
    void lime_and_sulphur_are_told_as_limestone_and_sulphur() {
        TestGarden garden = north()
                .note("limed", "2026-12-01", "'bed': 'ribes', 'material': 'hydrated-lime', 'grams': 1000")
                .note("acidified", "2027-03-01", "'bed': 'blue', 'material': 'ferrous-sulphate', 'grams': 480");

        // neutralising values 70 and 50; ferrous sulphate at eight times the weight
        assertThat(ledger(garden, "ribes").seasons().get(0).limestone()).isCloseTo(140, within(1e-9));
        assertThat(ledger(garden, "blue").seasons().get(0).sulphur()).isCloseTo(10, within(1e-9));
    }

    @Test
    void remembered_figures_carry_their_mark_and_unknown_materials_count_for_nothing() {
        TestGarden garden = north()
                .note("fed", "2027-03-01", "'bed': 'ribes', 'material': 'blood-fish-bone', 'grams': 100")
                .note("fed", "2027-03-02", "'bed': 'ribes', 'material': 'magic-dust', 'grams': 100");
        BedLedger ledger = ledger(garden, "ribes");

        assertThat(ledger.lines().get(0).notRead()).contains("60 % of its N counts in the first year (from memory)");
        assertThat(ledger.lines().get(1).known()).isFalse();
        assertThat(ledger.lines().get(1).now()).isEqualTo(Nutrients.NONE);
    }

    @Test
    void the_south_counts_by_its_own_seasons() {
        TestGarden south = new TestGarden(-42, "").note("fed", "2026-09-10",
                "'bed': 'ribes', 'material': 'ammonium-sulphate', 'grams': 200");

        assertThat(ledger(south, "ribes").seasons().get(0).season().label()).isEqualTo("2026-27");
    }

    private static Applications.Given fed(double latitude, String day, String material) {
        TestGarden garden = new TestGarden(latitude, "").note("fed", day,
                "'bed': 'ribes', 'material': '%s', 'grams': 5000".formatted(material));
        return ledger(garden, "ribes").lines().get(0);
    }

    @ParameterizedTest
    @CsvSource({
            // from the last day of feeding, 30 June, to the first, 1 March, half way is 30 October
            "52, 2026-07-01, 2026", "52, 2026-10-30, 2026", "52, 2026-10-31, 2027", "52, 2026-11-01, 2027",
            "52, 2027-02-28, 2027",
            // 30 December and 1 September
            "-42, 2026-04-30, 2025-26", "-42, 2026-05-01, 2025-26", "-42, 2026-05-02, 2026-27",
            "-42, 2026-08-31, 2026-27", "-42, 2026-12-30, 2026-27",})
    void what_was_given_feeds_the_crop_whose_time_of_feeding_is_nearest(double latitude, String day, String season) {
        assertThat(fed(latitude, day, "cattle-manure").season()).hasToString(season);
    }

    @ParameterizedTest
    @CsvSource({
            // published: well over half of autumn sulphate of ammonia is gone by spring in England; no loss after March
            "52, 2026-11-01, 0.4", "52, 2026-12-24, 0.7", "52, 2027-02-15, 1", "52, 2027-04-01, 1",
            "-42, 2026-05-05, 0.42", "-42, 2026-08-15, 1",})
    void rain_takes_most_of_the_ammonium_of_autumn_and_the_line_says_so(double latitude, String day, double left) {
        Applications.Given line = fed(latitude, day, "ammonium-sulphate");

        Applications.Given spring = fed(latitude, latitude > 0 ? "2027-04-01" : "2026-10-01", "ammonium-sulphate");
        assertThat(line.now().n()).isCloseTo(left * spring.now().n(), within(0.02 * spring.now().n()));
        assertThat(line.amount().contains("winter leaves about")).isEqualTo(left < 1);
    }

    @Test
    void rain_takes_nothing_of_manure_and_no_potash() {
        assertThat(fed(52, "2026-11-10", "cattle-manure").now())
                .isEqualTo(fed(52, "2027-04-01", "cattle-manure").now());
        assertThat(fed(52, "2026-11-10", "sulphate-of-potash").now())
                .isEqualTo(fed(52, "2027-04-01", "sulphate-of-potash").now());
    }
}
