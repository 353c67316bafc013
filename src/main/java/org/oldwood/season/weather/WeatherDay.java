package org.oldwood.season.weather;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One day's weather. What was not measured is absent.
 *
 * @param date the day
 * @param minC least temperature, °C
 * @param maxC greatest temperature, °C; never below the least
 * @param rainMm rain, mm
 */
public record WeatherDay(LocalDate date, OptionalDouble minC, OptionalDouble maxC, OptionalDouble rainMm) {

    /** Whether both temperatures were measured. */
    public boolean hasTemperatures() {
        return minC.isPresent() && maxC.isPresent();
    }

    /** This day, and where it was not measured the other. */
    WeatherDay over(WeatherDay other) {
        return new WeatherDay(date, minC.isPresent() ? minC : other.minC, maxC.isPresent() ? maxC : other.maxC,
                rainMm.isPresent() ? rainMm : other.rainMm);
    }
}
