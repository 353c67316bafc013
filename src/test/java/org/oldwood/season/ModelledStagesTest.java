package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.store.Documents;

class ModelledStagesTest {
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final Crops CROPS = new Crops(DOCUMENTS);

    @DisabledIfSystemProperty(named = "golden", matches = "no")
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/stage-dates.csv", useHeadersInDisplayName = true)
    void meets_the_first_computation(String id, String climate, double latitude, String crop, String stage, int month,
            int day, int tolerance) {
        Season season = new Season(2027, Hemisphere.of(latitude));

        StageDate date = stages(climate, latitude, Weather.none(), Sightings.none()).date(CROPS.get(crop), season,
                Stage.find(stage).orElseThrow());

        LocalDate expected = LocalDate.of(date.date().getYear(), month, day);
        assertThat(date.basis()).isEqualTo(Basis.MODELLED);
        assertThat((int) (date.date().toEpochDay() - expected.toEpochDay())).as(date.toString()).isCloseTo(0,
                within(tolerance));
    }

    /** Two tables, one from print and one set from sites far away, tell one year of England: within three weeks. */
    @Test
    void the_calendar_and_the_models_agree_at_oxford() {
        Stages models = stages("oxford", 51.76, Weather.none(), Sightings.none());
        Season season = new Season(2027, Hemisphere.NORTH);
        for (String id : CROPS.ids()) {
            for (Stage stage : Stage.values()) {
                long days = models.date(CROPS.get(id), season, stage).date().toEpochDay()
                        - new CalendarStages().date(CROPS.get(id), season, stage).date().toEpochDay();
                assertThat(days).as("%s %s", id, stage).isBetween(-21L, 21L);
            }
        }
    }

    /** Hobart's March and April are warmer than any autumn with rows; what the date goes by is said, not only what is. */
    @Test
    void an_autumn_beyond_the_rows_says_at_what_it_is_held() {
        assertThat(leafFall("hobart", -42.89)).contains("14.", "°C here but held at 13.0, lies above");
        assertThat(leafFall("warsaw", 52.2)).doesNotContain("held");
    }

    private static String leafFall(String climate, double latitude) {
        return stages(climate, latitude, Weather.none(), Sightings.none())
                .date(CROPS.get("redcurrant"), new Season(2027, Hemisphere.of(latitude)), Stage.LEAF_FALL_BEGINS)
                .words();
    }

    /** First flower alone gives petal fall ± 4 days; full flower noted as well takes nothing from that. */
    @Test
    void seeing_more_never_makes_a_stage_less_sure() {
        Season season = new Season(2027, Hemisphere.NORTH);
        Sighting flower = Sighting.on(LocalDate.of(2027, 4, 20), "blackcurrant", Stage.FIRST_FLOWER, season);
        Sighting full = Sighting.on(LocalDate.of(2027, 4, 27), "blackcurrant", Stage.FULL_FLOWER, season);

        assertThat(plusMinus(Stage.PETAL_FALL, season, List.of(flower, full))).isEqualTo(4);
        assertThat(plusMinus(Stage.PETAL_FALL, season, List.of(full))).as("√(2² + 4²)").isEqualTo(5);
    }

    /** Any of the stages from bud swell to petal fall seen, in all 64 ways, against one of them fewer. */
    @Test
    void no_further_sighting_makes_a_stage_less_sure() {
        Season season = new Season(2027, Hemisphere.NORTH);
        Stages model = stages("oxford", 51.76, Weather.none(), Sightings.none());
        List<Sighting> all = Arrays.stream(Stage.values()).filter(each -> each != Stage.DORMANT)
                .filter(each -> each.compareTo(Stage.RIPE) < 0).map(each -> new Sighting("blackcurrant", each, season,
                        model.date(CROPS.get("blackcurrant"), season, each).date().minusDays(3)))
                .toList();
        for (Stage stage : Stage.values()) {
            int[] plusMinus = IntStream.range(0, 1 << all.size()).map(some -> plusMinus(stage, season, some(all, some)))
                    .toArray();
            for (int some = 0; some < plusMinus.length; some++) {
                for (int one = 1; one < plusMinus.length; one <<= 1) {
                    assertThat(plusMinus[some | one]).as("%s, %s and %s", stage, some, one)
                            .isLessThanOrEqualTo(plusMinus[some]);
                }
            }
        }
    }

    private static List<Sighting> some(List<Sighting> all, int bits) {
        return IntStream.range(0, all.size()).filter(at -> (bits & 1 << at) != 0).mapToObj(all::get).toList();
    }

    private static int plusMinus(Stage stage, Season season, List<Sighting> seen) {
        return stages("oxford", 51.76, Weather.none(), Sightings.of(seen))
                .date(CROPS.get("blackcurrant"), season, stage).plusMinusDays();
    }

    /** The same garden on the other half of the earth: its months turned by six, its latitude's sign changed. */
    @ParameterizedTest
    @ValueSource(strings = {"leuchars", "cambridge", "yakima", "hobart", "warsaw"})
    void a_mirrored_garden_has_the_same_stages_half_a_year_later(String name) {
        Climate climate = Climate.bundled(name, DOCUMENTS);
        double latitude = climate.latitude().orElseThrow();
        Climate turned = new Climate("mirror", Optional.of(-latitude), turned(climate.meanMaxC()),
                turned(climate.meanMinC()), Optional.empty(), List.of(), "", 0);
        Stages here = new ModelledStages(new GardenClimate(latitude, climate, Weather.none(), DOCUMENTS),
                Sightings.none(), DOCUMENTS);
        Stages there = new ModelledStages(new GardenClimate(-latitude, turned, Weather.none(), DOCUMENTS),
                Sightings.none(), DOCUMENTS);
        Season season = new Season(2027, Hemisphere.of(latitude));
        Season other = new Season(2027, Hemisphere.of(-latitude));
        int months = latitude > 0 ? -6 : 6;

        for (String id : CROPS.ids()) {
            for (Stage stage : Stage.values()) {
                LocalDate expected = here.date(CROPS.get(id), season, stage).date().plusMonths(months);
                LocalDate date = there.date(CROPS.get(id), other, stage).date();
                assertThat((int) (date.toEpochDay() - expected.toEpochDay())).as(id + " " + stage).isCloseTo(0,
                        within(3));
            }
        }
    }

    /** Equator, Tromso, the high Arctic, a desert: dates come, in order, or the calendar says so. */
    @ParameterizedTest
    @CsvSource({"0,28,20", "0.5,31,23", "69.6,13,-6", "-54.8,12,1", "78.2,5,-16", "25,45,12", "-78,-20,-60"})
    void every_place_gets_dates(double latitude, double warmest, double coldest) {
        double[] max = new double[12];
        double[] min = new double[12];
        for (int month = 0; month < 12; month++) {
            double summer = 0.5 - 0.5 * Math.cos(2 * Math.PI * (month - (latitude < 0 ? 6 : 0)) / 12);
            max[month] = coldest + 6 + (warmest - coldest - 6) * summer;
            min[month] = max[month] - 6;
        }
        Climate climate = new Climate("made up", Optional.of(latitude), Months.of(max), Months.of(min),
                Optional.empty(), List.of(), "", 0);
        Stages stages = new ModelledStages(new GardenClimate(latitude, climate, Weather.none(), DOCUMENTS),
                Sightings.none(), DOCUMENTS);
        Season season = new Season(2028, Hemisphere.of(latitude));

        for (String id : CROPS.ids()) {
            for (Stage stage : Stage.values()) {
                StageDate date = stages.date(CROPS.get(id), season, stage);
                assertThat(date.words()).as(id + " " + stage).startsWith(stage.words());
                assertThat(date.plusMinusDays()).isPositive();
                assertThat(date.date()).isBetween(season.start().minusDays(95), season.end().plusDays(120));
            }
        }
    }

    private static Months turned(Months monthly) {
        double[] turned = new double[12];
        for (int month = 0; month < 12; month++) {
            turned[month] = monthly.in((month + 6) % 12 + 1);
        }
        return Months.of(turned);
    }

    /** A warm spring moves bud burst, and the words count the days. */
    @Test
    void measured_weather_moves_the_dates() {
        Crop crop = CROPS.get("blackcurrant");
        Season season = new Season(2027, Hemisphere.NORTH);
        Weather warm = warmUntil(LocalDate.of(2027, 3, 10));

        StageDate normal = stages("leuchars", 56.4, Weather.none(), Sightings.none()).date(crop, season,
                Stage.BUD_BURST);
        StageDate date = stages("leuchars", 56.4, warm, Sightings.none()).date(crop, season, Stage.BUD_BURST);

        assertThat(date.date()).isBefore(normal.date().minusDays(7));
        assertThat(date.words()).contains("on 37 days of the garden's weather");
    }

    /** Ten days of 10 °C from the flower on, both ends counted, are 50 °C·d above 5 °C. */
    @Test
    void the_way_to_ripe_fruit_is_told_from_the_flower_that_was_seen() {
        Season season = new Season(2027, Hemisphere.NORTH);
        Sighting flower = Sighting.on(LocalDate.of(2027, 4, 11), "blackcurrant", Stage.FIRST_FLOWER, season);

        assertThat(stages("leuchars", 56.4, warmUntil(LocalDate.of(2027, 4, 21)), Sightings.of(List.of(flower)))
                .date(CROPS.get("blackcurrant"), season, Stage.RIPE).words()).contains("50 of 630 by 2027-04-20");
    }

    private static Weather warmUntil(LocalDate end) {
        return Weather.of(LocalDate.of(2027, 2, 1).datesUntil(end)
                .map(day -> new WeatherDay(day, OptionalDouble.of(5), OptionalDouble.of(15), OptionalDouble.empty()))
                .toList());
    }

    static ModelledStages stages(String climate, double latitude, Weather weather, Sightings sightings) {
        GardenClimate garden = new GardenClimate(latitude, Climate.bundled(climate, DOCUMENTS), weather, DOCUMENTS);
        return new ModelledStages(garden, sightings, DOCUMENTS);
    }
}
