package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.ReferenceEvapotranspiration;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.oldwood.craft.water.evapotranspiration.Temperatures;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Hemisphere;
import org.oldwood.store.Documents;

/**
 * Ends of ranges, shares and signs of the sums of water, each worked out by hand or from the equation named; faults put
 * into them went unnoticed before.
 */
class WaterEdgesTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final CropCoefficient CURRANT = new CropCoefficient(0.3, 1.05, 0.5);

    private static BedWater bed(double competing) { return new BedWater(100, 0.5, 10, RoofWater.NONE, competing, 1); }

    private static WeatherSeries days(int days, double et0, double rain) {
        double[] thirst = new double[days];
        double[] fell = new double[days];
        Arrays.fill(thirst, et0);
        Arrays.fill(fell, rain);
        return Days.measured(FIRST, thirst, fell);
    }

    private static double[] ones(int days) {
        double[] ones = new double[days];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** From day 10 to 20 up, to 30 level, to 40 down. */
    @ParameterizedTest
    @CsvSource({"10, 0.3", "15, 0.675", "20, 1.05", "30, 1.05", "35, 0.775", "40, 0.5", "41, 0.3"})
    void the_curve_of_a_crop_keeps_its_corners(double day, double expected) {
        assertThat(CURRANT.on(day, 10, 20, 30, 40)).isCloseTo(expected, within(1e-12));
    }

    /** FAO-56 equations 62 and 65: 1 m/s more wind adds 0.04 at 3 m, from 0.45 up and not below. */
    @Test
    void wind_raises_the_middle_and_the_end_alike() {
        CropCoefficient windy = new CropCoefficient(0.3, 1.05, 0.5).adjusted(3, 45, 3);

        assertThat(windy.initial()).isEqualTo(0.3);
        assertThat(windy.mid()).isCloseTo(1.09, within(1e-12));
        assertThat(windy.end()).isCloseTo(0.54, within(1e-12));
        CropCoefficient least = new CropCoefficient(0.3, 0.45, 0.45).adjusted(3, 45, 3);
        assertThat(least.mid()).isCloseTo(0.49, within(1e-12));
        assertThat(least.end()).isCloseTo(0.49, within(1e-12));
        assertThat(new CropCoefficient(0.3, 0.44, 0.44).adjusted(3, 45, 3))
                .isEqualTo(new CropCoefficient(0.3, 0.44, 0.44));
    }

    @Test
    void shade_takes_its_cut_by_its_share() {
        assertThat(BedDemand.shadeFactor(0.5, 0.6)).isCloseTo(0.7, within(1e-12));
        assertThat(BedDemand.shadeFactor(0, 0.6)).isEqualTo(1);
    }

    /** A cut of 0.4, half as deep as full and half rotted: a quarter of the cut is left. */
    @Test
    void mulch_counts_by_its_depth_and_what_is_left_of_it() {
        MulchCover mulch = new MulchCover(0.4, 10, 200);

        assertThat(mulch.factor(5, 100)).isCloseTo(0.9, within(1e-12));
        assertThat(mulch.factor(10, 0)).isCloseTo(0.6, within(1e-12));
        assertThat(mulch.factor(20, 0)).isCloseTo(0.6, within(1e-12));
        assertThat(mulch.factor(10, 200)).isEqualTo(1);
        assertThat(mulch.factor(10, -1)).isEqualTo(1);
    }

    /** Inverse variances: 0.2² against 0.1² is four fifths. */
    @Test
    void a_note_weighs_by_its_spread_against_the_accounts() {
        assertThat(MoistureNote.weighed(0.4, 0.4, 0.1, 0.2).weight()).isCloseTo(0.8, within(1e-12));
        assertThat(MoistureNote.weighed(0.4, 0.4, 0.2, 0.1).weight()).isCloseTo(0.2, within(1e-12));
        assertThat(MoistureNote.weighed(1.1, 1.2, 0.1, 0.2)).isEqualTo(new MoistureNote(1, 1, 0.8));
        assertThatThrownBy(() -> new MoistureNote(0, 1.01, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MoistureNote(0.5, 0.4, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MoistureNote(1, 1, -0.01)).isInstanceOf(IllegalArgumentException.class);
    }

    /** "Dry" is 0 to 25 %: noted on ground without water it is right, and on moist ground it is drier. */
    @Test
    void a_note_of_the_class_that_the_account_lies_in_moves_nothing() {
        WeatherSeries still = Days.measured(LocalDate.of(2026, 7, 1), new double[1], new double[1]);
        for (double held : new double[]{0, 0.1, 0.25, 0.6}) {
            BedEvents events = new BedEvents();
            events.note(0, new MoistureNote(0, 0.25, 0.9));

            WaterDays days = new WaterAccount(new BedWater(80, 0.5, 4, RoofWater.NONE, 0, 1)).run(still, new double[1],
                    events, 80 * (1 - held));

            double moved = days.corrections().get(0).movedMm();
            assertThat(moved).isCloseTo(held <= 0.25 ? 0 : 0.9 * 0.35 * 80, within(1e-9));
        }
    }

    private static WaterDays.Correction found(int day, double drierMm) {
        return new WaterDays.Correction(day, 50 + drierMm, 50, 0.5);
    }

    /** 4, 6 and 8 mm drier, half of each put right: 6 − 2 and 8 − 3 are new, 9 mm in two weeks. */
    @Test
    void a_drift_is_what_came_anew_by_the_week() {
        List<WaterDays.Correction> three = List.of(found(0, 4), found(7, 6), found(14, 8));

        assertThat(MoistureTrend.of(three, 3, 5.9)).contains(new MoistureTrend(3, 4.5));
        assertThat(MoistureTrend.of(three, 3, 6)).isEmpty();
        assertThat(MoistureTrend.of(three, 4, 1)).isEmpty();
        assertThat(MoistureTrend.of(three, 3, 1).orElseThrow().drier()).isTrue();
    }

    @Test
    void a_drift_begins_after_the_last_note_that_went_the_other_way() {
        List<WaterDays.Correction> turned = List.of(found(0, -9), found(7, 4), found(14, 6), found(21, 8));
        List<WaterDays.Correction> level = List.of(found(0, 9), found(3, 0), found(7, 4), found(14, 6), found(21, 8));

        assertThat(MoistureTrend.of(turned, 3, 1)).contains(new MoistureTrend(3, 4.5));
        assertThat(MoistureTrend.of(level, 3, 1)).contains(new MoistureTrend(3, 4.5));
        assertThat(MoistureTrend.of(level, 4, 1)).isEmpty();
    }

    @Test
    void a_wetter_drift_is_no_drier_one_and_a_fading_one_is_none() {
        List<WaterDays.Correction> wetter = List.of(found(0, -4), found(7, -6), found(14, -8));

        assertThat(MoistureTrend.of(wetter, 3, 1)).contains(new MoistureTrend(3, -4.5));
        assertThat(MoistureTrend.of(wetter, 3, 1).orElseThrow().drier()).isFalse();
        assertThat(MoistureTrend.of(List.of(found(0, 8), found(7, 1)), 2, 1)).isEmpty();
        assertThat(MoistureTrend.of(List.of(found(7, 4), found(7, 6)), 2, 1)).isEmpty();
    }

    /** A fifth of the thirst of 5 mm is 1 mm (FAO-56 chapter 8, as the class says). */
    @Test
    void rain_counts_from_a_fifth_of_the_thirst() {
        assertThat(EffectiveRain.daily(1, 5)).isEqualTo(1);
        assertThat(EffectiveRain.daily(0.9, 5)).isZero();
    }

    /** Half of 100 mm may go; thirst 5 mm a day leaves the table's fraction as it is. */
    @Test
    void a_bed_is_short_beyond_the_easy_water_and_not_at_its_end() {
        WeatherSeries even = days(1, 5, 5);

        assertThat(account(even, 50).isShort(0)).isFalse();
        assertThat(account(even, 50.5).isShort(0)).isTrue();
    }

    private static WaterDays account(WeatherSeries weather, double startMm) {
        return new WaterAccount(bed(0)).run(weather, ones(weather.days()), new BedEvents(), startMm);
    }

    /** Roots of a hedge take half: 5 mm for the bed are 10 mm out of the ground. */
    @ParameterizedTest
    @ValueSource(strings = {"FAO_56", "FULL_DEMAND"})
    void competing_roots_take_their_share_besides(String convention) {
        WaterDays days = new WaterAccount(bed(0.5), Convention.valueOf(convention)).run(days(1, 5, 0), ones(1),
                new BedEvents(), 10);

        assertThat(days.depletion(0)).isCloseTo(10 + 10, within(1e-12));
        assertThat(days.demand(0)).isEqualTo(5);
        assertThat(days.index(FIRST.plusDays(3))).isEqualTo(3);
    }

    @Test
    void plants_share_a_bed_by_their_weights() {
        CropWaters both = new CropWaters();
        double[] first = both.series(1, 0);
        double[] second = both.series(0, 1);
        double[] mixed = both.series(1, 3);

        for (int day = 0; day < mixed.length; day += 7) {
            assertThat(mixed[day]).isCloseTo((first[day] + 3 * second[day]) / 4, within(1e-12));
        }
    }

    /** In the bare months all comes from the soil, so mulch takes its cut of the whole. */
    @Test
    void the_newest_mulch_counts_and_rots_by_the_day() {
        CropWaters both = new CropWaters();
        List<BedDemand.Laid> laid = List.of(new BedDemand.Laid(5, 10), new BedDemand.Laid(10, 5));
        double[] open = both.series(1, 0);
        double[] under = both.series(List.of(both.currant(1, 2030)), laid);
        double[] bare = both.series(List.of(both.currant(1, 2030)), List.of());

        assertThat(under[4]).isEqualTo(bare[4]);
        assertThat(under[5] / bare[5]).isCloseTo(0.6, within(1e-12));
        assertThat(under[9] / bare[9]).isCloseTo(1 - 0.4 * (1 - 4 / 200.0), within(1e-12));
        assertThat(under[30] / bare[30]).isCloseTo(1 - 0.4 * 0.5 * 0.9, within(1e-12));
        assertThat(bare[180]).isLessThan(open[180]);
    }

    /** Two crops on the calendar's dates. */
    private static final class CropWaters {
        private final Documents documents = Documents.bundled();
        private final Crops crops = new Crops(documents);
        private final WaterFigures figures = WaterFigures.read(documents);
        private final CropCurves curves = new CropCurves(days(365, 0, 0), Hemisphere.NORTH, new CalendarStages(),
                CropCoefficient.TABLE_WIND);

        BedDemand.Planting currant(double weight, int season) { return planting("blackcurrant", weight, season); }

        private BedDemand.Planting planting(String id, double weight, int season) {
            Crop crop = crops.get(id);
            CropWater water = CropWater.of(crop, figures).orElseThrow();
            return new BedDemand.Planting(crop, water, weight, season);
        }

        double[] series(double currants, double blueberries) {
            return series(List.of(currant(currants, 2000), planting("blueberry", blueberries, 2025)), List.of());
        }

        double[] series(List<BedDemand.Planting> plantings, List<BedDemand.Laid> laid) {
            return BedDemand.series(curves, plantings, new MulchCover(0.4, 10, 200), laid, 1);
        }
    }

    @ParameterizedTest
    @CsvSource({"-90, -90, true", "60, 60, true", "-90.1, 0, false", "0, 60.1, false", "5, 4, false"})
    void temperatures_have_their_ends(double tmin, double tmax, boolean fit) {
        allowed(() -> Temperatures.only(tmin, tmax), fit);
    }

    @ParameterizedTest
    @CsvSource({"0, true", "60, true", "-0.1, false", "60.1, false", "NaN, false"})
    void wind_has_its_ends(double wind, boolean fit) {
        allowed(() -> new DayWeather(5, 9, Humidity.UNKNOWN, OptionalDouble.of(wind), Sunshine.UNKNOWN), fit);
    }

    @ParameterizedTest
    @CsvSource({"0, 100, true", "50, 50, true", "-0.1, 50, false", "50, 100.1, false", "51, 50, false"})
    void humidity_has_its_ends(double lowest, double highest, boolean fit) {
        allowed(() -> Humidity.of(OptionalDouble.of(lowest), OptionalDouble.of(highest)), fit);
    }

    @ParameterizedTest
    @CsvSource({"0, true", "24, true", "-0.1, false", "24.1, false"})
    void sunshine_has_its_ends(double hours, boolean fit) {
        allowed(() -> new Sunshine(OptionalDouble.of(hours), OptionalDouble.empty(), false), fit);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0, true", "5, 1, 1, true", "-1, 0, 0, false", "5, 1.1, 0, false", "5, 1, -1, false"})
    void a_roof_has_its_ends(double areaM2, double coefficient, double flush, boolean fit) {
        allowed(() -> new RoofWater(areaM2, coefficient, flush), fit);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.5, 0.9, true", "1, 0.5, 0.91, false", "0, 0.5, 0, false", "1, 0, 0, false", "1, 1, 0, false",
            "1, 0.5, -0.1, false",})
    void a_bed_has_its_ends(double holdsMm, double fraction, double competing, boolean fit) {
        allowed(() -> new BedWater(holdsMm, fraction, 1, RoofWater.NONE, competing, 1), fit);
    }

    private static void allowed(Runnable making, boolean fit) {
        if (fit) {
            making.run();
        } else {
            assertThatThrownBy(making::run).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void a_watering_of_nothing_is_a_watering() {
        BedEvents events = new BedEvents();
        events.water(3, 0);
        events.water(3, 2);
        events.water(3, 4);

        assertThat(events.wateredMm(3)).isEqualTo(6);
        assertThat(events.wateredMm(2)).isZero();
        assertThatThrownBy(() -> events.water(3, -0.1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** FAO-56 equation 47 turns wind measured at 2 m into itself, within its own rounding. */
    @Test
    void wind_at_two_metres_stays_as_it_is() {
        assertThat(ReferenceEvapotranspiration.windAtTwoMetres(5, 2)).isCloseTo(5, within(0.005));
    }

    /** 100 mm at 1 mm an hour: 24 sink the first day and 24 the next; the last day's are left. */
    @Test
    void water_stands_by_the_days_looked_back_on() {
        WaterDays days = new WaterDays(bed(0), days(3, 0, 0), 0);
        days.set(0, 100, 0, 100, 0);

        assertThat(days.standing(2, 3, 1)).isCloseTo(52 / 24.0, within(1e-12));
        assertThat(days.standing(2, 2, 1)).isZero();
    }
}
