package org.oldwood.season.weather;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person says of a weather file that does not say it itself.
 *
 * @param columns the file's names for our columns, by ours
 * @param dayFirst whether 03/04/2026 is in April
 */
public record WeatherHints(Map<String, String> columns, Optional<WeatherUnits> units, Optional<Boolean> dayFirst) {
    /** The columns that can be named. */
    public static final List<String> COLUMNS = WeatherColumns.OURS;

    public static final WeatherHints NONE = new WeatherHints(Map.of(), Optional.empty(), Optional.empty());
}
