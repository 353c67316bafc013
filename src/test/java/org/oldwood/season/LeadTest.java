package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.gamma.Erf;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.store.Documents;

/** How sure a date is, by how much of its weather has come. North and south of a cold and of a mild place. */
class LeadTest {
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final Crop CROP = new Crops(DOCUMENTS).get("redcurrant");

    @ParameterizedTest
    @CsvSource({"warsaw, 1, 10 8 7 6 5 5", "warsaw, -1, 10 8 7 6 5 5", "oxford, 1, 10 10 10 10 9 9",
            "oxford, -1, 10 10 10 10 9 9"})
    void a_flower_is_surer_the_less_of_its_weather_is_to_come(String place, int half, String plusMinus) {
        Climate climate = half > 0 ? Climate.bundled(place, DOCUMENTS) : turned(Climate.bundled(place, DOCUMENTS));
        Season season = new Season(2027, Hemisphere.of(climate.latitude().orElseThrow()));
        LocalDate flower = flower(climate, season, Weather.none()).date();
        List<String> days = new ArrayList<>();
        for (int lead : new int[]{65, 45, 25, 15, 5, -5}) {
            LocalDate last = flower.minusDays(lead);
            StageDate date = flower(climate, season, normal(climate, season.start(), last));
            assertThat(date.date()).isBetween(flower.minusDays(8), flower.plusDays(8));
            assertThat(date.words()).contains("of 470 by " + last);
            days.add(Integer.toString(date.plusMinusDays()));
        }
        assertThat(String.join(" ", days)).isEqualTo(plusMinus);
        assertThat(flower(climate, season, Weather.none()).words()).doesNotContain("of 470 by");
    }

    /**
     * The root mean square error of first flower by the days still to come, from daily weather of seven sites and 503
     * crop-years; the last column is the share of a bell of that width that the ± holds.
     */
    @ParameterizedTest
    @CsvSource({"5, -5, 4.0, 79", "15, -5, 5.2, 75", "25, -5, 6.7, 70", "40, -5, 7.0, 75", "50, -5, 7.3, 73",
            "5, 4, 9.6, 63", "15, 4, 9.4, 67", "25, 4, 10.0, 68", "40, 4, 10.2, 70", "50, 4, 10.3, 70"})
    void two_thirds_of_the_daily_hindcasts_lie_within(int toCome, double coldestC, double error, long percent) {
        double days = SeasonMethods.read(DOCUMENTS).leadError().days(toCome, coldestC, 28);

        assertThat(Math.round(100 * Erf.value(days / error / Math.sqrt(2)))).isEqualTo(percent).isBetween(60L, 80L);
    }

    @ParameterizedTest
    @CsvSource({"1", "-1"})
    void the_error_of_the_place_goes_as_days_are_measured(int half) {
        Climate own = half > 0 ? Climate.bundled("warsaw", DOCUMENTS) : turned(Climate.bundled("warsaw", DOCUMENTS));
        Climate climate = new Climate("guess", own.latitude(), own.meanMaxC(), own.meanMinC(), Optional.empty(),
                List.of(), "", 2);
        Season season = new Season(2027, Hemisphere.of(climate.latitude().orElseThrow()));
        StageDate before = flower(climate, season, Weather.none());
        StageDate after = flower(climate, season, normal(climate, season.start(), before.date().plusDays(5)));

        assertThat(before.plusMinusDays()).isGreaterThan(10);
        assertThat(after.plusMinusDays()).isEqualTo(5);
    }

    private static StageDate flower(Climate climate, Season season, Weather weather) {
        double latitude = climate.latitude().orElseThrow();
        return new ModelledStages(new GardenClimate(latitude, climate, weather, DOCUMENTS), Sightings.none(), DOCUMENTS)
                .date(CROP, season, Stage.FIRST_FLOWER);
    }

    private static Weather normal(Climate climate, LocalDate first, LocalDate last) {
        List<WeatherDay> days = new ArrayList<>();
        MeanCurve min = climate.meanMinC().curve();
        MeanCurve max = climate.meanMaxC().curve();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            int normal = SeasonDays.normalDay(day);
            days.add(new WeatherDay(day, OptionalDouble.of(min.on(normal)), OptionalDouble.of(max.on(normal)),
                    OptionalDouble.empty()));
        }
        return Weather.of(days);
    }

    private static Climate turned(Climate north) {
        return new Climate("mirror", north.latitude().map(each -> -each), turned(north.meanMaxC()),
                turned(north.meanMinC()), Optional.empty(), List.of(), "", 0);
    }

    private static Months turned(Months months) {
        double[] turned = new double[12];
        for (int month = 0; month < 12; month++) {
            turned[month] = months.in((month + 6) % 12 + 1);
        }
        return Months.of(turned);
    }
}
