package org.oldwood.craft.cuttings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.season.Hemisphere;

class TimelineTest {
    private static final Course BLACKCURRANT = Crafted.course("blackcurrant", "stool", "hardwood");

    private static Timeline north(Course course, String crop, String struck) {
        return Timeline.of(Crafted.lot(12, struck), course, Crafted.north(crop, struck));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/cuttings-times.csv", useHeadersInDisplayName = true)
    void matches_the_published_times(String id, String crop, String form, String method, String cut, String struck,
            int lowMonths, int highMonths, String firstSeason, String seen, String source) {
        Course course = Crafted.course(crop, form, method, cut);

        Timeline line = north(course, crop, struck);

        long months = Math.round(ChronoUnit.DAYS.between(line.struckOn(), line.liftFrom().date()) / 30.44);
        assertThat(months).as("%s (%s)", source, seen).isBetween((long) lowMonths, (long) highMonths);
        assertThat(line.firstPick().label()).as(source).isEqualTo(firstSeason);
        assertThat(line.daysOutside()).isZero();
    }

    @Test
    void a_southern_lot_struck_in_june_2026_grows_in_season_2026_27() {
        Timeline line = Timeline.of(Crafted.lot(12, "2026-06-10"), BLACKCURRANT,
                Crafted.south("blackcurrant", "2026-06-10"));

        assertThat(line.growth().first().label()).isEqualTo("2026-27");
        assertThat(line.daysOutside()).isZero();
        assertThat(line.liftFrom().date()).isEqualTo(LocalDate.parse("2027-05-10"));
        assertThat(line.inPlace().label()).isEqualTo("2027-28");
        assertThat(line.firstPick().label()).isEqualTo("2028-29");
        assertThat(line.fullCrop().label()).isEqualTo("2030-31");
    }

    @Property(tries = 150)
    void the_south_lives_the_same_life_six_months_later(@ForAll @IntRange(min = 0, max = 364) int day) {
        LocalDate north = LocalDate.parse("2026-01-01").plusDays(day);
        LocalDate south = north.plusMonths(6);

        Timeline one = line(north, Hemisphere.NORTH);
        Timeline other = line(south, Hemisphere.SOUTH);

        // Half years differ by a few days, so at the very edge of the window one may be a day
        // outside.
        boolean edge = (one.daysOutside() == 0) != (other.daysOutside() == 0);
        assertThat(Math.abs(one.daysOutside() - other.daysOutside())).isLessThanOrEqualTo(edge ? 25 : 4);
        if (one.daysOutside() == 0) {
            assertThat(one.liftFrom().date().plusMonths(6)).isEqualTo(other.liftFrom().date());
            assertThat(other.firstPick().start()).isEqualTo(one.firstPick().start().plusMonths(6));
        }
    }

    private static Timeline line(LocalDate struck, Hemisphere hemisphere) {
        Setting setting = new Setting(hemisphere, Crafted.stages("blackcurrant"), struck);
        return Timeline.of(LotCounts.struck(12, struck), BLACKCURRANT, setting);
    }

    @Property(tries = 200)
    void whatever_the_day_the_life_runs_forwards(@ForAll @IntRange(min = 0, max = 1460) int day,
            @ForAll boolean south) {
        LocalDate struck = LocalDate.parse("2025-01-01").plusDays(day);

        Timeline line = line(struck, south ? Hemisphere.SOUTH : Hemisphere.NORTH);

        assertThat(line.rooted().date()).isAfter(struck);
        assertThat(line.liftFrom().date()).isAfter(line.rooted().date());
        assertThat(line.inPlace()).isGreaterThan(line.growth().first());
        assertThat(line.firstPick()).isGreaterThanOrEqualTo(line.inPlace());
        assertThat(line.fullCrop()).isGreaterThanOrEqualTo(line.firstPick());
        assertThat(line.ripe(line.firstPick()).date()).isAfter(line.plantOut().date());
    }

    @ParameterizedTest
    @CsvSource({"2026-11-10, 0", // leaf fall done
            "2026-10-21, 0", // within the window's ± of 21 days
            "2026-10-19, -22", "2027-03-10, 0", // bud swell
            "2027-03-31, 0", // within the window's ±
            "2027-04-10, 31", "2026-08-01, -101"})
    void a_lot_struck_outside_its_window_is_dated_and_the_days_are_told(String struck, long outside) {
        Timeline line = north(BLACKCURRANT, "blackcurrant", struck);

        assertThat(line.daysOutside()).isEqualTo(outside);
        assertThat(line.growth().first().label()).isEqualTo("2027");
        assertThat(line.firstPick().label()).isEqualTo("2029");
    }

    @Test
    void a_lot_not_lifted_in_its_time_waits_a_season() {
        Setting late = Crafted.north("blackcurrant", "2028-06-01");

        Timeline line = Timeline.of(Crafted.lot(12, "2026-11-20"), BLACKCURRANT, late);

        assertThat(line.liftFrom().date()).isEqualTo(LocalDate.parse("2028-11-10"));
        assertThat(line.firstPick().label()).isEqualTo("2030");
    }

    @Test
    void a_noted_planting_day_replaces_the_planned_one() {
        LotCounts lot = Crafted.lot(12, "2026-11-20").plantedOut(8, LocalDate.parse("2027-10-20"));

        Timeline line = Timeline.of(lot, BLACKCURRANT, Crafted.north("blackcurrant", "2029-01-01"));

        assertThat(line.plantOut()).isEqualTo(new LikelyDay(LocalDate.parse("2027-10-20"), 0, "planted out"));
        assertThat(line.inPlace().label()).isEqualTo("2028");
    }

    /** What was lifted is not to be lifted any more, and is still to be planted while there is time. */
    @Test
    void a_noted_lifting_is_over_and_planting_out_comes_next() {
        LocalDate day = LocalDate.parse("2027-12-02");
        LotCounts lifted = Crafted.lot(12, "2026-12-05").lifted(8, day);

        Timeline line = Timeline.of(lifted, BLACKCURRANT, Crafted.north("blackcurrant", "2027-12-03"));
        Timeline planted = Timeline.of(lifted.plantedOut(6, day), BLACKCURRANT,
                Crafted.north("blackcurrant", "2027-12-03"));

        assertThat(last(line, Milestone.Step.LIFT)).isEqualTo(day);
        assertThat(last(line, Milestone.Step.PLANT_OUT)).isEqualTo(line.liftBy().date()).isAfter(day);
        assertThat(last(planted, Milestone.Step.PLANT_OUT)).isEqualTo(day);
        LotCounts straight = Crafted.lot(12, "2026-12-05").plantedOut(6, day);
        assertThat(last(Timeline.of(straight, BLACKCURRANT, Crafted.north("blackcurrant", "2029-12-03")),
                Milestone.Step.LIFT)).isEqualTo(day);
    }

    private static LocalDate last(Timeline line, Milestone.Step step) {
        return Milestone.of(line, BLACKCURRANT).stream().filter(each -> each.step() == step).findFirst().orElseThrow()
                .to().date();
    }

    @Test
    void every_step_of_the_life_is_listed_in_order() {
        Timeline line = north(BLACKCURRANT, "blackcurrant", "2026-11-20");

        assertThat(Milestone.of(line, BLACKCURRANT)).extracting(Milestone::step).containsExactly(Milestone.Step.STRIKE,
                Milestone.Step.KEEP_MOIST, Milestone.Step.CHECK, Milestone.Step.LIFT, Milestone.Step.PLANT_OUT,
                Milestone.Step.CUT_BACK, Milestone.Step.FLOWERS_OFF, Milestone.Step.FIRST_PICK,
                Milestone.Step.FULL_CROP);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/cuttings-full-crop.csv", useHeadersInDisplayName = true)
    void first_and_full_crop_come_in_the_published_years(String id, String crop, String form, int firstLow,
            int firstHigh, int fullLow, int fullHigh, int fullPercent, String source) {
        String method = Crafted.propagation(crop).methodFor(form).orElseThrow().id();
        Course course = Crafted.course(crop, form, method);

        assertThat(course.firstPick()).as(source).isBetween(firstLow, firstHigh);
        int full = course.firstPick();
        while (course.share(full) < fullPercent / 100.0) {
            full++;
        }
        assertThat(full).as(source).isBetween(fullLow, fullHigh);
    }

    @Test
    void a_june_strike_in_the_south_first_grows_in_the_summer_that_follows() {
        Course course = Crafted.course("blackcurrant", "stool", "hardwood");
        Timeline line = Timeline.of(Crafted.lot(12, "2026-06-10"), course, Crafted.south("blackcurrant", "2026-06-10"));

        assertThat(line.firstSeason().label()).isEqualTo("2026-27");
        assertThat(line.inPlace().label()).isEqualTo("2027-28");
        assertThat(line.firstPick().label()).isEqualTo("2028-29");
        assertThat(line.daysOutside()).isZero();
    }
}
