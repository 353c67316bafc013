package org.oldwood.water;

import java.util.OptionalDouble;

/**
 * A day's weather as far as it is known.
 *
 * @param tmin lowest temperature, °C
 * @param tmax highest temperature, °C; not below the lowest
 * @param humidity what is known of the humidity
 * @param wind wind at 2 m, m/s, if it is known
 * @param sunshine what is known of the sunshine
 */
public record DayWeather(
        double tmin, double tmax, Humidity humidity, OptionalDouble wind, Sunshine sunshine) {
    /** The world's mean wind, taken where none was measured, m/s (FAO-56, chapter 3, p. 63). */
    public static final double WIND_NOT_KNOWN = 2;

    public DayWeather {
        if (!(tmin >= -90 && tmax <= 60 && tmin <= tmax)) {
            throw new IllegalArgumentException(
                    "temperatures must lie from -90 to 60 °C, the lowest not above the highest, but"
                            + " are "
                            + tmin
                            + " and "
                            + tmax);
        }
        if (wind.isPresent() && !(wind.getAsDouble() >= 0 && wind.getAsDouble() <= 60)) {
            throw new IllegalArgumentException(
                    "wind must be from 0 to 60 m/s but is " + wind.getAsDouble());
        }
    }

    /** A day of which only the temperatures are known. */
    public static DayWeather ofTemperatures(double tmin, double tmax) {
        return new DayWeather(
                tmin, tmax, Humidity.unknown(), OptionalDouble.empty(), Sunshine.unknown());
    }

    /** Mean of the two extremes, °C (FAO-56, equation 9). */
    public double tmean() {
        return (tmin + tmax) / 2;
    }

    /** Wind at 2 m, as measured or else as the world's mean. */
    public double windOrMean() {
        return wind.orElse(WIND_NOT_KNOWN);
    }

    /** Where the wind comes from, as the end of a sentence. */
    public String windInWords() {
        return wind.isPresent()
                ? "wind as measured"
                : "wind not given: the world's mean of 2 m/s (FAO-56 ch. 3; the figure is"
                        + " remembered, not read)";
    }
}
