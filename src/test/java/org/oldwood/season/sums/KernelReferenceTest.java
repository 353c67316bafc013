package org.oldwood.season.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.season.DayLength;
import org.oldwood.season.SunTimes;
import org.oldwood.store.Documents;

/** The kernels against printed values; where a row is marked computed, against another program. */
class KernelReferenceTest {
    private static final ChillModels MODELS = ChillModels.read(Documents.bundled());
    private static final double[] HOURS = hours();

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/day-length.csv", useHeadersInDisplayName = true)
    void day_length(String id, double latitude, int day, String what, double expected, double to) {
        double computed = switch (what) {
            case "declination" -> DayLength.declinationRad(day);
            case "sunset-angle" -> DayLength.sunsetAngleRad(latitude, day);
            case "nearness" -> DayLength.nearness(day);
            case "radiation" -> DayLength.radiationMj(latitude, day);
            default -> DayLength.hours(latitude, day);
        };

        assertThat(computed).as(id).isCloseTo(expected, within(to / 2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/sun-times.csv", useHeadersInDisplayName = true)
    void sun_times(String id, double latitude, int day, String what, double expected, double to) {
        double computed = switch (what) {
            case "rise" -> 12 - SunTimes.halfDay(latitude, day);
            case "set" -> 12 + SunTimes.halfDay(latitude, day);
            default -> 2 * SunTimes.halfDay(latitude, day);
        };

        assertThat(computed).as(id).isCloseTo(expected, within(to / 2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/degree-days.csv", useHeadersInDisplayName = true)
    void degree_days(String id, String method, double min, double max, double base, Double upper, double expected,
            double to) {
        double computed;
        if (method.equals("simple")) {
            computed = DegreeDays.simple(min, max, base, Double.POSITIVE_INFINITY);
        } else {
            computed = upper == null ? DegreeDays.sine(min, max, base) : DegreeDays.sine(min, max, base, upper);
        }

        assertThat(computed).as(id).isCloseTo(expected, within(to / 2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/growing-degree-hours.csv", useHeadersInDisplayName = true)
    void growing_degree_hours(String id, double celsius, double expected, double to) {
        assertThat(new GrowingDegreeHours().hour(celsius)).as(id).isCloseTo(expected, within(to / 2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/hourly-72.csv", useHeadersInDisplayName = true)
    void running_totals_of_72_hours(String id, String model, int after, double expected, double to) {
        HourlySum sum = model.equals("degree-hours") ? new GrowingDegreeHours() : MODELS.get(model).begin();

        double total = DoubleStream.of(HOURS).limit(after).map(sum::hour).sum();

        assertThat(total).as(id).isCloseTo(expected, within(to / 2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/constant-temperature.csv", useHeadersInDisplayName = true)
    void sums_at_one_temperature(String id, String model, double celsius, int n, double expected, double to) {
        HourlySum sum = MODELS.get(model).begin();
        sum.hour(celsius);

        double total = DoubleStream.generate(() -> sum.hour(celsius)).limit(n).sum();

        assertThat(total).as(id).isCloseTo(expected, within(to / 2));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/chill-weights.csv", useHeadersInDisplayName = true)
    void weights(String id, String model, double celsius, double expected, double to) {
        double weight = MODELS.get(model).begin().hour(celsius);

        assertThat(weight).as(id).isCloseTo(expected, within(1e-9));
    }

    private static double[] hours() {
        try (Stream<String> lines = Files.lines(Path.of("src/test/resources/reference/hourly-72-temperatures.csv"))) {
            return lines.filter(line -> !line.startsWith("#")).flatMap(line -> Stream.of(line.split(" ")))
                    .mapToDouble(Double::parseDouble).toArray();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
