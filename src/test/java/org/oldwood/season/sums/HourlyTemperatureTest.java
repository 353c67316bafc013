package org.oldwood.season.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.season.SunTimes;
import org.oldwood.store.Documents;

class HourlyTemperatureTest {
    private static final double[] WORKED_DAY = {3.82, 3.37, 2.96, 2.60, 2.28, 1.98, 2.17, 4.49, 6.71, 8.76, 10.55,
            12.01, 13.10, 13.77, 14.00, 13.77, 13.10, 12.01, 10.55, 8.26, 6.88, 5.91, 5.16, 4.55};

    /** Computed by an independent program, not printed; two of its night hours differ by 0.008 °C. */
    @Test
    void meets_the_worked_day() {
        double[] hours = day(45, 80, 2, 14);

        for (int hour = 0; hour < 24; hour++) {
            assertThat(hours[hour]).as("hour " + hour).isCloseTo(WORKED_DAY[hour], within(0.01));
        }
        ChillModels models = ChillModels.read(Documents.bundled());
        assertThat(total(hours, models.get("hours-0-7.2").begin())).isEqualTo(13);
        assertThat(total(hours, models.get("utah").begin())).isEqualTo(15.5);
        assertThat(total(hours, new GrowingDegreeHours())).isCloseTo(74.81, within(0.005));
        assertThat(DoubleStream.of(hours).average().orElseThrow()).isCloseTo(7.615, within(0.0015));
    }

    /** Equator; Tromso: no night in June, no day in December; the poles. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, -42.9, 60.1, 65.7, 66.5, 69.6, -78, 90, -90})
    void stays_within_reason_at_every_latitude_on_every_day(double latitude) {
        for (int day = 1; day <= 365; day++) {
            double[] hours = day(latitude, day, 2, 14);

            for (double celsius : hours) {
                assertThat(celsius).as("day " + day).isFinite().isBetween(1.4, 14.001);
            }
        }
    }

    @Test
    void a_day_without_a_range_is_the_same_all_round() {
        assertThat(Arrays.stream(day(52, 200, 7, 7)).distinct().toArray()).containsExactly(7);
    }

    private static double total(double[] hours, HourlySum sum) { return DoubleStream.of(hours).map(sum::hour).sum(); }

    private static double[] day(double latitude, int day, double min, double max) {
        double[] half = IntStream.rangeClosed(day - 1, day + 1).mapToDouble(each -> SunTimes.halfDay(latitude, each))
                .toArray();
        double[] hours = new double[24];
        HourlyTemperature.fill(new double[]{min, min, min}, new double[]{max, max, max}, half, 1, hours);
        return hours;
    }
}
