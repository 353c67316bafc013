package org.oldwood.calendar.format;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.time.LocalDate;
import java.time.Month;
import org.oldwood.words.Dates;

/**
 * Writes days as octets into an array and returns where the next octet goes. Every item has a dozen of them, and a text
 * for each would cost more than all the rest of it.
 */
public final class DayOctets {
    /** More than any day takes. */
    public static final int MOST = 32;

    private static final byte[][] MONTHS = new byte[12][];

    static {
        for (int i = 0; i < MONTHS.length; i++) {
            LocalDate day = LocalDate.of(2000, i + 1, 1);
            MONTHS[i] = (" " + Dates.monthName(day) + " ").getBytes(US_ASCII);
        }
    }

    private DayOctets() {}

    /** As {@link LocalDate#toString} has it, {@code 2026-11-25}. */
    public static int iso(byte[] to, int at, LocalDate day) {
        int year = day.getYear();
        if (year < 1000 || year > 9999) {
            return put(to, at, day.toString());
        }
        int next = four(to, at, year);
        to[next] = '-';
        next = two(to, next + 1, day.getMonthValue());
        to[next] = '-';
        return two(to, next + 1, day.getDayOfMonth());
    }

    /** A DATE value (RFC 5545, 3.3.4), {@code 20261125}. */
    public static int digits(byte[] to, int at, LocalDate day) {
        int year = day.getYear();
        if (year < 1000 || year > 9999) {
            long number = year * 10000L + day.getMonthValue() * 100L + day.getDayOfMonth();
            return put(to, at, Long.toString(number));
        }
        return two(to, two(to, four(to, at, year), day.getMonthValue()), day.getDayOfMonth());
    }

    /** For people, {@code 25 November 2026}. */
    public static int words(byte[] to, int at, LocalDate day) {
        int date = day.getDayOfMonth();
        int next = at;
        if (date >= 10) {
            to[next++] = (byte) ('0' + date / 10);
        }
        to[next++] = (byte) ('0' + date % 10);
        next = put(to, next, MONTHS[day.getMonthValue() - Month.JANUARY.getValue()]);
        int year = day.getYear();
        return year < 1000 || year > 9999 ? put(to, next, Integer.toString(year)) : four(to, next, year);
    }

    public static int put(byte[] to, int at, byte[] octets) {
        System.arraycopy(octets, 0, to, at, octets.length);
        return at + octets.length;
    }

    private static int put(byte[] to, int at, String ascii) {
        return put(to, at, ascii.getBytes(US_ASCII));
    }

    private static int four(byte[] to, int at, int number) {
        return two(to, two(to, at, number / 100), number % 100);
    }

    private static int two(byte[] to, int at, int number) {
        int tens = number / 10;
        to[at] = (byte) ('0' + tens);
        to[at + 1] = (byte) ('0' + number - 10 * tens);
        return at + 2;
    }
}
