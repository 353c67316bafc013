package org.oldwood.craft.water.evapotranspiration;

import java.util.OptionalDouble;

/** What is known of a day's humidity. Relative humidity in %, from 0 to 100. */
public sealed interface Humidity {
    /** Actual vapour pressure in kPa on a day with these extremes of temperature. */
    double vapourPressure(double tmin, double tmax);

    /** How the vapour pressure was found, as the end of a sentence; says so where it is a guess. */
    String inWords();

    /** Nothing was measured. */
    static Humidity unknown() {
        return new Unknown();
    }

    /**
     * The best that the two extremes allow. A lowest value alone has no published equation and counts as nothing, which
     * is said.
     */
    static Humidity of(OptionalDouble lowest, OptionalDouble highest) {
        if (highest.isEmpty()) {
            return lowest.isPresent() ? new LowestAlone(lowest.getAsDouble()) : unknown();
        }
        return lowest.isPresent()
                ? new Extremes(lowest.getAsDouble(), highest.getAsDouble())
                : new Highest(highest.getAsDouble());
    }

    /** The day's lowest and highest relative humidity. */
    record Extremes(double lowest, double highest) implements Humidity {
        public Extremes {
            checked(lowest);
            checked(highest);
            if (lowest > highest) {
                throw new IllegalArgumentException(
                        "the lowest relative humidity, " + lowest + " %, is above the highest, " + highest + " %");
            }
        }

        @Override
        public double vapourPressure(double tmin, double tmax) {
            return Vapour.fromExtremes(tmin, tmax, lowest, highest);
        }

        @Override
        public String inWords() {
            return "humidity from its lowest and highest value (FAO-56 eq. 17)";
        }
    }

    /** The day's highest relative humidity alone. */
    record Highest(double percent) implements Humidity {
        public Highest {
            checked(percent);
        }

        @Override
        public double vapourPressure(double tmin, double tmax) {
            return Vapour.fromHighest(tmin, percent);
        }

        @Override
        public String inWords() {
            return "humidity from its highest value alone (FAO-56 eq. 18)";
        }
    }

    /** The day's lowest relative humidity alone, for which FAO-56 has no equation. */
    record LowestAlone(double percent) implements Humidity {
        public LowestAlone {
            checked(percent);
        }

        @Override
        public double vapourPressure(double tmin, double tmax) {
            return Vapour.fromDewPoint(tmin);
        }

        @Override
        public String inWords() {
            return "highest humidity not given: the lowest alone is not enough, so dew point taken"
                    + " as the lowest temperature (FAO-56 eq. 48)";
        }
    }

    /** The day's mean relative humidity. */
    record Mean(double percent) implements Humidity {
        public Mean {
            checked(percent);
        }

        @Override
        public double vapourPressure(double tmin, double tmax) {
            return Vapour.fromMean(tmin, tmax, percent);
        }

        @Override
        public String inWords() {
            return "humidity from its mean (FAO-56 eq. 19)";
        }
    }

    /** A vapour pressure that was measured or worked out elsewhere, kPa. */
    record Pressure(double kilopascals) implements Humidity {
        @Override
        public double vapourPressure(double tmin, double tmax) {
            return kilopascals;
        }

        @Override
        public String inWords() {
            return "vapour pressure as given";
        }
    }

    /** Nothing was measured: the air is taken to reach its dew point at the night's minimum. */
    record Unknown() implements Humidity {
        @Override
        public double vapourPressure(double tmin, double tmax) {
            return Vapour.fromDewPoint(tmin);
        }

        @Override
        public String inWords() {
            return "humidity not given: dew point taken as the lowest temperature (FAO-56 eq. 48)";
        }
    }

    private static void checked(double percent) {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException("relative humidity must be from 0 to 100 % but is " + percent);
        }
    }
}
