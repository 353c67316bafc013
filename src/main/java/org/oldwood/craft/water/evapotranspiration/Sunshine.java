package org.oldwood.craft.water.evapotranspiration;

import java.util.OptionalDouble;

/** What is known of a day's sunshine. */
public sealed interface Sunshine {
    /** Of a second or two, or of a gauge a little off, nothing is made. */
    double SLACK = 1.02;

    /**
     * Solar radiation in MJ/m² a day; a {@linkplain #isGuess guess} must be held to the clear sky's (FAO-56, p. 61),
     * what was measured is not.
     *
     * @param ra radiation at the top of the air, MJ/m² a day
     */
    double solar(double tmin, double tmax, double daylightHours, double ra);

    /** How it was found, as the end of a sentence; says so where it is a guess. */
    String inWords();

    /** Whether nothing was measured. */
    default boolean isGuess() {
        return false;
    }

    /**
     * Holds it against the day and the place.
     *
     * @throws IllegalArgumentException where there was more than there can be
     */
    default void mustFit(double daylightHours, double ra) {}

    /** Nothing was measured, inland. */
    static Sunshine unknown() {
        return new FromTemperature(FromTemperature.INLAND);
    }

    /** Nothing was measured, at the coast. */
    static Sunshine unknownAtTheCoast() {
        return new FromTemperature(FromTemperature.COAST);
    }

    /** What was measured of it: radiation before hours of sunshine before nothing. */
    static Sunshine of(OptionalDouble hours, OptionalDouble megajoules, boolean coast) {
        if (megajoules.isPresent()) {
            return new Measured(megajoules.getAsDouble());
        }
        if (hours.isPresent()) {
            return new Hours(hours.getAsDouble());
        }
        return coast ? unknownAtTheCoast() : unknown();
    }

    /** Hours of bright sunshine. */
    record Hours(double hours) implements Sunshine {
        public Hours {
            if (!(hours >= 0 && hours <= 24)) {
                throw new IllegalArgumentException("hours of sunshine must be from 0 to 24 but are " + hours);
            }
        }

        @Override
        public double solar(double tmin, double tmax, double daylightHours, double ra) {
            return Radiation.solarFromSunshine(hours, daylightHours, ra);
        }

        @Override
        public void mustFit(double daylightHours, double ra) {
            if (hours > SLACK * daylightHours) {
                throw new IllegalArgumentException("the sun cannot have shone "
                        + hours
                        + " h where that day is "
                        + Math.round(10 * daylightHours) / 10.0
                        + " h long");
            }
        }

        @Override
        public String inWords() {
            return "radiation from hours of sunshine (FAO-56 eq. 35)";
        }
    }

    /** Solar radiation as measured, MJ/m² a day. */
    record Measured(double megajoules) implements Sunshine {
        public Measured {
            if (!(megajoules >= 0 && megajoules <= 60)) {
                throw new IllegalArgumentException(
                        "solar radiation must be from 0 to 60 MJ/m² a day but is " + megajoules);
            }
        }

        @Override
        public double solar(double tmin, double tmax, double daylightHours, double ra) {
            return megajoules;
        }

        @Override
        public void mustFit(double daylightHours, double ra) {
            if (megajoules > SLACK * ra) {
                throw new IllegalArgumentException("solar radiation cannot be "
                        + megajoules
                        + " MJ/m² where that day only "
                        + Math.round(10 * ra) / 10.0
                        + " reach the top of the air; from W/m² multiply by 0.0864");
            }
        }

        @Override
        public String inWords() {
            return "radiation as measured";
        }
    }

    /** Nothing was measured: radiation follows from the day's range of temperature. */
    record FromTemperature(double adjustment) implements Sunshine {
        /** kRs of equation 50 for places where land air rules, per square root of °C. */
        public static final double INLAND = 0.16;

        /** kRs of equation 50 for places on or near a coast, per square root of °C. */
        public static final double COAST = 0.19;

        @Override
        public double solar(double tmin, double tmax, double daylightHours, double ra) {
            return Radiation.solarFromRange(tmin, tmax, ra, adjustment);
        }

        @Override
        public boolean isGuess() {
            return true;
        }

        @Override
        public String inWords() {
            return "sunshine not given: radiation from the range of temperature (FAO-56 eq. 50, %s, %s)"
                    .formatted(adjustment == COAST ? "coast" : "inland", adjustment);
        }
    }
}
