package org.oldwood.craft.water.evapotranspiration;

import java.util.OptionalDouble;

/**
 * What was measured of a day's sunshine: radiation counts before hours of sunshine, these before nothing.
 *
 * @param hours hours of bright sunshine
 * @param megajoules solar radiation, MJ/m² a day
 * @param coast whether radiation that was not measured is that of a coast
 */
public record Sunshine(OptionalDouble hours, OptionalDouble megajoules, boolean coast) {
    /** Nothing was measured, inland. */
    public static final Sunshine UNKNOWN = new Sunshine(OptionalDouble.empty(), OptionalDouble.empty(), false);

    /** kRs of equation 50, per square root of °C. */
    private static final double INLAND = 0.16;

    private static final double COAST = 0.19;

    /** Of a second or two, or of a gauge a little off, nothing is made. */
    private static final double SLACK = 1.02;

    public Sunshine {
        if (!(hours.orElse(0) >= 0 && hours.orElse(0) <= 24)) {
            throw new IllegalArgumentException("hours of sunshine must be from 0 to 24 but are " + hours.getAsDouble());
        }
        if (!(megajoules.orElse(0) >= 0 && megajoules.orElse(0) <= 60)) {
            throw new IllegalArgumentException(
                    "solar radiation must be from 0 to 60 MJ/m² a day but is " + megajoules.getAsDouble());
        }
    }

    /**
     * Solar radiation in MJ/m² a day; a guess from the range of temperature is held to the clear sky's (FAO-56, p. 61),
     * what was measured is not.
     *
     * @param ra radiation at the top of the air, MJ/m² a day
     * @param clear radiation under a clear sky
     * @throws IllegalArgumentException where there was more than there can be
     */
    double solar(double tmin, double tmax, double daylightHours, double ra, double clear) {
        if (megajoules.isPresent()) {
            if (megajoules.getAsDouble() > SLACK * ra) {
                throw new IllegalArgumentException(
                        "solar radiation cannot be %s MJ/m² where that day only %s reach the top of the air; from W/m² multiply by 0.0864"
                                .formatted(megajoules.getAsDouble(), Math.round(10 * ra) / 10.0));
            }
            return megajoules.getAsDouble();
        }
        if (hours.isPresent()) {
            if (hours.getAsDouble() > SLACK * daylightHours) {
                throw new IllegalArgumentException("the sun cannot have shone %s h where that day is %s h long"
                        .formatted(hours.getAsDouble(), Math.round(10 * daylightHours) / 10.0));
            }
            return Radiation.solarFromSunshine(hours.getAsDouble(), daylightHours, ra);
        }
        return Math.min(clear, Radiation.solarFromRange(tmin, tmax, ra, coast ? COAST : INLAND));
    }

    /** How the radiation is found, as the end of a sentence; says so where it is a guess. */
    String inWords() {
        if (megajoules.isPresent()) { return "radiation as measured"; }
        return hours.isPresent() ? "radiation from hours of sunshine (FAO-56 eq. 35)"
                : "sunshine not given: radiation from the range of temperature (FAO-56 eq. 50, %s, %s)"
                        .formatted(coast ? "coast" : "inland", coast ? COAST : INLAND);
    }
}
