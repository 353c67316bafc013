package org.oldwood.words;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How amounts and days are told to a person. Texts are made in metric units with the day before the month; what a
 * person reads passes here last.
 *
 * @param monthFirst {@code Nov 28, 2026} for {@code 28 Nov 2026}
 */
public record Wording(Units units, boolean monthFirst) {
    public static final Wording METRIC = new Wording(Units.METRIC, false);

    private static final Pattern DAY = Pattern.compile("\\b(\\d{1,2}(?:(?:-|–| to )\\d{1,2})?)["
            + " \u00a0]((?:Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)(?:[a-z]{1,6})?|May)\\b(?:["
            + " \u00a0](\\d{4})\\b)?");

    /** The same in other units; with US units, the month before the day. */
    public Wording in(Units others) {
        return new Wording(others, others == units ? monthFirst : others == Units.US);
    }

    /** A finished text as this person reads it. */
    public String said(String text) { return days(units.said(text)); }

    /** A finished page of HTML as this person reads it. */
    public String saidOnPage(String page) {
        return days(units.saidOnPage(page));
    }

    private String days(String text) {
        return !monthFirst ? text
                : DAY.matcher(text).replaceAll(day -> Matcher.quoteReplacement(
                        day.group(2) + " " + day.group(1) + (day.group(3) == null ? "" : ", " + day.group(3))));
    }
}
