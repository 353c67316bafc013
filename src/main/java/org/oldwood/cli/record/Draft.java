package org.oldwood.cli.record;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.garden.Entries;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.store.Json;
import org.oldwood.store.Place;

/**
 * An entry that someone wants to note, not yet checked.
 *
 * @param values by key; {@code note} may be among them
 * @param place where it was given: a line of a table, or the command line
 * @param booked whether it goes with the tick before it
 * @param id the id it already has, where it comes back from a table written out of a journal
 */
public record Draft(LocalDate date, EntryKind kind, Map<String, Json> values, Place place, boolean booked,
        Optional<String> id) {
    public Draft(LocalDate date, EntryKind kind, Map<String, Json> values, Place place) {
        this(date, kind, values, place, false, Optional.empty());
    }

    /** A value as typed on the command line; a measure may come with its unit. */
    static Json typed(GardenCommand command, EntryField field, String text) {
        try {
            return EntryText.value(field, text, Place.of(ProblemWords.COMMAND_LINE), command::units);
        } catch (IllegalArgumentException e) {
            throw command.usage(field.key() + " " + e.getMessage());
        }
    }

    /** The same of another task; its values may be changed. */
    Draft of(String task) {
        Map<String, Json> other = new LinkedHashMap<>(values);
        other.put("task", new Json.Text(place.at("task"), task));
        return new Draft(date, kind, other, place);
    }

    /** Takes back an entry, with a tick all that it booked; {@code how} the draft after it bears on that, or nothing. */
    public static Draft withdrawal(LocalDate day, String id, String how, Place place) {
        Map<String, Json> values = new LinkedHashMap<>(Map.of("wrong", new Json.Text(place.at("wrong"), id)));
        if (!how.isEmpty()) { values.put("cause", new Json.Text(place.at("cause"), how + Entries.WITH_NEXT)); }
        return new Draft(day, EntryKind.WITHDRAWN, values, place);
    }
}
