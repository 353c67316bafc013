package org.oldwood.craft.water.evapotranspiration;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/**
 * What is known of a day's humidity. Relative humidity in %, from 0 to 100.
 *
 * @param vapour actual vapour pressure in kPa on a day with these extremes of temperature
 * @param inWords how it is found, as the end of a sentence; says so where it is a guess
 */
public record Humidity(DoubleBinaryOperator vapour, String inWords) {
    /** Nothing was measured: the air is taken to reach its dew point at the night's minimum. */
    public static final Humidity UNKNOWN = asTheNight(
            "humidity not given: dew point taken as the lowest temperature (FAO-56 eq. 48)");

    /**
     * The best that the two extremes allow. A lowest value alone has no published equation and counts as nothing, which
     * is said.
     */
    public static Humidity of(OptionalDouble lowest, OptionalDouble highest) {
        double least = checked(lowest.orElse(0));
        double most = checked(highest.orElse(100));
        if (least > most) {
            throw new IllegalArgumentException(
                    "the lowest relative humidity, %s %%, is above the highest, %s %%".formatted(least, most));
        }
        if (highest.isEmpty()) {
            return lowest.isEmpty() ? UNKNOWN
                    : asTheNight("highest humidity not given: the lowest alone is not enough, so dew point taken"
                            + " as the lowest temperature (FAO-56 eq. 48)");
        }
        return lowest.isEmpty()
                ? new Humidity((tmin, tmax) -> Vapour.fromHighest(tmin, most),
                        "humidity from its highest value alone (FAO-56 eq. 18)")
                : new Humidity((tmin, tmax) -> Vapour.fromExtremes(tmin, tmax, least, most),
                        "humidity from its lowest and highest value (FAO-56 eq. 17)");
    }

    private static Humidity asTheNight(String inWords) {
        return new Humidity((tmin, tmax) -> Vapour.fromDewPoint(tmin), inWords);
    }

    private static double checked(double percent) {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException("relative humidity must be from 0 to 100 % but is " + percent);
        }
        return percent;
    }
}
