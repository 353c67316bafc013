package org.oldwood.season.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Months;
import org.oldwood.season.Season;
import org.oldwood.season.Sightings;
import org.oldwood.season.Stages;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

class PlaceClimateTest {
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final PlaceMethods METHODS = PlaceMethods.read(DOCUMENTS);
    private static final Stations STATIONS = Stations.read(Documents.bundled());

    /**
     * Twenty places with months worked out beforehand by another program (expected), and beside them normals that
     * weather services published for the place (published): Met Office historic station data, CLIMAT section 2.
     */
    @Test
    void meets_twenty_places_to_the_digits_printed() throws IOException {
        int rows = 0;
        for (String[] cells : checks()) {
            Optional<Months> months = quantity(place(cells), cells[5]);
            for (int month = 1; month <= 12 && cells[6].equals("expected"); month++) {
                String printed = cells[7 + month];
                double last = Math.pow(10, -(printed.length() - printed.indexOf('.') - 1.0));
                assertThat(months.orElseThrow().in(month)).describedAs("%s %s month %d", cells[0], cells[5], month)
                        .isCloseTo(Double.parseDouble(printed), within(0.51 * last));
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(1000);
    }

    @Test
    void published_normals_lie_within_the_errors_told() throws IOException {
        Map<String, double[]> gaps = new HashMap<>();
        for (String[] cells : checks()) {
            if (cells[6].equals("published") && !cells[5].equals("rainMm")) {
                Months months = quantity(place(cells), cells[5]).orElseThrow();
                for (int month = 1; month <= 12; month++) {
                    double[] gap = gaps.computeIfAbsent(cells[5], key -> new double[2]);
                    gap[0] += Math.abs(months.in(month) - Double.parseDouble(cells[7 + month]));
                    gap[1]++;
                }
            }
        }
        assertThat(gaps.get("dailyMaxC")[0] / gaps.get("dailyMaxC")[1]).isLessThan(0.88);
        assertThat(gaps.get("dailyMinC")[0] / gaps.get("dailyMinC")[1]).isLessThan(1.09);
    }

    /** Every fourth station below 1500 m from the stations more than 30 km away; the error printed for all is 0.60. */
    @Test
    void stations_left_out_are_met_with_the_error_that_is_told() {
        List<Station> all = STATIONS.all();
        double spring = 0;
        int n = 0;
        int within = 0;
        for (int i = 0; i < all.size(); i += 4) {
            Station station = all.get(i);
            if (station.heightM() < 1500) {
                PlaceClimate made = new PlaceClimate(
                        new Spot(station.latitude(), station.longitude(), station.heightM()), STATIONS, METHODS, 30);
                double error = Math.abs(spring(made.maximum(), made.minimum(), station.latitude())
                        - spring(Months.of(station.year(Station.Column.MAXIMUM)),
                                Months.of(station.year(Station.Column.MINIMUM)), station.latitude()));
                spring += error;
                within += error <= made.errorC() ? 1 : 0;
                n++;
            }
        }
        assertThat(n).isGreaterThan(200);
        assertThat(spring / n).isCloseTo(0.60, within(0.06));
        assertThat(within / (double) n).isBetween(0.6, 0.75);
    }

    /** All crops and stages of the fourteen bundled places, stations within 30 km left out. */
    @Test
    void stage_dates_from_the_stations_around_meet_those_from_a_places_own_normals() {
        double days = 0;
        double byCalendar = 0;
        int n = 0;
        for (String id : DOCUMENTS.names("climates")) {
            Climate own = Climate.bundled(id, DOCUMENTS);
            double latitude = own.latitude().orElseThrow();
            PlaceClimate around = new PlaceClimate(bundledSpot(id), STATIONS, METHODS, 30);
            Stages a = stages(latitude, own);
            Stages b = stages(latitude, around.climate());
            Season season = new Season(2027, Hemisphere.of(latitude));
            double here = 0;
            int count = 0;
            Crops crops = new Crops(DOCUMENTS);
            for (String name : crops.ids()) {
                Crop crop = crops.get(name);
                for (Stage stage : Stage.values()) {
                    long day = a.date(crop, season, stage).date().toEpochDay();
                    here += Math.abs(b.date(crop, season, stage).date().toEpochDay() - day);
                    byCalendar += Math.abs(new CalendarStages().date(crop, season, stage).date().toEpochDay() - day);
                    count++;
                }
            }
            days += here;
            n += count;
        }
        assertThat(days / n).isLessThanOrEqualTo(5);
        assertThat(byCalendar / n).isGreaterThan(2 * days / n);
    }

    @Test
    void places_without_a_climate_are_told_plainly() {
        assertThat(why(new Spot(-2, 52, 0))).contains("tropics").contains("swapped? At 52.0,-2.0");
        assertThat(why(new Spot(40, -150, 0))).contains("open sea");
        assertThat(why(new Spot(84, 10, 0))).contains("ice");
        assertThat(why(new Spot(-0.2, -78.5, 2850))).contains("within 500 km", "tropics");
        assertThat(PlaceClimate.at(new Spot(69.6, 18.9, 10), DOCUMENTS)).isPresent();
    }

    @Test
    void the_stations_are_named_with_distance_and_height_and_a_lacking_height_is_asked_for() {
        PlaceClimate low = PlaceClimate.at(new Spot(44.9, -93.2, 0), DOCUMENTS).orElseThrow();

        assertThat(low.warning()).hasValueSatisfying(text -> assertThat(text).contains("site.heightM"));
        assertThat(low.climate().name()).contains(" km, ").contains("m higher").contains("2003-2021");
        assertThat(PlaceClimate.at(new Spot(44.9, -93.2, 260), DOCUMENTS).orElseThrow().warning()).isEmpty();
        // in the hills, where those that stand most like a place at 0 m are on the coast
        assertThat(PlaceClimate.at(new Spot(-36.9, 149.2, 0), DOCUMENTS).orElseThrow().warning()).isPresent();
    }

    /** In the Himalaya the nearest station is 116 km off and 990 m lower, so 413 km apart; Reykjavik's own is the only near one. */
    @Test
    void a_climate_from_far_stations_is_told_as_a_guess() {
        assertThat(PlaceClimate.at(new Spot(27.2, 88.5, 2200), DOCUMENTS).orElseThrow().warning())
                .hasValueSatisfying(text -> assertThat(text).contains("is a guess").doesNotContain("heightM"));
        assertThat(PlaceClimate.at(new Spot(64.1, -21.9, 20), DOCUMENTS).orElseThrow().warning()).isEmpty();
    }

    private static String why(Spot spot) {
        assertThat(PlaceClimate.at(spot, DOCUMENTS)).isEmpty();
        return PlaceClimate.whyNot(spot, DOCUMENTS);
    }

    private static Stages stages(double latitude, Climate climate) {
        return new ModelledStages(new GardenClimate(latitude, climate, Weather.none(), DOCUMENTS), Sightings.none(),
                DOCUMENTS);
    }

    /** Where the bundled places lie: the longitudes are in their published station files. */
    private static Spot bundledSpot(String id) {
        Fields fields = DOCUMENTS.fields("climates/" + id + ".json");
        return new Spot(fields.number("latitude", -90, 90), LONGITUDE_HEIGHT.get(id)[0], LONGITUDE_HEIGHT.get(id)[1]);
    }

    private static final Map<String, double[]> LONGITUDE_HEIGHT = Map.ofEntries(
            Map.entry("cambridge", new double[]{0.10, 12}), Map.entry("christchurch", new double[]{172.60, 30}),
            Map.entry("eskdalemuir", new double[]{-3.20, 236}), Map.entry("hobart", new double[]{147.33, 50}),
            Map.entry("launceston", new double[]{147.14, 5}), Map.entry("leuchars", new double[]{-2.86, 10}),
            Map.entry("manston", new double[]{1.34, 49}), Map.entry("oxford", new double[]{-1.26, 57}),
            Map.entry("paisley", new double[]{-4.43, 32}), Map.entry("ross-on-wye", new double[]{-2.58, 67}),
            Map.entry("saint-petersburg", new double[]{30.30, 3}),
            Map.entry("sutton-bonington", new double[]{-1.25, 43}), Map.entry("warsaw", new double[]{20.96, 106}),
            Map.entry("yakima", new double[]{-120.54, 325}));

    private static double spring(Months maximum, Months minimum, double latitude) {
        Months mean = maximum.mean(minimum);
        int first = latitude >= 0 ? 3 : 9;
        return (mean.in(first) + mean.in(first + 1) + mean.in(first + 2)) / 3;
    }

    private static PlaceClimate place(String[] cells) {
        Spot spot = new Spot(Double.parseDouble(cells[2]), Double.parseDouble(cells[3]), Double.parseDouble(cells[4]));
        return PlaceClimate.at(spot, DOCUMENTS).orElseThrow();
    }

    private static Optional<Months> quantity(PlaceClimate place, String column) {
        return switch (column) {
            case "dailyMaxC" -> Optional.of(place.maximum());
            case "dailyMinC" -> Optional.of(place.minimum());
            case "rainMm" -> Optional.of(place.rain());
            case "dewPointC" -> Optional.of(place.dewPoint());
            case "vapourPressureKPa" -> Optional.of(vapour(place.dewPoint()));
            default -> place.sunPercent();
        };
    }

    /** FAO Irrigation and Drainage Paper 56, equation 14. */
    private static Months vapour(Months dewPoint) {
        double[] kPa = dewPoint.toArray();
        for (int i = 0; i < kPa.length; i++) {
            kPa[i] = 0.6108 * Math.exp(17.27 * kPa[i] / (kPa[i] + 237.3));
        }
        return Months.of(kPa);
    }

    private static List<String[]> checks() throws IOException {
        try (InputStream in = Objects.requireNonNull(PlaceClimateTest.class.getResourceAsStream("/place-checks.csv"))) {
            List<String[]> rows = new ArrayList<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1)
                    .forEach(line -> rows.add(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)));
            return rows;
        }
    }
}
