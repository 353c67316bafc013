package org.oldwood.season.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days as one file writes them: year first, day first or month first, with the time of day behind or not. */
enum WeatherDates {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST;

    private static final String CLOCK = "(?:[T: ]*([01]?[0-9]|2[0-4])(?::?[0-5][0-9]){0,2}(?:\\.[0-9]+)? ?([AaPp][Mm])?"
            + "(?:Z| ?UTC|[+-][0-9]{2}:?[0-9]{2})?)?";
    private static final Pattern BEGINS_WITH_YEAR = Pattern
            .compile("([0-9]{4})([-/.]?)([0-9]{1,2})\\2([0-9]{1,2})" + CLOCK);
    private static final Pattern ENDS_WITH_YEAR = Pattern
            .compile("([0-9]{1,2})([-/.])([0-9]{1,2})\\2([0-9]{4})" + CLOCK);

    /** A day, and the hour of it where one was written. */
    record Moment(LocalDate day, Optional<Integer> hour) {}

    /** How these are written, all together; nothing where day and month cannot be told apart. */
    static Optional<WeatherDates> of(List<String> texts) {
        boolean dayFirst = false;
        boolean monthFirst = false;
        for (String text : texts) {
            Matcher parts = ENDS_WITH_YEAR.matcher(text);
            if (!parts.matches()) {
                if (BEGINS_WITH_YEAR.matcher(text).matches()) { return Optional.of(YEAR_FIRST); }
                continue;
            }
            dayFirst |= parts.group(2).equals(".") || Integer.parseInt(parts.group(1)) > 12;
            monthFirst |= Integer.parseInt(parts.group(3)) > 12;
        }
        if (!dayFirst && !monthFirst) {
            return texts.stream().anyMatch(text -> ENDS_WITH_YEAR.matcher(text).matches()) ? Optional.empty()
                    : Optional.of(YEAR_FIRST);
        }
        return Optional.of(dayFirst ? DAY_FIRST : MONTH_FIRST);
    }

    /** Nothing where it is not written so, or is no day. */
    Optional<Moment> read(String text) {
        Matcher parts = (this == YEAR_FIRST ? BEGINS_WITH_YEAR : ENDS_WITH_YEAR).matcher(text);
        if (!parts.matches()) { return Optional.empty(); }
        int first = Integer.parseInt(parts.group(1));
        int middle = Integer.parseInt(parts.group(3));
        int last = Integer.parseInt(parts.group(4));
        try {
            LocalDate day = switch (this) {
                case YEAR_FIRST -> LocalDate.of(first, middle, last);
                case DAY_FIRST -> LocalDate.of(last, middle, first);
                default -> LocalDate.of(last, first, middle);
            };
            return Optional.of(new Moment(day, hour(parts.group(5), parts.group(6))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<Integer> hour(String text, String half) {
        if (text == null) { return Optional.empty(); }
        int hour = Integer.parseInt(text);
        if (half == null) { return Optional.of(hour); }
        return Optional.of(hour % 12 + (half.toLowerCase(Locale.ROOT).equals("pm") ? 12 : 0));
    }
}
