package org.oldwood.calendar;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * What was written to a garden's calendars so far: one JSON object a line, one line a task, in
 * {@value #FILE} in the garden's folder. Derived: without it the same UIDs are written again, and
 * only the revision numbers start anew.
 *
 * @param tasks by identity
 * @param adopted UIDs taken over from an older file, by {@link Uids#name}
 */
record CalendarState(Map<String, Remembered> tasks, Map<String, String> adopted) {
    static final String FILE = "calendar-state.jsonl";
    private static final int FORMAT = 1;
    private static final List<String> STATES =
            List.of("OPEN", "BEGUN", "DONE", "SKIPPED", "WITHDRAWN");

    static CalendarState empty() {
        return new CalendarState(Map.of(), Map.of());
    }

    /** What is remembered in a garden's folder; empty where nothing is. */
    static CalendarState of(Path folder, Problems problems) throws IOException {
        Path file = folder.resolve(FILE);
        return Files.exists(file) ? read(file, problems) : empty();
    }

    /** A line that cannot be read is left out, with a problem that says what follows from it. */
    static CalendarState read(Path file, Problems problems) throws IOException {
        Map<String, Remembered> tasks = new LinkedHashMap<>();
        Map<String, String> adopted = new LinkedHashMap<>();
        // octets that are no UTF-8 spoil their line, not the file
        try (BufferedReader lines =
                new BufferedReader(
                        new InputStreamReader(
                                Files.newInputStream(file), StandardCharsets.UTF_8))) {
            int number = 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                Problems here = new Problems();
                Optional<Json> json = JsonReader.readLine(line, FILE, number, here);
                if (json.isPresent() && number > 1) {
                    task(Fields.of(json.get(), here), tasks, adopted);
                }
                if (!here.isEmpty()) {
                    problems.add(
                            "calendar-state-line",
                            Place.of(FILE, number),
                            "cannot be read: " + here.list().get(0).message(),
                            "The task of this line starts again at revision 0; nothing else is lost.");
                }
            }
        }
        return new CalendarState(tasks, adopted);
    }

    private static void task(
            Fields line, Map<String, Remembered> tasks, Map<String, String> adopted) {
        String identity = line.text("task");
        Instant changed = instant(line);
        Stamp stamp = new Stamp(line.count("sequence", 0, Integer.MAX_VALUE - 1), changed);
        String shown = line.text("shown");
        String hash = line.text("hash");
        Optional<Item> item = item(line, identity);
        for (String kind : List.of("event", "todo")) {
            line.optionalText(kind + "Uid")
                    .ifPresent(uid -> adopted.put(Uids.name(identity, kind), uid));
        }
        line.done();
        if (line.ok() && item.isPresent()) {
            tasks.put(identity, new Remembered(item.get(), stamp, shown, unsigned(hash, line)));
        }
    }

    private static Optional<Item> item(Fields line, String identity) {
        String title = line.text("title");
        String category = line.text("category", "");
        String place = line.text("place", "");
        String bed = line.text("bed", "");
        LocalDate first = line.date("first");
        LocalDate last = line.date("last");
        LocalDate best = line.date("best");
        Item.State state = Item.State.valueOf(line.oneOf("state", STATES));
        Optional<LocalDate> day = line.optionalDate("day");
        int percent = line.count("percent", 0, 99, 0);
        if (!line.ok()
                || best.isBefore(first)
                || best.isAfter(last)
                || (state == Item.State.DONE && day.isEmpty())) {
            line.wrong("first", "calendar-state-days", "the days do not fit each other", "");
            return Optional.empty();
        }
        return Optional.of(
                new Item(
                        identity,
                        new Item.Words(title, "", category, place),
                        bed,
                        new Item.Days(first, last, best),
                        new Item.Progress(state, day, percent)));
    }

    private static Instant instant(Fields line) {
        try {
            return Stamp.parse(line.text("changed"));
        } catch (DateTimeParseException e) {
            line.wrong("changed", "not-a-time", "must be a time such as 2026-11-25T00:00:00Z", "");
            return Instant.EPOCH;
        }
    }

    private static long unsigned(String hash, Fields line) {
        try {
            return Long.parseUnsignedLong(hash, 16);
        } catch (NumberFormatException e) {
            line.wrong("hash", "not-a-hash", "must be up to 16 hexadecimal digits", "");
            return Remembered.UNKNOWN;
        }
    }

    /** Writes all lines, by identity, so that the file can be compared and merged. */
    void write(Path file) throws IOException {
        Replace.file(
                file,
                out -> {
                    JsonFactory factory =
                            JsonFactory.builder()
                                    .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                                    .build();
                    try (JsonGenerator json = factory.createGenerator(out)) {
                        json.setPrettyPrinter(new MinimalPrettyPrinter("\n"));
                        json.writeStartObject();
                        json.writeNumberField("calendarState", FORMAT);
                        json.writeEndObject();
                        List<String> names = new ArrayList<>(tasks.keySet());
                        names.sort(null);
                        for (String name : names) {
                            Remembered task = tasks.get(name);
                            if (task != null) {
                                line(json, task);
                            }
                        }
                        json.writeRaw('\n');
                    }
                });
    }

    private void line(JsonGenerator json, Remembered task) throws IOException {
        Item item = task.item();
        json.writeStartObject();
        json.writeStringField("task", item.identity());
        json.writeNumberField("sequence", task.stamp().sequence());
        json.writeStringField("changed", Stamp.text(task.stamp().changed()));
        json.writeStringField("hash", Long.toHexString(task.hash()));
        json.writeStringField("shown", task.shown());
        json.writeStringField("title", item.words().title());
        optional(json, "category", item.words().category());
        optional(json, "place", item.words().place());
        optional(json, "bed", item.bed());
        json.writeStringField("first", item.days().first().toString());
        json.writeStringField("last", item.days().last().toString());
        json.writeStringField("best", item.days().best().toString());
        json.writeStringField("state", item.progress().state().name());
        optional(json, "day", item.progress().day().map(LocalDate::toString).orElse(""));
        if (item.progress().percent() > 0) {
            json.writeNumberField("percent", item.progress().percent());
        }
        optional(json, "eventUid", adopted.get(Uids.name(item.identity(), "event")));
        optional(json, "todoUid", adopted.get(Uids.name(item.identity(), "todo")));
        json.writeEndObject();
    }

    private static void optional(JsonGenerator json, String key, @Nullable String value)
            throws IOException {
        if (value != null && !value.isEmpty()) {
            json.writeStringField(key, value);
        }
    }
}
