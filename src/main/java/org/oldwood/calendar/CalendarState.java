package org.oldwood.calendar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
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
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;

/**
 * What was written to a garden's calendars so far: one JSON object a line, one line a task, in {@value #FILE} in the
 * garden's folder. Derived: without it the same UIDs are written again, and only the revision numbers start anew.
 *
 * @param tasks by identity
 * @param adopted UIDs taken over from an older file, by {@link Uids#name}
 */
public record CalendarState(Map<String, Remembered> tasks, Map<String, String> adopted) {
    public static final String FILE = "calendar-state.jsonl";
    private static final List<String> STATES = List.of("OPEN", "BEGUN", "DONE", "SKIPPED", "WITHDRAWN");

    /** Who is told what is remembered, line by line. */
    interface Sink {
        /** Takes a line just as we write it; returns false to have it as a whole. */
        boolean takes(StateLine line);

        void takes(Remembered task);
    }

    /** What is remembered in a garden's folder; empty where nothing is. */
    public static CalendarState of(Path folder, Problems problems) throws IOException {
        Map<String, Remembered> tasks = new LinkedHashMap<>();
        Map<String, String> adopted = new LinkedHashMap<>();
        each(
                folder,
                problems,
                new Sink() {
                    @Override
                    public boolean takes(StateLine line) {
                        return false;
                    }

                    @Override
                    public void takes(Remembered task) {
                        tasks.put(task.item().identity(), task);
                    }
                },
                adopted);
        return new CalendarState(tasks, adopted);
    }

    /**
     * Tells what is remembered in a garden's folder, in the order of the lines. A line that cannot be read is left out,
     * with a problem that says what follows from it.
     */
    static void each(Path folder, Problems problems, Sink sink, Map<String, String> adopted) throws IOException {
        Path file = folder.resolve(FILE);
        if (Files.exists(file)) {
            try (InputStream in = Files.newInputStream(file)) {
                new StateReader(in, problems, sink, adopted).read();
            } catch (IOException e) {
                throw new FileSystemException(file.toString(), null, e.getMessage());
            }
        }
    }

    /** A line of any form. */
    static void line(String text, int number, Problems problems, Sink sink, Map<String, String> adopted) {
        Problems here = new Problems();
        Optional<Json> json = JsonReader.readLine(text, FILE, number, here);
        if (json.isPresent() && number > 1) {
            task(Fields.of(json.get(), here), sink, adopted);
        }
        if (!here.isEmpty()) {
            problems.add(
                    "calendar-state-line",
                    Place.of(FILE, number),
                    "cannot be read: " + here.list().get(0).message(),
                    "The task of this line starts again at revision 0; nothing else is lost.");
        }
    }

    private static void task(Fields line, Sink sink, Map<String, String> adopted) {
        String identity = line.text("task");
        Instant changed = instant(line);
        Stamp stamp = new Stamp(line.count("sequence", 0, Integer.MAX_VALUE - 1), changed);
        String shown = line.text("shown");
        String hash = line.text("hash");
        Optional<Item> item = item(line, identity);
        for (String kind : List.of("event", "todo")) {
            line.optionalText(kind + "Uid").ifPresent(uid -> adopted.put(Uids.name(identity, kind), uid));
        }
        line.done();
        if (line.ok() && item.isPresent()) {
            sink.takes(new Remembered(item.get(), stamp, shown, unsigned(hash, line)));
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
        if (!line.ok() || best.isBefore(first) || best.isAfter(last) || (state == Item.State.DONE && day.isEmpty())) {
            line.wrong("first", "calendar-state-days", "the days do not fit each other", "");
            return Optional.empty();
        }
        return Optional.of(new Item(
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
        List<String> names = new ArrayList<>(tasks.keySet());
        names.sort(null);
        Output.write(file, out -> {
            StateWriter writer = new StateWriter(out, adopted);
            for (String name : names) {
                Remembered task = tasks.get(name);
                if (task != null) {
                    writer.line(task);
                }
            }
            writer.end();
        });
    }
}
