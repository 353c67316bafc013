package org.oldwood.season.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.crop.Crops;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Months;
import org.oldwood.season.Season;
import org.oldwood.season.Sightings;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.season.weather.WeatherHints;
import org.oldwood.season.weather.WeatherReader;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;

/** Fifty winters of one station against the totals that a course notebook printed for them. */
class WintersTest {
    private static final double LATITUDE = 46.6;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/winter-sums.csv", useHeadersInDisplayName = true)
    void a_winter_meets_its_printed_totals(String id, double portions, double degreeHours) throws IOException {
        int year = year(id);
        Weather winter = winter(year);

        assertThat(sum(winter, year, DynamicModel.hourBefore())).isCloseTo(portions, within(1e-6));
        assertThat(sum(winter, year, DynamicModel.sameHour())).isCloseTo(portions, within(0.05));
        assertThat(sum(winter, year, new GrowingDegreeHours())).isCloseTo(degreeHours, within(1e-6));
    }

    /** Hours below 7.2 °C of the mean winter, November to February, against the mean of the winters it is made from. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 6, 10, 12})
    void the_mean_winter_gives_the_mean_of_the_winters(double warmerC) throws IOException {
        List<WeatherDay> all = winters(warmerC);
        Climate mean = mean(all, warmerC);
        GardenClimate climate = new GardenClimate(LATITUDE, mean, Weather.none(), Documents.bundled());
        Weather winters = Weather.of(all);

        double sum = 0;
        for (int winter = 1; winter <= 50; winter++) {
            sum += below(winters, Optional.empty(), winters.first().getYear() + winter);
        }

        assertThat(below(Weather.none(), Optional.of(climate), 2026)).isCloseTo(sum / 50, withinPercentage(12));
    }

    /** A mean day fixes more than the days that it is the mean of: a part of its portions is taken off. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 3, 6, 9, 12})
    void the_mean_winter_gives_the_mean_portions(double warmerC) throws IOException {
        List<WeatherDay> all = winters(warmerC);
        Climate mean = mean(all, warmerC);
        double sum = 0;
        for (int winter = 1973; winter < 2023; winter++) {
            Days days = new Days(LocalDate.of(winter, 10, 1), LocalDate.of(winter + 1, 2, 28));
            sum += HourlySeries.of(LATITUDE, Weather.of(all), Optional.empty(), days.first(), days.last()).orElseThrow()
                    .sums(List.of(DynamicModel.sameHour()), List.of(days))[0][0];
        }

        Documents documents = Documents.bundled();
        double told = new ModelledStages(Optional.of(new GardenClimate(LATITUDE, mean, Weather.none(), documents)),
                Sightings.of(List.of()), documents)
                .chill(new Crops(documents).get("blueberry"),
                        Season.containing(LocalDate.of(2027, 1, 1), Hemisphere.NORTH))
                .orElseThrow().portions();

        assertThat(told).isCloseTo(sum / 50, within(4.5));
    }

    private static double below(Weather weather, Optional<GardenClimate> climate, int year) {
        Days days = new Days(LocalDate.of(year - 1, 11, 2), LocalDate.of(year, 2, 27));
        return HourlySeries.of(LATITUDE, weather, climate, days.first(), days.last()).orElseThrow().sums(
                List.of(ChillModels.read(Documents.bundled()).get("hours-below-7.2").begin()), List.of(days))[0][0];
    }

    /** October to February of all fifty winters, warmer or not. */
    private static List<WeatherDay> winters(double warmerC) throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/reference/winters.csv")).stream()
                .filter(line -> line.matches("[12][0-9]{3}-(10|11|12|01|02).*")).map(line -> line.split(","))
                .map(cell -> new WeatherDay(LocalDate.parse(cell[0]),
                        OptionalDouble.of(Double.parseDouble(cell[1]) + warmerC),
                        OptionalDouble.of(Double.parseDouble(cell[2]) + warmerC), OptionalDouble.empty()))
                .toList();
    }

    private static Climate mean(List<WeatherDay> winters, double warmerC) {
        Climate year = Climate.bundled("yakima", Documents.bundled());
        return new Climate("mean", Optional.of(LATITUDE), months(year.meanMaxC(), winters, WeatherDay::maxC, warmerC),
                months(year.meanMinC(), winters, WeatherDay::minC, warmerC), Optional.empty(), List.of(), "", 0);
    }

    private static Months months(Months year, List<WeatherDay> days, Function<WeatherDay, OptionalDouble> of,
            double warmerC) {
        double[] means = Arrays.stream(year.toArray()).map(each -> each + warmerC).toArray();
        for (int month : new int[]{1, 2, 10, 11, 12}) {
            means[month - 1] = days.stream().filter(day -> day.date().getMonthValue() == month)
                    .mapToDouble(day -> of.apply(day).getAsDouble()).average().orElseThrow();
        }
        return Months.of(means);
    }

    private static int year(String id) { return Integer.parseInt(id.substring("winter-".length())); }

    /** From the 305th day of the year, which is 31 October in a leap year. */
    private static double sum(Weather winter, int year, HourlySum sum) {
        Days days = new Days(LocalDate.ofYearDay(year, 305), LocalDate.of(year + 1, 2, 28));
        return HourlySeries.of(LATITUDE, winter, Optional.empty(), winter.first(), winter.last()).orElseThrow()
                .sums(List.of(sum), List.of(days))[0][0];
    }

    private static Weather winter(int year) throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("src/test/resources/reference/winters.csv"))) {
            List<String> days = lines.filter(line -> line.startsWith(year + "-1") || line.startsWith(year + 1 + "-0"))
                    .toList();
            String text = days.stream().collect(Collectors.joining("\n", "date,tmin,tmax\n", "\n"));
            return WeatherReader.read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8), "winters.csv",
                    LocalDate.of(2026, 11, 29), WeatherHints.NONE, new Problems()).orElseThrow().weather();
        }
    }
}
