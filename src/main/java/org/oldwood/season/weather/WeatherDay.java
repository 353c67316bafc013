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
public record WeatherDay(LocalDate date, OptionalDouble minC, OptionalDouble maxC, OptionalDouble rainMm) {}
