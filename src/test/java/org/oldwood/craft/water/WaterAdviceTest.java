package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Trend of the notes, the look ahead, doses and standing water. */
class WaterAdviceTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 7, 1);
    private static final BedWater BED = new BedWater(60, 0.5, 4, RoofWater.NONE, 0, 1);

    @Test
    void a_bed_that_dries_faster_than_modelled_is_found_out_and_by_how_much() {
        MoistureTrend drift = MoistureTrend.of(notesOfABedThatLosesMore(1.0), 3, 5).orElseThrow();

        assertThat(drift.drier()).isTrue();
        assertThat(drift.mmPerWeek()).isCloseTo(7, within(1e-6));
        assertThat(drift.notes()).isEqualTo(4);
    }

    @Test
    void a_bed_that_stays_wetter_is_found_out_too() {
        MoistureTrend drift = MoistureTrend.of(notesOfABedThatLosesMore(-1.0), 3, 5).orElseThrow();

        assertThat(drift.drier()).isFalse();
        assertThat(drift.mmPerWeek()).isCloseTo(-7, within(1e-6));
    }

    @Test
    void two_notes_or_notes_that_pull_both_ways_say_nothing() {
        List<WaterDays.Correction> four = notesOfABedThatLosesMore(1.0);

        assertThat(MoistureTrend.of(four.subList(0, 2), 3, 5)).isEmpty();
        assertThat(MoistureTrend.of(List.of(), 3, 5)).isEmpty();
        assertThat(MoistureTrend.of(List.of(new WaterDays.Correction(0, 30, 20, 0.5),
                new WaterDays.Correction(7, 20, 30, 0.5), new WaterDays.Correction(14, 30, 20, 0.5)), 3, 5)).isEmpty();
        assertThat(MoistureTrend.of(four, 3, 50)).as("within what a hand errs").isEmpty();
    }

    /** Notes a week apart, each half believed, on a bed that loses some mm a day more. */
    private static List<WaterDays.Correction> notesOfABedThatLosesMore(double mmPerDay) {
        double weight = 0.5;
        double truth = 0;
        double modelled = 0;
        WaterDays.Correction[] notes = new WaterDays.Correction[4];
        for (int i = 0; i < notes.length; i++) {
            truth += 7 * mmPerDay;
            notes[i] = new WaterDays.Correction(7 * i, truth, modelled, weight);
            modelled += weight * (truth - modelled);
        }
        return List.of(notes);
    }

    @Test
    void the_next_watering_comes_when_the_easy_water_is_gone() {
        NextShort outlook = NextShort.of(BED, steady(4, 0), WaterAccountTest.ones(60),
                new NextShort.Depletion(10, 10, 10), 0.5);

        // p = 0.5 + 0.04 × (5 − 4) = 0.54; 0.54 × 60 = 32.4 mm; 10 + 4 a day passes it on day 6
        assertThat(outlook.likely()).hasValue(5);
        assertThat(outlook.rainless()).hasValue(5);
        assertThat(outlook.plusMinusDays()).hasValue(1);
    }

    @Test
    void mean_rain_puts_it_off_and_more_or_less_of_it_gives_the_spread() {
        NextShort outlook = NextShort.of(BED, steady(4, 2), WaterAccountTest.ones(60),
                new NextShort.Depletion(10, 10, 10), 0.5);

        // 22.4 mm to go at 2, at 3 or at 1 mm a day
        assertThat(outlook.likely()).hasValue(11);
        assertThat(outlook.sooner()).hasValue(7);
        assertThat(outlook.later()).hasValue(22);
        assertThat(outlook.rainless()).hasValue(5);
        assertThat(outlook.plusMinusDays()).hasValue(11);
    }

    @Test
    void where_more_rain_would_keep_it_going_the_sooner_day_gives_the_spread() {
        NextShort outlook = NextShort.of(BED, steady(4, 3), WaterAccountTest.ones(60),
                new NextShort.Depletion(10, 10, 10), 0.5);

        assertThat(outlook.likely()).hasValue(22);
        assertThat(outlook.later()).isEmpty();
        assertThat(outlook.plusMinusDays()).hasValue(22 - 8);
    }

    @Test
    void where_rain_keeps_up_no_date_is_made_up() {
        NextShort outlook = NextShort.of(BED, steady(4, 4), WaterAccountTest.ones(60),
                new NextShort.Depletion(10, 10, 10), 0.5);

        assertThat(outlook.likely()).isEmpty();
        assertThat(outlook.rainless()).isPresent();
        assertThat(outlook.plusMinusDays()).isEmpty();
    }

    private static WeatherSeries steady(double et0, double rain) {
        double[] demand = new double[60];
        double[] wet = new double[60];
        Arrays.fill(demand, et0);
        Arrays.fill(wet, rain);
        return Days.measured(FIRST, demand, wet);
    }

    @Test
    void a_dose_refills_and_no_more() {
        Dose dose = Dose.toRefill(39, 4, 3);

        assertThat(dose.litres()).isEqualTo(156);
        assertThat(dose.litresEach()).isEqualTo(52);
        assertThat(dose.minutes(12)).isEqualTo(13);
        assertThat(dose.hours(13)).isEqualTo(3);
        assertThat(Dose.toRefill(-3, 4, 3).litres()).isZero();
    }

    @Test
    void a_big_roof_on_slow_soil_lets_water_stand_for_more_than_a_day() {
        BedWater clay = new BedWater(45, 0.5, 4, new RoofWater(60, 0.8, 0), 0, 1);
        double[] rain = {0, 30, 0};
        WaterDays days = new WaterAccount(clay).run(Days.measured(FIRST, new double[3], rain), WaterAccountTest.ones(3),
                new BedEvents(), 0);

        // 30 mm of rain and 30 × 12 of roof water on full ground, 24 mm a day sink away
        assertThat(days.standing(1, 3, 1)).isCloseTo(390.0 / 24, within(1e-9));
        assertThat(days.standing(2, 3, 1)).isCloseTo(366.0 / 24, within(1e-9));
        assertThat(days.standing(0, 3, 1)).isZero();
    }
}
