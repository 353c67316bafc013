package org.oldwood.cli.record;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.garden.EntryKind;
import org.oldwood.store.Json;
import org.oldwood.store.Place;

/**
 * A task that somebody says is done.
 *
 * @param task its id
 * @param day when it was done
 * @param only the plants it was done to; empty for all
 * @param except the plants it was not done to
 * @param amount how much was done, in the task's unit; empty for as planned
 * @param note free words; may be empty
 */
public record Tick(String task, LocalDate day, List<String> only, List<String> except, Optional<Double> amount,
        String note) {
    public Tick(String task, LocalDate day, Optional<Double> amount, String note) {
        this(task, day, List.of(), List.of(), amount, note);
    }

    /** The entry that says so. */
    Draft done(List<String> plants, Place place) {
        Map<String, Json> values = new LinkedHashMap<>();
        values.put("task", new Json.Text(place.at("task"), task));
        amount.ifPresent(all -> values.put("amount", new Json.Num(place.at("amount"), all, all.toString())));
        if (!plants.isEmpty()) { values.put("only", list(plants, place)); }
        if (!note.isEmpty()) { values.put("note", new Json.Text(place.at("note"), note)); }
        return new Draft(day, EntryKind.DONE, values, place);
    }

    static Json list(List<String> ids, Place place) {
        Place here = place.at("only");
        return new Json.Arr(here, ids.stream().map(id -> (Json) new Json.Text(here, id)).toList());
    }
}
