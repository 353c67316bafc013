package org.oldwood.craft.water.evapotranspiration;

import static java.util.Map.entry;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.craft.water.Published;
import org.oldwood.season.DayLength;

/** The weather calculators against FAO-56's worked examples and other published values. */
class PublishedWeatherTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/air-pressure.csv", numLinesToSkip = 1)
    void air_pressure(ArgumentsAccessor row) {
        Published.check(row, Map.of("pressure", in -> ReferenceEvapotranspiration.pressure(in[0]), "gamma",
                in -> ReferenceEvapotranspiration.psychrometric(ReferenceEvapotranspiration.pressure(in[0]))));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/vapour.csv", numLinesToSkip = 1)
    void vapour(ArgumentsAccessor row) {
        Published.check(row, Map.of("saturation", in -> Vapour.saturation(in[0]), "mean-saturation",
                in -> Vapour.meanSaturation(in[0], in[1]), "extremes",
                in -> Vapour.fromExtremes(in[0], in[1], in[2], in[3]), "highest",
                in -> Vapour.fromHighest(in[0], in[1]), "mean", in -> in[2] / 100 * Vapour.meanSaturation(in[0], in[1]),
                "dew-point", in -> Vapour.fromDewPoint(in[0]), "slope", in -> Vapour.slope(in[0])));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/radiation.csv", numLinesToSkip = 1)
    void radiation(ArgumentsAccessor row) {
        Published.check(row, Map.of("sunshine", in -> Radiation.solarFromSunshine(in[0], in[1], in[2]), "sunshine-at",
                PublishedWeatherTest::sunshineAt, "range", in -> Radiation.solarFromRange(in[0], in[1], in[2], in[3]),
                "clear", in -> Radiation.clearSky(in[0], in[1]), "kept", in -> Radiation.netSolar(in[0]), "lost",
                PublishedWeatherTest::lost, "net", in -> Radiation.netSolar(in[3]) - lost(in)));
    }

    private static double sunshineAt(double[] in) {
        int day = (int) in[2];
        return Radiation.solarFromSunshine(in[0], DayLength.hours(in[1], day), DayLength.radiationMj(in[1], day));
    }

    private static double lost(double[] in) { return Radiation.netLongwave(in[0], in[1], in[2], in[3], in[4]); }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/wind-speed.csv", numLinesToSkip = 1)
    void wind_speed(ArgumentsAccessor row) {
        Published.check(row, Map.of("at-two-metres", in -> ReferenceEvapotranspiration.windAtTwoMetres(in[0], in[1])));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/reference-evapotranspiration.csv", numLinesToSkip = 1)
    void reference_evapotranspiration(ArgumentsAccessor row) { Published.check(row, DAYS); }

    private static final Map<String, ToDoubleFunction<double[]>> DAYS = Map.ofEntries(
            entry("hargreaves", in -> ReferenceEvapotranspiration.hargreaves(in[0], in[1], in[2], in[3])),
            entry("example-16-solar", in -> coastAtBangkok(in).solar()),
            entry("example-16-net", in -> coastAtBangkok(in).netRadiation()),
            entry("example-17", in -> monthInBangkok(in).penmanMonteith()),
            entry("example-17-net", in -> monthInBangkok(in).netRadiation()),
            entry("example-17-radiation", in -> monthInBangkok(in).fromRadiation()),
            entry("example-17-air", in -> monthInBangkok(in).fromAir()),
            entry("example-18", in -> dayInBrussels(in).penmanMonteith()),
            entry("example-18-solar", in -> dayInBrussels(in).solar()),
            entry("example-18-net", in -> dayInBrussels(in).netRadiation()),
            entry("example-18-radiation", in -> dayInBrussels(in).fromRadiation()),
            entry("example-18-air", in -> dayInBrussels(in).fromAir()),
            entry("example-20", in -> monthInLyon(in).penmanMonteith()),
            entry("example-20-solar", in -> monthInLyon(in).solar()),
            entry("example-20-clear", in -> monthInLyon(in).clearSky()),
            entry("example-20-net", in -> monthInLyon(in).netRadiation()),
            entry("temperatures-only", in -> EvapotranspirationDay
                    .of(in[0], in[1], (int) in[2], Temperatures.only(in[3], in[4]), 0).penmanMonteith()));

    private static EvapotranspirationDay coastAtBangkok(double[] in) {
        DayWeather weather = new DayWeather(in[3], in[4], new Humidity((tmin, tmax) -> in[5], "as given"),
                OptionalDouble.empty(), new Sunshine(OptionalDouble.empty(), OptionalDouble.empty(), true));
        return EvapotranspirationDay.of(in[0], in[1], (int) in[2], weather, 0);
    }

    private static EvapotranspirationDay monthInLyon(double[] in) {
        DayWeather weather = new DayWeather(in[3], in[4], Humidity.UNKNOWN, OptionalDouble.of(in[5]), Sunshine.UNKNOWN);
        return EvapotranspirationDay.of(in[0], in[1], (int) in[2], weather, 0);
    }

    private static EvapotranspirationDay monthInBangkok(double[] in) {
        DayWeather weather = new DayWeather(in[3], in[4], new Humidity((tmin, tmax) -> in[5], "as given"),
                OptionalDouble.of(in[6]), new Sunshine(OptionalDouble.of(in[7]), OptionalDouble.empty(), false));
        return EvapotranspirationDay.of(in[0], in[1], (int) in[2], weather, in[8]);
    }

    private static EvapotranspirationDay dayInBrussels(double[] in) {
        DayWeather weather = new DayWeather(in[3], in[4],
                Humidity.of(OptionalDouble.of(in[5]), OptionalDouble.of(in[6])), OptionalDouble.of(in[7]),
                new Sunshine(OptionalDouble.of(in[8]), OptionalDouble.empty(), false));
        return EvapotranspirationDay.of(in[0], in[1], (int) in[2], weather, 0);
    }
}
