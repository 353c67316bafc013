package org.oldwood.craft.water;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The soil and crop calculators against published values. */
class PublishedSoilWaterTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/root-zone.csv", numLinesToSkip = 1)
    void root_zone(ArgumentsAccessor row) {
        Published.check(row, Map.of("total", in -> RootZone.totalAvailable(in[0], in[1], in[2]), "ready",
                in -> RootZone.readilyAvailable(in[0], in[1]), "fraction", in -> RootZone.fraction(in[0], in[1]),
                "stress", in -> RootZone.stress(in[0], in[1], in[2]), "litres", in -> RootZone.litres(in[0], in[1])));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/effective-rain.csv", numLinesToSkip = 1)
    void effective_rain(ArgumentsAccessor row) {
        Published.check(row, Map.of("crude", in -> 0.8 * EffectiveRain.daily(in[0], in[1]), "monthly",
                in -> EffectiveRain.monthly(in[0])));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/roof-water.csv", numLinesToSkip = 1)
    void roof_water(ArgumentsAccessor row) {
        Published.check(row, Map.of("litres", in -> new RoofWater(in[0], in[1], in[2]).litres(in[3]), "on-bed",
                in -> RootZone.millimetres(new RoofWater(in[0], in[1], in[2]).litres(in[3]), in[4])));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/crop-coefficient.csv", numLinesToSkip = 1)
    void crop_coefficient(ArgumentsAccessor row) {
        Published.check(row, Map.of("on", PublishedSoilWaterTest::coefficient, "mid-adjusted",
                in -> new CropCoefficient(0, in[0], 0).adjusted(in[1], in[2], in[3]).mid()));
    }

    private static double coefficient(double[] in) {
        double full = in[3] + in[4];
        double declines = full + in[5];
        return new CropCoefficient(in[0], in[1], in[2]).on(in[7], in[3], full, declines, declines + in[6]);
    }
}
