package org.oldwood.season.sums;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Season;
import org.oldwood.season.Sightings;
import org.oldwood.season.Stages;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.store.Documents;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Chill hour by hour over 30 years of made-up days, and the stage dates of 30 seasons. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SeasonKernels {
    private static final int YEARS = 30;
    private static final int FIRST_YEAR = 1996;
    private static final double LATITUDE = 52.2;
    private static final Documents DOCUMENTS = Documents.bundled();
    private static final ChillModels MODELS = ChillModels.read(DOCUMENTS);
    private static final Crop CROP = new Crops(DOCUMENTS).get("blackcurrant");

    private final Weather weather = weather();
    private final HourlySeries hours = HourlySeries
            .of(LATITUDE, weather, Optional.empty(), weather.first(), weather.last()).orElseThrow();
    private final List<HourlySeries.Days> winters = winters();
    private final Climate climate = Climate.bundled("cambridge", DOCUMENTS);

    private static Weather weather() {
        Random random = new Random(7);
        List<WeatherDay> days = new ArrayList<>();
        LocalDate end = LocalDate.of(FIRST_YEAR + YEARS, 1, 1);
        for (LocalDate day = LocalDate.of(FIRST_YEAR, 1, 1); day.isBefore(end); day = day.plusDays(1)) {
            double mean = 10 - 7 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365);
            double warm = mean + 3 * random.nextGaussian();
            days.add(new WeatherDay(day, OptionalDouble.of(warm - 2 - 4 * random.nextDouble()),
                    OptionalDouble.of(warm + 2 + 5 * random.nextDouble()), OptionalDouble.of(0)));
        }
        return Weather.of(days);
    }

    private static List<HourlySeries.Days> winters() {
        List<HourlySeries.Days> winters = new ArrayList<>();
        for (int year = FIRST_YEAR; year < FIRST_YEAR + YEARS - 1; year++) {
            winters.add(new HourlySeries.Days(LocalDate.of(year, 10, 1), LocalDate.of(year + 1, 3, 31)));
        }
        return winters;
    }

    /** Every winter's chill by one model that remembers the hours before. */
    @Benchmark
    public double[][] chillDynamic() { return hours.sums(List.of(MODELS.get("dynamic").begin()), winters); }

    /** Every winter's chill by every model of the data file, in one go. */
    @Benchmark
    public double[][] chillAllModels() {
        List<HourlySum> sums = new ArrayList<>();
        MODELS.keys().forEach(key -> sums.add(MODELS.get(key).begin()));
        return hours.sums(sums, winters);
    }

    /** All stages of one crop in one season, of 30; a garden's first question, nothing known yet. */
    @Benchmark
    @OperationsPerInvocation(YEARS)
    public long stageDates() {
        Stages stages = new ModelledStages(new GardenClimate(LATITUDE, climate, weather, DOCUMENTS), Sightings.none(),
                DOCUMENTS);
        long sum = 0;
        for (int year = FIRST_YEAR; year < FIRST_YEAR + YEARS; year++) {
            Season season = new Season(year, Hemisphere.NORTH);
            for (Stage stage : Stage.values()) {
                sum += stages.date(CROP, season, stage).date().toEpochDay();
            }
        }
        return sum;
    }
}
