package org.oldwood.season.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What was read from a weather file, with what a person should know of it.
 *
 * @param weather the days
 * @param format the format and units it was read in, in words
 * @param repeated lines that said the same of a day a second time
 * @param notMeasured days on which a temperature is missing
 */
public record WeatherImport(Weather weather, String format, int repeated, int notMeasured) {

    /** A run of days that the file leaves out, both ends included. */
    public record Gap(LocalDate first, LocalDate last) {
        public int days() { return (int) (last.toEpochDay() - first.toEpochDay()) + 1; }
    }

    /** The days left out between the first and the last. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        LocalDate before = null;
        for (WeatherDay day : weather.days()) {
            if (before != null && !before.plusDays(1).equals(day.date())) {
                gaps.add(new Gap(before.plusDays(1), day.date().minusDays(1)));
            }
            before = day.date();
        }
        return gaps;
    }
}
