package org.oldwood.garden;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.oldwood.store.Fields;
import org.oldwood.words.Units;
import org.oldwood.words.Wording;

/**
 * What the grower wants of the program; a beginner need not say anything.
 *
 * @param never kinds of rounds, or rules, that are never wanted, by id
 * @param aheadDays how many days ahead work is told as due, today included
 * @param alarm when a calendar rings on a day with work; empty for never
 * @param morePlants whether to be told how to raise more plants
 * @param wording in which units amounts are told, and in which order days
 * @param weekStarts the day on which a week begins
 */
public record Wishes(Set<String> never, int aheadDays, Optional<LocalTime> alarm, boolean morePlants, Wording wording,
        DayOfWeek weekStarts) {
    private static final List<String> ORDERS = List.of("day-first", "month-first");
    private static final List<String> WEEKS = List.of("monday", "sunday", "saturday");

    static Wishes read(Fields garden) {
        Fields fields = garden.object("wishes").orElseGet(garden::none);
        Units units = garden.optionalOneOf("units", Units.keys()).flatMap(Units::of).orElse(Units.METRIC);
        boolean american = units == Units.US;
        Wishes wishes = new Wishes(Set.copyOf(fields.texts("never")), fields.count("aheadDays", 1, 90, 7),
                alarm(fields), fields.flag("morePlants", false),
                new Wording(units, fields.optionalOneOf("dates", ORDERS).map(ORDERS.get(1)::equals).orElse(american),
                        Optional.empty()),
                DayOfWeek.valueOf(fields.optionalOneOf("weekStarts", WEEKS).orElse(WEEKS.get(american ? 1 : 0))
                        .toUpperCase(Locale.ROOT)));
        fields.done();
        return wishes;
    }

    private static Optional<LocalTime> alarm(Fields fields) {
        String text = fields.text("alarm", "08:00");
        try {
            return text.equals("none") ? Optional.empty() : Optional.of(LocalTime.parse(text));
        } catch (DateTimeParseException e) {
            fields.tell("alarm", "not-an-hour", text);
            return Optional.empty();
        }
    }

    /** With further kinds that are not wanted. */
    Wishes without(Set<String> more) {
        Set<String> all = new HashSet<>(never);
        all.addAll(more);
        return new Wishes(Set.copyOf(all), aheadDays, alarm, morePlants, wording, weekStarts);
    }
}
