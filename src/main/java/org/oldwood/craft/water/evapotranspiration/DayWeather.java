package org.oldwood.craft.water.evapotranspiration;

import java.util.OptionalDouble;

/**
 * A day's weather as far as it is known.
 *
 * @param tmin lowest temperature, °C
 * @param tmax highest temperature, °C; not below the lowest
 * @param wind wind at 2 m, m/s, if it is known
 */
public record DayWeather(double tmin, double tmax, Humidity humidity, OptionalDouble wind, Sunshine sunshine) {
    /** The world's mean wind, taken where none was measured, m/s (FAO-56, p. 63). */
    public static final double WIND_NOT_KNOWN = 2;

    /** In calm air warmth still stirs it: the least wind that counts, m/s (FAO-56, p. 63). */
    public static final double LEAST_WIND = 0.5;

    public DayWeather {
        if (!(tmin >= -90 && tmax <= 60 && tmin <= tmax)) {
            throw new IllegalArgumentException(
                    "temperatures must lie from -90 to 60 °C, the lowest not above the highest, but are %s and %s"
                            .formatted(tmin, tmax));
        }
        if (wind.isPresent() && !(wind.getAsDouble() >= 0 && wind.getAsDouble() <= 60)) {
            throw new IllegalArgumentException("wind must be from 0 to 60 m/s but is " + wind.getAsDouble());
        }
    }

    /** Mean of the two extremes, °C (FAO-56, equation 9). */
    public double tmean() { return (tmin + tmax) / 2; }

    /** Wind at 2 m, as measured but at least {@link #LEAST_WIND}, or else the world's mean. */
    public double windOrMean() {
        return Math.max(LEAST_WIND, wind.orElse(WIND_NOT_KNOWN));
    }

    /** Where the wind comes from, as the end of a sentence. */
    public String windInWords() {
        if (wind.isEmpty()) { return "wind not given: 2 m/s, the mean of stations all over the world (FAO-56 p. 63)"; }
        return wind.getAsDouble() < LEAST_WIND ? "wind as measured, but 0.5 m/s at least (FAO-56 p. 63)"
                : "wind as measured";
    }
}
