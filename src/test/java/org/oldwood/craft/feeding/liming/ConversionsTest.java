package org.oldwood.craft.feeding.liming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.craft.feeding.FieldUnits;
import org.oldwood.store.RecordException;

class ConversionsTest {
    private static final double POUNDS_PER_TON = 2000;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/conversions.csv", useHeadersInDisplayName = true)
    void match_the_published_value(String id, String conversion, double amount, double expected, double printedTo,
            Double tolerance, String source) {
        double allowed = tolerance == null ? printedTo / 2 : tolerance;

        assertThat(converted(conversion, amount)).as(source).isCloseTo(expected, within(allowed));
    }

    private static double converted(String conversion, double amount) {
        return switch (conversion) {
            case "MgO from Mg" -> MolarMass.mgoFromMg(amount);
            default -> converted2(conversion, amount);
        };
    }

    private static double converted2(String conversion, double amount) {
        return switch (conversion) {
            case "CaO from CaCO3" -> amount * new NeutralisingValue(100).percentCaO() / 100;
            case "CCE of CaCO3" -> amount * cce(MolarMass.CACO3, 1);
            case "CCE of MgCO3" -> amount * cce(MolarMass.MGCO3, 1);
            case "CCE of Ca(OH)2" -> amount * cce(MolarMass.CA_OH_2, 1);
            case "CCE of CaO" -> amount * cce(MolarMass.CAO, 1);
            case "CCE of dolomite" -> amount * cce(MolarMass.DOLOMITE, 2);
            case "lb of Ca(OH)2 for a ton" -> forATon(MolarMass.CA_OH_2);
            case "lb of CaO for a ton" -> forATon(MolarMass.CAO);
            case "lb of MgCO3 for a ton" -> forATon(MolarMass.MGCO3);
            case "kg/ha from lb/acre" -> FieldUnits.gPerM2FromLbPerAcre(amount) * 10;
            case "plants per acre of square feet" -> FieldUnits.M2_PER_ACRE / (amount * FieldUnits.M2_PER_SQUARE_FOOT);
            case "lb per plant at 3 by 10 ft" -> FieldUnits.gPerM2FromLbPerAcre(amount) * 30
                    * FieldUnits.M2_PER_SQUARE_FOOT / FieldUnits.GRAMS_PER_POUND;
            default -> throw new AssertionError("no conversion " + conversion);
        };
    }

    private static double cce(double molarMass, int molesOfCarbonate) {
        return 100 * molesOfCarbonate * MolarMass.CACO3 / molarMass;
    }

    private static double forATon(double molarMass) {
        return new NeutralisingValue(cce(molarMass, 1)).inPlaceOf(POUNDS_PER_TON, new NeutralisingValue(100));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/lime-materials.csv", useHeadersInDisplayName = true)
    void limes_replace_each_other_as_in_print(String id, String what, double amount, double value, double other,
            double expected, double printedTo, String source) {
        double computed = switch (what) {
            case "instead of CCE" -> new NeutralisingValue(other).inPlaceOf(amount, new NeutralisingValue(value));
            case "left of CCE" -> amount - new NeutralisingValue(100).inPlaceOf(other, new NeutralisingValue(value));
            case "CaO of CCE" -> new NeutralisingValue(amount).percentCaO();
            default -> throw new AssertionError(what);
        };

        assertThat(computed).as(source).isCloseTo(expected, within(printedTo / 2));
    }

    @Property
    void both_scales_of_neutralising_value_agree(@ForAll @DoubleRange(min = 1, max = 100) double percentCaO) {
        NeutralisingValue value = NeutralisingValue.ofCaO(percentCaO);

        assertThat(value.percentCaO()).isCloseTo(percentCaO, within(1e-9));
        assertThat(new NeutralisingValue(value.percentCaCO3())).isEqualTo(value);
    }

    @Test
    void a_value_that_no_lime_has_is_refused_with_the_scales_named() {
        assertThatThrownBy(() -> NeutralisingValue.ofCaO(150)).isInstanceOf(RecordException.class)
                .hasMessageContaining("which scale");
    }
}
