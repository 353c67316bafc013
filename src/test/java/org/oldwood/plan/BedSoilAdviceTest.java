package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.NoteWarnings;
import org.oldwood.facts.feeding.SharedBed;

/** Beds whose crops want unlike soils, and tests that have grown old. */
class BedSoilAdviceTest {
    private static final String BLUEBERRY = "'plant': 'odd', 'crop': 'blueberry', 'bed': 'ribes'";

    private static List<String> said(TestGarden garden, String day) {
        return SharedBed.of(garden.on(day), TestGarden.CROPS, new FeedingBooks(TestGarden.DOCUMENTS));
    }

    private static boolean plans(TestGarden garden, String day, String rule) {
        return garden.plan(day).tasks().stream()
                .anyMatch(task -> task.rule().id().equals(rule) && task.state() == Task.State.OPEN);
    }

    /** One blueberry among currants: sulphur for it would starve the others. */
    @ParameterizedTest
    @CsvSource({"52, 2026-11-25, 2026-09-20", "-41, 2026-05-25, 2026-03-20"})
    void a_bed_is_never_soured_for_one_bush(double latitude, String day, String tested) {
        TestGarden garden = new TestGarden(latitude, "").note("planted", tested, BLUEBERRY).note("soil-test", tested,
                "'bed': 'ribes', 'ph': 6.4");

        assertThat(plans(garden, day, "acidify")).isFalse();
        assertThat(said(garden, day)).singleElement().asString()
                .contains("Highbush blueberries want pH 4.5 to 5.5, blackcurrants 6.5 to 7").contains("to tubs");
        assertThat(said(new TestGarden(latitude, ""), day)).isEmpty();
    }

    @Test
    void planting_a_crop_beside_what_it_cannot_share_is_told_at_once() {
        TestGarden garden = new TestGarden(52, "").note("soil-test", "2026-09-20", "'bed': 'blue', 'ph': 7.6");
        NoteWarnings warnings = new NoteWarnings(garden.on("2026-11-25"), TestGarden.CROPS, TestGarden.DOCUMENTS);

        assertThat(warnings.about(garden.entry("planted", "2026-11-25", BLUEBERRY))).singleElement().asString()
                .contains("no pH suits both").contains("noted all the same");
        assertThat(warnings
                .about(garden.entry("planted", "2026-11-25", "'plant': 'odd', 'crop': 'redcurrant', 'bed': 'ribes'")))
                .isEmpty();
        assertThat(warnings
                .about(garden.entry("planted", "2026-11-25", "'plant': 'odd', 'crop': 'blueberry', 'bed': 'blue'")))
                .singleElement().asString().contains("its pH is 7.6").contains("raised bed of acid compost");
    }

    @Test
    void chalk_is_told_to_be_hopeless_for_blueberries_with_the_way_out() {
        TestGarden garden = new TestGarden(52, "").note("soil-test", "2026-09-20",
                "'bed': 'blue', 'ph': 6.0, 'freeLime': true");

        assertThat(said(garden, "2026-11-25")).singleElement().asString()
                .contains("blueberries cannot thrive there: the soil holds free lime").contains("tubs");
    }

    /** Four years is what most of print gives a test. */
    @ParameterizedTest
    @CsvSource({"52, 2026-11-25, 2023-09-20, true", "52, 2026-11-25, 2022-09-20, false",
            "-41, 2026-05-25, 2023-03-20, true", "-41, 2026-05-25, 2022-03-20, false"})
    void lime_never_rests_on_an_old_test(double latitude, String day, String tested, boolean limed) {
        TestGarden garden = new TestGarden(latitude, "").note("soil-test", tested, "'bed': 'ribes', 'ph': 5.5");

        assertThat(plans(garden, day, "lime")).isEqualTo(limed);
        assertThat(plans(garden, day, "soil-test")).isTrue();
        if (limed) {
            assertThat(garden.plan(day).tasks()).filteredOn(task -> task.rule().id().equals("lime"))
                    .allMatch(task -> task.reasons().stream().anyMatch(reason -> reason.words().contains("years old")))
                    .allMatch(task -> garden.plan(day).tasks().stream()
                            .filter(test -> test.rule().id().equals("soil-test"))
                            .filter(test -> test.subject().id().equals(task.subject().id()))
                            .allMatch(test -> test.day().isAfter(task.day().plusDays(90))));
        }
    }

    /** A blueberry bed at pH 4.2 gets no 350 g/m² at once, but 120 at most. */
    @Test
    void crops_of_acid_soils_get_a_little_lime_at_once() {
        TestGarden garden = new TestGarden(52, "").note("soil-test", "2026-09-20", "'bed': 'blue', 'ph': 4.2");
        Task task = garden.task("2026-11-25", "lime-blueberry@blue@2027");
        double areaM2 = task.subject().bed().orElseThrow().bed().areaM2();

        assertThat(task.amount().orElseThrow().value() / areaM2).isBetween(60.0, 120.0);
        assertThat(task.amount().orElseThrow().lines()).anyMatch(line -> line.contains("first of 3 doses"));
    }

    private static TestGarden keeping(double latitude, String... materials) {
        return new TestGarden(latitude, ", \"materials\": [\"" + String.join("\", \"", materials) + "\"]");
    }

    /** Nitrogen that the open tasks of a season bring to the currants, g/m². */
    private static double nitrogen(TestGarden garden, String day) {
        return garden.plan(day).tasks().stream()
                .filter(task -> task.state() == Task.State.OPEN && task.id().contains("@ribes.blackcurrant")
                        && task.id().startsWith("feed-"))
                .flatMap(task -> task.amount().orElseThrow().buys().stream())
                .mapToDouble(buy -> buy.amount() / 10 * (buy.material().equals("dried-blood") ? 0.0825 : 0.27)).sum();
    }

    /** Lime in February would leave no day for the spring feed: it waits for the autumn, and says so. */
    @ParameterizedTest
    @CsvSource({"52, 2027-02-12, 2026-09-20", "-41, 2026-08-12, 2026-03-20"})
    void lime_late_in_winter_gives_way_to_the_years_nitrogen(double latitude, String day, String tested) {
        TestGarden garden = keeping(latitude, "dried-blood").note("soil-test", tested, "'bed': 'ribes', 'ph': 5.5");

        assertThat(nitrogen(garden, day)).isGreaterThan(13);
        assertThat(garden.plan(day).notices()).noneMatch(said -> said.startsWith("Feed "))
                .filteredOn(said -> said.startsWith("Lime ")).hasSizeLessThanOrEqualTo(1)
                .allMatch(said -> said.contains("gives way to") && said.contains("next autumn"));
    }

    /** Limed in March: blood must wait past its last day, the nitrate need not. */
    @ParameterizedTest
    @CsvSource({"52, 2027-03-14, 2027-03-12", "-41, 2026-09-14, 2026-09-12"})
    void after_late_lime_a_nitrate_takes_over_where_one_is_kept(double latitude, String day, String limed) {
        TestGarden both = keeping(latitude, "dried-blood", "calcium-ammonium-nitrate").note("limed", limed,
                "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3000");
        assertThat(nitrogen(both, day)).isGreaterThan(13);

        TestGarden blood = keeping(latitude, "dried-blood").note("limed", limed,
                "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3000");
        assertThat(blood.plan(day).notices()).anyMatch(said -> said.startsWith("Feed ") && said.contains("gives way to")
                && said.contains("Calcium ammonium nitrate may follow"));
    }

    /** Ash drives ammonia off like lime: spread in March, it keeps blood away past its last day, the nitrate not. */
    @ParameterizedTest
    @CsvSource({"52, 2027-03-14, 2027-03-12", "-41, 2026-09-14, 2026-09-12"})
    void after_late_ash_too_a_nitrate_takes_over(double latitude, String day, String spread) {
        TestGarden both = keeping(latitude, "dried-blood", "calcium-ammonium-nitrate").note("fed", spread,
                "'bed': 'ribes', 'material': 'wood-ash', 'grams': 100");

        assertThat(nitrogen(both, day)).isGreaterThan(12);
    }

    /** Limed in February: the first dressing has no day, the second takes all that one may hold. */
    @ParameterizedTest
    @CsvSource({"52, 2027-02-22, 2027-02-20", "-41, 2026-08-22, 2026-08-20"})
    void where_the_first_dressing_has_no_day_the_second_takes_what_it_may(double latitude, String day, String limed) {
        TestGarden garden = keeping(latitude, "dried-blood").note("limed", limed,
                "'bed': 'ribes', 'material': 'ground-limestone', 'grams': 3000");

        assertThat(nitrogen(garden, day)).isBetween(9.5, 14.5);
    }
}
