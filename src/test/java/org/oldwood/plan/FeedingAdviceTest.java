package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.Amount;
import org.oldwood.facts.feeding.NoteWarnings;

/** What the plan says of feed, lime, sulphur and mulch. */
class FeedingAdviceTest {
    private static final String KEEPS = ", \"materials\": [\"dried-blood\", \"sulphate-of-potash\", \"straw\", \"ammonium-sulphate\"]";
    private static final String CURRANT_FEED = "feed-first@ribes.blackcurrant.stool@2027";

    private static TestGarden north() { return new TestGarden(52, KEEPS); }

    @Test
    void the_first_dressing_is_half_the_nitrogen_and_all_the_potash() {
        Task task = north().task("2026-11-25", CURRANT_FEED);

        // 850 g x 12.5 % x 0.66 on 10 m2
        assertThat(task.amount().orElseThrow().arithmetic()).contains("this dressing: N 7, P2O5 1.3, K2O 11.5 g/m²");
        assertThat(task.amount().orElseThrow().words()).contains("dried blood").contains("sulphate of potash");
        assertThat(task.amount().orElseThrow().tags()).contains("organic-nitrogen");
    }

    @Test
    void what_was_given_is_taken_off_and_the_second_dressing_takes_the_rest() {
        TestGarden garden = north().note("fed", "2027-03-20",
                "'bed': 'ribes', 'material': 'dried-blood', 'grams': 700");
        Task second = garden.task("2027-05-20", "feed-second@ribes.blackcurrant.stool@2027");

        // 14 needed, 700 g x 12.5 % x 0.66 on 10 m2 = 5.8 given
        assertThat(second.amount().orElseThrow().arithmetic())
                .anyMatch(line -> line.startsWith("this dressing: N 8.3,"));
    }

    /** All the nitrogen at once, four days before the first dressing's time: potash is still due, and has its task. */
    @ParameterizedTest
    @CsvSource({"52, 2027-03-05, 2027-03-10, 2027", "-41, 2026-09-05, 2026-09-10, 2026-27"})
    void potash_that_was_left_out_is_a_task_of_its_own(double latitude, String fed, String today, String season) {
        TestGarden garden = new TestGarden(latitude, KEEPS).note("fed", fed,
                "'bed': 'ribes', 'material': 'ammonium-sulphate', 'grams': 700");
        Task second = garden.task(today, "feed-second@ribes.blackcurrant.stool@" + season);

        assertThat(second.state()).isEqualTo(Task.State.OPEN);
        assertThat(second.amount().orElseThrow().words()).contains("sulphate of potash").doesNotContain("and");
        garden.note("fed", today, "'bed': 'ribes', 'material': 'sulphate-of-potash', 'grams': 160");
        assertThat(garden.plan(today).tasks())
                .noneMatch(task -> task.rule().id().equals("feed-second") && task.state() == Task.State.OPEN
                        && task.season().label().equals(season) && task.id().contains("ribes"));
    }

    /** What the first dressing of canes may still give is not planned a second time for the rest. */
    @ParameterizedTest
    @CsvSource({"52, 2027-05-02, 2027", "-41, 2026-11-12, 2026-27"})
    void canes_are_fed_once_while_their_first_dressing_is_due(double latitude, String today, String season) {
        TestGarden garden = new TestGarden(latitude, ", 'materials': ['ammonium-sulphate']".replace('\'', '"'));

        assertThat(garden.plan(today).tasks())
                .filteredOn(task -> task.id().startsWith("feed-canes") && task.season().label().equals(season))
                .filteredOn(task -> !task.window().first().isAfter(LocalDate.parse(today))).hasSize(1);
    }

    @Test
    void a_bed_fed_in_full_is_left_alone() {
        TestGarden garden = north()
                .note("fed", "2027-02-20", "'bed': 'ribes', 'material': 'general-10-10-10', 'grams': 1500")
                .note("limed", "2026-11-20", "'bed': 'ribes', 'material': 'dolomitic-limestone', 'grams': 4000");

        assertThat(garden.plan("2027-05-20").tasks())
                .noneMatch(task -> task.id().equals("feed-second@ribes.blackcurrant.stool@2027")
                        && task.state() == Task.State.OPEN);
    }

    @Test
    void last_seasons_meal_leaves_a_little() {
        TestGarden garden = north().note("fed", "2026-04-01",
                "'bed': 'ribes', 'material': 'dried-blood', 'grams': 1000");

        assertThat(garden.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().arithmetic())
                .contains("left of 2026-04-01 dried blood: N 0.6 g/m²");
    }

    @Test
    void dolomite_counts_as_magnesia_in_its_season() {
        TestGarden garden = north().note("limed", "2026-11-05",
                "'bed': 'ribes', 'material': 'dolomitic-limestone', 'grams': 300");

        // 30 g/m2 x 9 % Mg x 1.658 = 4.5 g/m2 MgO of the 5 needed
        assertThat(garden.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().arithmetic())
                .anyMatch(line -> line.startsWith("due: ") && line.contains("MgO 0.5"));
    }

    @Test
    void growth_that_was_noted_changes_the_dose() {
        TestGarden strong = north().note("vigour", "2026-09-01", "'bed': 'ribes', 'growth': 'strong'");

        assertThat(strong.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().arithmetic())
                .anyMatch(line -> line.contains("growth strong"))
                .anyMatch(line -> line.startsWith("this dressing: N 3.5,"));
    }

    @Test
    void blueberries_never_get_nitrate() {
        TestGarden garden = new TestGarden(52, ", \"materials\": [\"ammonium-nitrate\", \"ammonium-sulphate\"]");
        Amount amount = garden.task("2026-11-25", "feed-blueberry-first@blue.blueberry.stool@2027").amount()
                .orElseThrow();

        assertThat(amount.words()).contains("ammonium sulphate").doesNotContain("nitrate");
        assertThat(amount.lines()).anyMatch(line -> line.contains("Nitrate harms"));
    }

    @Test
    void the_south_has_the_same_dressing_half_a_year_later() {
        Task south = new TestGarden(-41, KEEPS).task("2026-05-25", "feed-first@ribes.blackcurrant.stool@2026-27");
        Task northern = north().task("2026-11-25", CURRANT_FEED);

        assertThat(south.amount().orElseThrow().words()).isEqualTo(northern.amount().orElseThrow().words());
        assertThat(south.day()).isBetween(LocalDate.of(2026, 8, 1), LocalDate.of(2026, 10, 31));
    }

    /** RB209: on established ground at most so much at once, the rest next year; the test comes after the last. */
    @ParameterizedTest
    @CsvSource({"52, 2026-09-20, 2026-12-01, 2027-06-01, 2027-12-01, 2028",
            "-41, 2027-03-20, 2027-06-01, 2027-12-01, 2028-06-01, 2028-29"})
    void lime_comes_in_doses_by_one_test_and_the_rest_a_year_later(double latitude, String tested, String given,
            String between, String again, String season) {
        TestGarden garden = new TestGarden(latitude, KEEPS).note("soil-test", tested, "'bed': 'ribes', 'ph': 5.5");
        Task first = open(garden, given, "lime@ribes").orElseThrow();
        assertThat(first.amount().orElseThrow().value()).isEqualTo(3500);
        assertThat(first.amount().orElseThrow().lines())
                .contains("The first of 2 doses, 12 months or more apart, all by the one test; 7 kg in all.");

        garden.note("limed", given, "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3500");
        assertThat(open(garden, between, "lime@ribes").orElseThrow().amount().orElseThrow().value()).isEqualTo(3500);
        assertThat(open(garden, given, "retest-after-lime@ribes")).isEmpty();

        garden.note("limed", again, "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3500");
        assertThat(open(garden, again, "lime@ribes")).isEmpty();
        assertThat(open(garden, again, "retest-after-lime@ribes")).isPresent();
    }

    /** US Extension, Tennessee: a new test before each further portion of sulphur, and of lime for crops of acid soils. */
    @ParameterizedTest
    @CsvSource({"52, 6.0, acidify, sulphur, acidified, 100, 2027-04-01, 2028-03-20, 2028-02-20",
            "-41, 6.0, acidify, sulphur, acidified, 100, 2026-10-01, 2027-09-20, 2027-08-20",
            "52, 4.2, lime-blueberry, lime, limed, 500, 2026-12-01, 2027-12-10, 2027-11-20"})
    void the_bed_of_blueberries_is_tested_before_each_dose(double latitude, double ph, String rule, String stuff,
            String kind, int grams, String given, String nextYear, String retested) {
        String material = stuff.equals("lime") ? "ground-limestone" : stuff;
        TestGarden garden = new TestGarden(latitude, KEEPS)
                .note("soil-test", "2026-09-01", "'bed': 'blue', 'ph': " + ph)
                .note(kind, given, "'bed': 'blue', 'material': '%s', 'grams': %d".formatted(material, grams));

        assertThat(open(garden, nextYear, rule + "@blue")).isEmpty();
        assertThat(open(garden, nextYear, "retest-after-" + stuff + "@blue")).isPresent();
        garden.note("soil-test", retested, "'bed': 'blue', 'ph': " + ph);
        assertThat(open(garden, nextYear, rule + "@blue")).isPresent();
    }

    private static Optional<Task> open(TestGarden garden, String day, String id) {
        return garden.plan(day).tasks().stream()
                .filter(task -> task.state() == Task.State.OPEN && task.id().startsWith(id + "@")).findFirst();
    }

    @Test
    void no_lime_is_planned_without_a_test_nor_on_blueberries() {
        TestGarden garden = north().note("soil-test", "2026-09-20", "'bed': 'blue', 'ph': 4.6");

        assertThat(garden.plan("2026-11-25").tasks())
                .noneMatch(task -> task.rule().amount().equals(Optional.of("lime")));
    }

    @Test
    void sulphur_is_planned_where_the_test_asks_for_it_and_not_on_free_lime() {
        TestGarden garden = north().note("soil-test", "2026-09-20", "'bed': 'blue', 'ph': 6.0");
        assertThat(garden.task("2026-11-25", "acidify@blue@2027").amount().orElseThrow().value())
                .isLessThanOrEqualTo(34 * 6);

        garden.note("soil-test", "2026-10-20", "'bed': 'blue', 'ph': 6.0, 'freeLime': true");
        assertThat(garden.plan("2026-11-25").tasks()).noneMatch(task -> task.id().startsWith("acidify@"));
    }

    @Test
    void mulch_is_measured_by_what_still_lies_there() {
        TestGarden bare = north();
        TestGarden covered = north().note("mulched", "2026-10-01",
                "'bed': 'canes', 'material': 'composted-bark', 'depthCm': 6");
        Task full = bare.task("2026-11-25", "mulch@canes@2027");
        Task topUp = covered.task("2026-11-25", "mulch@canes@2027");

        assertThat(full.amount().orElseThrow().words()).contains("straw");
        assertThat(topUp.amount().orElseThrow().value()).isLessThan(full.amount().orElseThrow().value());
        assertThat(topUp.reasons()).anyMatch(reason -> reason.words().contains("composted bark, 6 cm on 2026-10-01"));
        assertThat(full.amount().orElseThrow().lines()).anyMatch(line -> line.contains("sheets"));
        assertThat(topUp.amount().orElseThrow().lines()).noneMatch(line -> line.contains("sheets"));
    }

    /** Iowa State: raspberries under sawdust or chips, 1.5 g N a metre more, 2.4 g/m² of the band. None for straw. */
    @Test
    void compost_and_fresh_wood_change_the_feed_and_straw_does_not() {
        TestGarden straw = north().note("mulched", "2026-04-01", "'bed': 'ribes', 'material': 'straw', 'depthCm': 20");
        TestGarden chips = north().note("mulched", "2026-04-01",
                "'bed': 'ribes', 'material': 'wood-chips', 'depthCm': 8");
        TestGarden compost = north().note("mulched", "2026-11-10",
                "'bed': 'ribes', 'material': 'garden-compost', 'depthCm': 5");

        assertThat(chips.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().arithmetic())
                .anyMatch(line -> line.contains("nitrogen + 2.4 g/m²"))
                .anyMatch(line -> line.startsWith("this dressing: N 8.3,"));
        assertThat(straw.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().arithmetic())
                .anyMatch(line -> line.startsWith("this dressing: N 7,"));
        assertThat(compost.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().words()).doesNotContain("potash");
    }

    private static TestGarden keeping(double latitude, String... materials) {
        return new TestGarden(latitude, ", \"materials\": [\"" + String.join("\", \"", materials) + "\"]");
    }

    /**
     * 5 cm of 593 kg/m³ are 29.65 kg/m², with 5.0 kg P2O5 a tonne by RB209, half of it free; of cocoa shell 12.5 kg/m²
     * with 3 % K2O by Texas A&M. The currants need 4 g and 12 g.
     */
    @ParameterizedTest
    @CsvSource({"mushroom-compost, '5 cm of it would bring 74 g/m² of phosphate, 19 times a year'",
            "cocoa-shell, '5 cm of it would bring 300 g/m² of potash, 25 times a year'"})
    void composts_of_the_trade_are_as_rich(String material, String words) {
        TestGarden garden = keeping(52, material, "straw");
        Amount straw = garden.task("2026-11-25", "mulch@ribes@2027").amount().orElseThrow();
        NoteWarnings warnings = new NoteWarnings(garden.on("2026-11-25"), TestGarden.CROPS, TestGarden.DOCUMENTS);

        assertThat(straw.words()).contains("straw");
        assertThat(garden.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().words())
                .doesNotContain(material.substring(0, 5));
        assertThat(warnings.about(garden.entry("mulched", "2026-11-25",
                "'bed': 'ribes', 'material': '%s', 'depthCm': 5".formatted(material))))
                .anyMatch(said -> said.contains(words));
    }

    /** 7.5 cm of garden compost hold some 150 g/m² of magnesia; the currants need 5. */
    @Test
    void a_mulch_too_rich_is_said_and_a_poorer_one_taken() {
        TestGarden both = keeping(52, "garden-compost", "straw");
        Amount straw = both.task("2026-11-25", "mulch@ribes@2027").amount().orElseThrow();
        assertThat(straw.words()).contains("straw");
        assertThat(straw.lines()).anyMatch(
                line -> line.startsWith("Not garden compost: 7.5 cm of it would bring 151 g/m² of magnesia, 30"));

        Amount bark = keeping(52, "garden-compost").task("2026-11-25", "mulch@ribes@2027").amount().orElseThrow();
        assertThat(bark.words()).contains("composted bark");
        assertThat(bark.lines()).anyMatch(line -> line.contains("straw and leaf mould; one of them is reckoned with"));

        NoteWarnings warnings = new NoteWarnings(both.on("2026-11-25"), TestGarden.CROPS, TestGarden.DOCUMENTS);
        assertThat(warnings.about(
                both.entry("mulched", "2026-11-25", "'bed': 'ribes', 'material': 'garden-compost', 'depthCm': 8")))
                .anyMatch(said -> said.startsWith("Rich: garden compost. 8 cm of it would bring 161 g/m² of magnesia"));
        assertThat(warnings.about(
                both.entry("mulched", "2026-11-25", "'bed': 'ribes', 'material': 'garden-compost', 'depthCm': 0.3")))
                .noneMatch(said -> said.startsWith("Rich"));
    }

    /** A surplus of potash is there for the years after; a new test of the soil shows what of it is left. */
    @Test
    void a_surplus_is_carried_until_the_soil_is_tested() {
        TestGarden garden = north().note("fed", "2026-04-01",
                "'bed': 'ribes', 'material': 'sulphate-of-potash', 'grams': 1000");
        // 100 g/m² x 50 % - 12 needed = 38 g/m², three seasons' worth
        assertThat(garden.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().arithmetic())
                .contains("left by earlier seasons: K2O 38 g/m²");
        assertThat(garden.task("2027-11-25", "feed-first@ribes.blackcurrant.stool@2028").amount().orElseThrow().words())
                .doesNotContain("potash");

        garden.note("soil-test", "2026-09-20", "'bed': 'ribes', 'potassiumIndex': 1");
        assertThat(garden.task("2026-11-25", CURRANT_FEED).amount().orElseThrow().words()).contains("potash");
    }

    @Test
    void warnings_come_at_once_and_name_days_and_reason() {
        TestGarden garden = north().note("limed", "2026-11-20",
                "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3000");
        NoteWarnings warnings = new NoteWarnings(garden.on("2026-11-25"), TestGarden.CROPS, TestGarden.DOCUMENTS);

        List<String> said = warnings.about(
                garden.entry("fed", "2026-11-25", "'plant': 'bc', 'material': 'ammonium-sulphate', 'grams': 100"));

        assertThat(said).hasSize(2);
        assertThat(said.get(1)).contains("rain takes about 46 % of the nitrogen");
        assertThat(said.get(0)).contains("limed ground-limestone on 2026-11-20").contains("90 days").contains("ammonia")
                .contains("2027-02-18").contains("noted all the same");
    }

    @Test
    void doubtful_amounts_unknown_materials_and_wrong_crops_are_questioned() {
        TestGarden garden = north();
        NoteWarnings warnings = new NoteWarnings(garden.on("2026-11-25"), TestGarden.CROPS, TestGarden.DOCUMENTS);

        assertThat(warnings
                .about(garden.entry("fed", "2026-11-25", "'bed': 'ribes', 'material': 'dried-blood', 'grams': 400000")))
                .anyMatch(said -> said.contains("Was it 400 g?"));
        assertThat(warnings.about(
                garden.entry("limed", "2026-11-25", "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3.5")))
                .anyMatch(said -> said.contains("Was it 3.5 kg?"));
        assertThat(warnings
                .about(garden.entry("fed", "2026-11-25", "'bed': 'ribes', 'material': 'dried-blod', 'grams': 400")))
                .anyMatch(said -> said.contains("Did you mean \"dried-blood\"?"));
        assertThat(warnings.about(
                garden.entry("mulched", "2026-11-25", "'bed': 'blue', 'material': 'mushroom-compost', 'depthCm': 5")))
                .anyMatch(said -> said.contains("blueberries stand in"));
        assertThat(warnings
                .about(garden.entry("fed", "2027-03-25", "'bed': 'ribes', 'material': 'dried-blood', 'grams': 400")))
                .isEmpty();
    }
}
