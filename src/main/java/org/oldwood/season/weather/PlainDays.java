package org.oldwood.season.weather;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a weather file that is just as we write it: {@code date,tmin,tmax,rain}, a day a line, in the order of the
 * days, nothing odd in it. Thirty years take some milliseconds. Of anything else it makes nothing, and
 * {@link WeatherReader} must look, which knows all the other ways to write such a file and words what is wrong.
 */
final class PlainDays {
    private static final byte[] HEADING = "date,tmin,tmax,rain".getBytes(StandardCharsets.US_ASCII);
    private static final double[] TENS = {1, 10, 100, 1000, 10_000};
    private static final int MOST_DIGITS = 9;

    /** Values from here on may stand for "not measured". */
    private static final double SENTINEL = 99.9;

    private final byte[] text;
    private int at;
    private boolean plain = true;

    private PlainDays(byte[] text) {
        this.text = text;
    }

    /** The days, or nothing where the file is not of that plain kind. */
    static Optional<List<WeatherDay>> read(byte[] text, LocalDate today) {
        PlainDays reader = new PlainDays(text);
        List<WeatherDay> days = reader.days(today);
        return reader.plain && !days.isEmpty() && inCelsius(days) ? Optional.of(days) : Optional.empty();
    }

    private static boolean inCelsius(List<WeatherDay> days) {
        double least = 0;
        double greatest = 0;
        int leasts = 0;
        int greatests = 0;
        for (WeatherDay day : days) {
            least += day.minC().orElse(0);
            leasts += day.minC().isPresent() ? 1 : 0;
            greatest += day.maxC().orElse(0);
            greatests += day.maxC().isPresent() ? 1 : 0;
        }
        return WeatherUnits.mayBeCelsius(least / Math.max(1, leasts), greatest / Math.max(1, greatests));
    }

    private List<WeatherDay> days(LocalDate today) {
        List<WeatherDay> days = new ArrayList<>(text.length / 22 + 1);
        heading();
        LocalDate before = LocalDate.MIN;
        while (plain && at < text.length) {
            LocalDate date = date();
            OptionalDouble least = number();
            OptionalDouble greatest = number();
            OptionalDouble rain = number();
            endOfLine();
            plain &= date.isAfter(before) && !date.isAfter(today) && possible(least, greatest, rain);
            days.add(new WeatherDay(date, least, greatest, rain));
            before = date;
        }
        return days;
    }

    private static boolean possible(OptionalDouble least, OptionalDouble greatest, OptionalDouble rain) {
        return WeatherRows.possible(least, greatest, rain)
                && (least.isEmpty() || greatest.isEmpty() || least.getAsDouble() <= greatest.getAsDouble());
    }

    private void heading() {
        plain = text.length > HEADING.length;
        for (int i = 0; plain && i < HEADING.length; i++) {
            plain = text[at++] == HEADING[i];
        }
        endOfLine();
    }

    private void endOfLine() {
        if (next() == '\r') {
            at++;
        }
        plain &= at >= text.length || text[at] == '\n';
        at++;
    }

    private int next() {
        return at < text.length ? text[at] : '\n';
    }

    private LocalDate date() {
        int year = digits(4);
        dash();
        int month = digits(2);
        dash();
        int day = digits(2);
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException e) {
            plain = false;
            return LocalDate.MIN;
        }
    }

    private void dash() {
        plain &= next() == '-';
        at++;
    }

    private int digits(int count) {
        int number = 0;
        for (int i = 0; i < count; i++) {
            int digit = next() - '0';
            plain &= digit >= 0 && digit <= 9;
            number = 10 * number + digit;
            at++;
        }
        return number;
    }

    /** A comma and a number with at most four decimals, or with nothing after the comma. */
    private OptionalDouble number() {
        plain &= next() == ',';
        at++;
        boolean negative = next() == '-';
        at += negative ? 1 : 0;
        long digits = 0;
        int count = 0;
        int decimals = -1;
        for (; isPart(next()); at++) {
            if (next() == '.') {
                plain &= decimals < 0;
                decimals = 0;
            } else {
                digits = 10 * digits + next() - '0';
                count++;
                decimals += decimals < 0 ? 0 : 1;
            }
            plain &= count <= MOST_DIGITS;
        }
        if (count == 0) {
            plain &= !negative && decimals < 0;
            return OptionalDouble.empty();
        }
        plain &= decimals < TENS.length && decimals != 0;
        if (!plain) {
            return OptionalDouble.empty();
        }
        double value = digits / TENS[Math.max(0, decimals)];
        plain = value < SENTINEL;
        return OptionalDouble.of(negative ? -value : value);
    }

    private static boolean isPart(int character) {
        return character == '.' || (character >= '0' && character <= '9');
    }
}
