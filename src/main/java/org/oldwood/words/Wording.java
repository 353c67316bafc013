package org.oldwood.words;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How amounts, days and seasons are told to a person. Texts are made in metric units with the day before the month, and
 * say {@code early June (December in the south)} or {@code (In the south look here.)}; what a person reads passes here
 * last.
 *
 * @param monthFirst {@code Nov 28, 2026} for {@code 28 Nov 2026}
 * @param south whether the reader gardens south of the equator; empty where that is not known, and both are told
 */
public record Wording(Units units, boolean monthFirst, Optional<Boolean> south) {
    public static final Wording METRIC = new Wording(Units.METRIC, false, Optional.empty());

    private static final Pattern MONTH = Pattern
            .compile("((?:\\d{1,2} )?[\\w-]+) \\(((?:\\d{1,2} )?[\\w-]+) in the south\\)");
    private static final Pattern ASIDE = Pattern.compile(" \\(In the south (\\p{L})([^)]*)\\)");

    private static final Pattern DAY = Pattern.compile("\\b(\\d{1,2}(?:(?:-|–| to )\\d{1,2})?)["
            + " \u00a0]((?:Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)(?:[a-z]{1,6})?|May)\\b(?:["
            + " \u00a0](\\d{4})\\b)?");

    /** The same in other units; with US units, the month before the day. */
    public Wording in(Units others) {
        return new Wording(others, others == units ? monthFirst : others == Units.US, south);
    }

    /** The same for a garden whose half of the earth is known. */
    public Wording inSouth(boolean itIs) {
        return new Wording(units, monthFirst, Optional.of(itIs));
    }

    /** A finished text as this person reads it. */
    public String said(String text) {
        return days(units.said(ofItsHalf(text)));
    }

    /** A finished page of HTML as this person reads it. */
    public String saidOnPage(String page) {
        return days(units.saidOnPage(ofItsHalf(page)));
    }

    /** A finished text by the half of the earth alone, in metric units with the day before the month. */
    public String ofItsHalf(String text) {
        if (south.isEmpty() || !text.contains("n the south")) { return text; }
        String month = MONTH.matcher(text).replaceAll(south.get() ? "$2" : "$1");
        return ASIDE.matcher(month)
                .replaceAll(aside -> south.get()
                        ? Matcher.quoteReplacement(" " + Words.capital(aside.group(1)) + aside.group(2))
                        : "");
    }

    private String days(String text) {
        return !monthFirst ? text
                : DAY.matcher(text).replaceAll(day -> Matcher.quoteReplacement(
                        day.group(2) + " " + day.group(1) + (day.group(3) == null ? "" : ", " + day.group(3))));
    }
}
