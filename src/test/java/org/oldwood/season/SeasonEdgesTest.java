package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Stage;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.DegreeDays;
import org.oldwood.season.sums.GrowingDegreeHours;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySum;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.store.Documents;

/**
 * Days counted by hand in a garden where every night has 5 °C and every day 15 °C; faults put into the counting went
 * unnoticed before.
 */
class SeasonEdgesTest {
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final SeasonMethods METHODS = SeasonMethods.read(DOCUMENTS);
    private static final Season SEASON = new Season(2027, Hemisphere.NORTH);
    private static final LocalDate FROM = LocalDate.of(2027, 2, 1);

    private static Figure figure(double value) { return range(value, value, value); }

    private static Figure range(double low, double is, double high) {
        return new Figure(is, low, high, "", List.of(), Seen.READ, "");
    }

    private static WeatherDay day(LocalDate date, double min, double max) {
        return new WeatherDay(date, OptionalDouble.of(min), OptionalDouble.of(max), OptionalDouble.empty());
    }

    private static Months every(double value) {
        double[] months = new double[12];
        java.util.Arrays.fill(months, value);
        return Months.of(months);
    }

    private static SeasonDays even(Weather weather) {
        return new SeasonDays(SEASON,
                new SeasonDays.Place(new SunYear(52), every(5).curve(), every(15).curve(), 0, weather));
    }

    private static StageModel model(Weather weather) { return new StageModel(even(weather), METHODS, 1, 18); }

    private static Optional<LocalDate> heat(double sum, Optional<StageRule.Window> window,
            Optional<StageRule.WarmSummer> warm) {
        return model(Weather.none()).heat(new StageRule.Heat(5, false, figure(sum), figure(7), window, warm));
    }

    /** Five degrees a day above 5 °C: 50 are full on the tenth day, the first one counted. */
    @Test
    void heat_is_full_on_the_day_that_fills_it() {
        assertThat(heat(50, Optional.empty(), Optional.empty())).contains(FROM.plusDays(9));
        assertThat(heat(50.1, Optional.empty(), Optional.empty())).contains(FROM.plusDays(10));
        assertThat(heat(5 * 270, Optional.empty(), Optional.empty())).contains(FROM.plusDays(269));
        assertThat(heat(5 * 270 + 0.1, Optional.empty(), Optional.empty())).isEmpty();
    }

    @Test
    void a_window_holds_a_stage_at_both_ends() {
        Optional<StageRule.Window> window = Optional.of(new StageRule.Window(MonthDay.of(2, 20), MonthDay.of(3, 2)));

        assertThat(heat(50, window, Optional.empty())).contains(LocalDate.of(2027, 2, 20));
        assertThat(heat(5 * 24, window, Optional.empty())).contains(LocalDate.of(2027, 2, 24));
        assertThat(heat(5 * 40, window, Optional.empty())).contains(LocalDate.of(2027, 3, 2));
        assertThat(heat(9999, window, Optional.empty())).contains(LocalDate.of(2027, 3, 2));
    }

    /** The warmest month has 18 °C here. */
    @Test
    void a_summer_is_warm_above_its_bound_and_not_at_it() {
        MonthDay then = MonthDay.of(3, 1);

        assertThat(heat(50, Optional.empty(), warmAbove(18, then))).contains(FROM.plusDays(9));
        assertThat(heat(50, Optional.empty(), warmAbove(17.9, then))).contains(LocalDate.of(2027, 3, 1));
    }

    private static Optional<StageRule.WarmSummer> warmAbove(double celsius, MonthDay then) {
        return Optional.of(new StageRule.WarmSummer(figure(celsius), then));
    }

    @ParameterizedTest
    @CsvSource({"5, 5", "50, 9", "1000, 20"})
    void heat_after_a_stage_stays_between_its_fewest_and_most_days(double sum, int days) {
        StageRule.HeatAfter rule = new StageRule.HeatAfter(Stage.FIRST_FLOWER, 5, figure(sum), range(5, 10, 20),
                figure(3), Optional.empty(), Optional.empty());

        assertThat(model(Weather.none()).heatAfter(rule, rule.sum(), FROM)).isEqualTo(FROM.plusDays(days));
    }

    @Test
    void a_mean_has_risen_when_it_is_reached() {
        StageModel model = model(Weather.none());
        LocalDate first = even(Weather.none()).on(METHODS.heat().from());

        assertThat(model.meanRises(new StageRule.MeanRises(figure(10), figure(5)))).contains(first);
        assertThat(model.meanRises(new StageRule.MeanRises(figure(10.1), figure(5)))).isEmpty();
    }

    private static final StageRule.LeafFall SLIDES = new StageRule.LeafFall(MonthDay.of(10, 4), figure(8), figure(1.3),
            figure(11), figure(14));

    /** A normal autumn of 10 °C is 2 °C above 8: 2.6 days later. One of 30 °C counts as 13 °C. */
    @Test
    void leaf_fall_slides_with_the_mean_of_the_autumn_within_bounds() {
        assertThat(model(Weather.none()).leafFall(SLIDES)).isEqualTo(LocalDate.of(2027, 10, 7));
        assertThat(model(autumn(25, 35)).leafFall(SLIDES)).isEqualTo(LocalDate.of(2027, 10, 11));
        assertThat(model(autumn(-15, -5)).leafFall(SLIDES)).isEqualTo(LocalDate.of(2027, 9, 21));
    }

    private static Weather autumn(double min, double max) {
        return Weather.of(LocalDate.of(2027, 9, 1).datesUntil(LocalDate.of(2027, 11, 1))
                .map(date -> day(date, min, max)).toList());
    }

    @Test
    void days_of_a_season_are_counted_with_both_ends() {
        SeasonDays days = even(Weather.of(List.of(day(FROM.plusDays(2), 11, 21))));
        HourlySum hours = celsius -> 1;
        int second = days.index(FROM.plusDays(2));
        double length = days.dayLengthH(second);

        assertThat(days.hourly(hours, FROM, FROM.plusDays(2))).isEqualTo(72);
        assertThat(days.hourly(hours, FROM, FROM)).isEqualTo(24);
        assertThat(days.isMeasured(second)).isTrue();
        assertThat(days.isMeasured(second - 1)).isFalse();
        assertThat(days.measuredDays()).isEqualTo(1);
        assertThat(days.meanC(second)).isEqualTo(16);
        assertThat(days.meanC(second, 3)).isEqualTo((10 + 10 + 16) / 3.0);
        assertThat(days.heatByDayLength(second, 6)).isCloseTo(10 * Math.pow(length / 12, 2), within(1e-9));
    }

    /** A year of 365 days: 29 February has the normal of the 28th, and March goes on as ever. */
    @ParameterizedTest
    @CsvSource({"2027-01-01, 0", "2027-02-28, 58", "2027-03-01, 59", "2027-12-31, 364", "2028-02-28, 58",
            "2028-02-29, 58", "2028-03-01, 59", "2028-12-31, 364",})
    void normal_days_do_not_leap(LocalDate date, int day) { assertThat(SeasonDays.normalDay(date)).isEqualTo(day); }

    /** Half way between the extremes less the base, never below nothing. */
    @Test
    void simple_degree_days() {
        assertThat(DegreeDays.simple(10, 20, 5, 30)).isEqualTo(10);
        assertThat(DegreeDays.simple(0, 4, 5, 30)).isZero();
        assertThat(DegreeDays.simple(10, 40, 5, 30)).isEqualTo(15);
        assertThat(DegreeDays.sine(0, 5, 5)).isZero();
        assertThat(DegreeDays.sine(5, 15, 5)).isEqualTo(5);
    }

    /** A sine of 28 °C a turn: most at 7, none at 14, least from 21 on, none at frost. */
    @ParameterizedTest
    @CsvSource({"-1, 0", "0, 0", "7, 1", "14, 0", "21, -1", "21.1, -1", "30, -1"})
    void modified_utah_by_its_sine(double celsius, double expected) {
        assertThat(ChillModels.read(Documents.bundled()).get("modified-utah").begin().hour(celsius)).isCloseTo(expected,
                within(1e-12));
    }

    /** Two half waves from 4 °C to 25 and from 25 to 36: half of 21 at 14.5 °C, 21 × (1 − √½) at 30.5 °C. */
    @ParameterizedTest
    @CsvSource({"3.9, 0", "4, 0", "14.5, 10.5", "25, 21", "27.75, 12.963648", "30.5, 6.150758", "36, 0", "36.1, 0"})
    void growing_degree_hours_by_their_waves(double celsius, double expected) {
        assertThat(new GrowingDegreeHours().hour(celsius)).isCloseTo(expected, within(1e-6));
    }

    /** Of the standard normal distribution: half its density at 0 is above on the average. */
    @Test
    void what_is_above_a_base_on_the_average() {
        assertThat(Bell.expectedAbove(5, 2, 5)).isCloseTo(2 / Math.sqrt(2 * Math.PI), within(1e-6));
        assertThat(Bell.expectedAbove(7, 0, 5)).isEqualTo(2);
        assertThat(Bell.expectedAbove(4, 0, 5)).isZero();
        assertThat(Bell.below(0)).isCloseTo(0.5, within(1e-7));
    }

    /** Means 10, then 12 and 14 filled in on a straight line, then 16; the ends carried on. */
    @Test
    void days_not_measured_lie_on_the_line_between() {
        Weather weather = Weather.of(List.of(day(FROM, 5, 15), day(FROM.plusDays(3), 11, 21)));
        LocalDate last = FROM.plusDays(5);
        HourlySeries series = HourlySeries.of(52, weather, Optional.empty(), FROM.minusDays(1), last).orElseThrow();

        assertThat(series.ofDays((least, most) -> (least + most) / 2, days(FROM, FROM.plusDays(3))))
                .isCloseTo(10 + 12 + 14 + 16, within(1e-9));
        assertThat(series.ofDays((least, most) -> (least + most) / 2, days(FROM.minusDays(1), last)))
                .isCloseTo(10 + 52 + 16 + 16, within(1e-9));
        assertThat(series.ofDays((least, most) -> DegreeDays.sine(least, most, 0), days(FROM, FROM.plusDays(3))))
                .isCloseTo(52, within(1e-9));
        assertThat(series.filled(days(FROM, FROM.plusDays(3)))).isEqualTo(2);
        assertThat(series.filled(days(FROM.minusDays(1), last))).isEqualTo(5);
        assertThat(series.sums(List.of(celsius -> 1), List.of(days(FROM, FROM.plusDays(3))))[0][0]).isEqualTo(96);
        assertThat(series.sums(List.of(celsius -> 1), List.of(days(FROM, FROM)))[0][0]).isEqualTo(24);
        assertThat(HourlySeries.of(52, Weather.none(), Optional.empty(), FROM, last)).isEmpty();
    }

    private static HourlySeries.Days days(LocalDate first, LocalDate last) {
        return new HourlySeries.Days(first, last);
    }

    /**
     * The risk by its definition: 1 − e^(−nights), over three dates that stand for the spread of the stage's own (Gauss
     * and Hermite: two thirds on the date, a sixth √3 spreads to either side).
     */
    @ParameterizedTest
    @ValueSource(strings = {"blackcurrant", "blueberry"})
    void frost_at_a_stage_is_counted_over_its_own_days(String id) {
        Crop crop = new Crops(DOCUMENTS).get(id);
        Climate climate = Climate.bundled("leuchars", DOCUMENTS);
        Stages stages = new ModelledStages(new GardenClimate(56.4, climate, Weather.none(), DOCUMENTS),
                Sightings.none(), DOCUMENTS);

        CropFrost frost = CropFrost.of(crop, SEASON, stages).orElseThrow();

        assertThat(frost.stages()).isNotEmpty();
        double[] inFlower = new double[3];
        long outer = Math.round(Math.sqrt(3) * frost.inFlower().get(0).plusMinusDays());
        for (CropFrost.AtStage each : frost.stages()) {
            long own = Math.round(Math.sqrt(3) * each.plusMinusDays());
            assertThat(each.risk()).isCloseTo(
                    overThree(nights(frost, each, 0), nights(frost, each, -own), nights(frost, each, own)),
                    within(1e-12));
            assertThat(each.from()).isEqualTo(stages.date(crop, SEASON, each.stage()).date());
            assertThat(each.to()).isEqualTo(end(stages, crop, each.stage()));
            if (each.stage().ordinal() >= Stage.FIRST_FLOWER.ordinal()) {
                inFlower[0] += nights(frost, each, 0);
                inFlower[1] += nights(frost, each, -outer);
                inFlower[2] += nights(frost, each, outer);
            }
        }
        assertThat(frost.bloomRisk().orElseThrow()).isCloseTo(overThree(inFlower[0], inFlower[1], inFlower[2]),
                within(1e-12));
    }

    private static LocalDate end(Stages stages, Crop crop, Stage stage) {
        LocalDate from = stages.date(crop, SEASON, stage).date();
        if (stage.ordinal() >= Stage.PETAL_FALL.ordinal()) {
            return from.plusDays((long) METHODS.frost().afterPetalFall().is());
        }
        // what cold first leaves stand is not known, so bud burst's figure holds until the flower
        Stage next = stage == Stage.BUD_BURST ? Stage.FIRST_FLOWER : Stage.values()[stage.ordinal() + 1];
        LocalDate before = stages.date(crop, SEASON, next).date().minusDays(1);
        return before.isBefore(from) ? from : before;
    }

    private static double nights(CropFrost frost, CropFrost.AtStage at, long shift) {
        return frost.year().expected(at.harm().is(), at.from().plusDays(shift), at.to().plusDays(shift));
    }

    private static double overThree(double middle, double early, double late) {
        return 2 / 3.0 * (1 - Math.exp(-middle)) + (1 - Math.exp(-early)) / 6 + (1 - Math.exp(-late)) / 6;
    }
}
