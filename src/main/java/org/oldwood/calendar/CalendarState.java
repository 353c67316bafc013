package org.oldwood.calendar;

import com.fasterxml.jackson.annotation.JsonAlias;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import org.oldwood.store.Text;

/**
 * What was written to a garden's calendars so far: one JSON object a line, one line an item, in {@value #FILE} in the
 * garden's folder. Derived: without it the same UIDs are written again, and only the revision numbers start anew.
 *
 * @param adopted UIDs taken over from an older file, by {@link Uids#name}
 */
public record CalendarState(Map<String, Remembered> items, Map<String, String> adopted) {
    public static final String FILE = "calendar-state.jsonl";
    private static final String HEAD = "{\"calendarState\":2}\n";

    private static final JsonMapper MAPPER = JsonMapper.builder().enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_DEFAULT, JsonInclude.Include.NON_DEFAULT))
            .build();

    /** A line of the file; days and times as text. Before there were rounds, each item was one task. */
    private record Line(@JsonAlias("task") String item, @Nullable String parent, @Nullable List<String> tasks,
            int sequence, String changed, @Nullable String hash, String shown, String title, @Nullable String category,
            @Nullable String place, @Nullable String bed, String first, String last, String best,
            @Nullable String planned, Item.State state, @Nullable String day, int percent,
            Outgoing.@Nullable Event event, boolean rings, @Nullable String eventUid, @Nullable String todoUid) {

        static Line of(Remembered old, Map<String, String> adopted) {
            Item item = old.item();
            Item.Progress progress = item.progress();
            return new Line(item.identity(), item.parent(), item.tasks(), old.stamp().sequence(),
                    old.stamp().changed().toString(), old.hash(), old.shown(), item.words().title(),
                    item.words().category(), item.words().place(), item.bed(), item.days().first().toString(),
                    item.days().last().toString(), item.days().best().toString(), old.planned().toString(),
                    progress.state(), progress.day().map(LocalDate::toString).orElse(null), progress.percent(),
                    old.event(), old.rings(), adopted.get(Uids.name(item.identity(), Uids.EVENT)),
                    adopted.get(Uids.name(item.identity(), Uids.TODO)));
        }

        Remembered remembered() {
            Item.Days days = new Item.Days(LocalDate.parse(first), LocalDate.parse(last), LocalDate.parse(best));
            Optional<LocalDate> done = Optional.ofNullable(day).map(LocalDate::parse);
            if (state == Item.State.DONE && done.isEmpty()) {
                throw new IllegalArgumentException("it was done on no day");
            }
            Item remembered = new Item(item, said(parent), tasks == null ? List.of() : tasks,
                    new Item.Words(title, "", said(category), said(place)), said(bed), days, 0,
                    new Item.Progress(Objects.requireNonNull(state), done, percent));
            return new Remembered(remembered, new Stamp(sequence, Instant.parse(changed)),
                    Objects.requireNonNull(shown), said(hash), planned == null ? days.best() : LocalDate.parse(planned),
                    event == null ? Outgoing.Event.OWN : event, rings);
        }

        private static String said(@Nullable String text) { return text == null ? "" : text; }
    }

    /**
     * What is remembered in a garden's folder; empty where nothing is. A line that cannot be read is left out, with a
     * problem that says what follows from it.
     */
    public static CalendarState of(Path folder, Problems problems) throws IOException {
        CalendarState state = new CalendarState(new TreeMap<>(), new LinkedHashMap<>());
        Path file = folder.resolve(FILE);
        if (!Text.isThere(file)) { return state; }
        // octets that are no UTF-8 spoil their line, not the file
        List<String> lines = new String(Text.octets(file), StandardCharsets.UTF_8).lines().toList();
        for (int i = 1; i < lines.size(); i++) {
            state.take(lines.get(i), i + 1, problems);
        }
        return state;
    }

    private void take(String text, int number, Problems problems) {
        try {
            Line line = MAPPER.readValue(text, Line.class);
            Remembered remembered = line.remembered();
            items.put(line.item, remembered);
            adopt(line.item, Uids.EVENT, line.eventUid);
            adopt(line.item, Uids.TODO, line.todoUid);
        } catch (JsonProcessingException | RuntimeException e) {
            problems.tell("calendar-state-line", Place.of(FILE, number),
                    e instanceof JsonProcessingException json ? json.getOriginalMessage()
                            : Optional.ofNullable(e.getMessage()).orElse("something is missing"));
        }
    }

    private void adopt(String identity, String kind, @Nullable String uid) {
        if (uid != null) { adopted.put(Uids.name(identity, kind), uid); }
    }

    /** Writes all lines, by identity, so that the file can be compared and merged. */
    void write(Path file) throws IOException {
        StringBuilder text = new StringBuilder(HEAD);
        for (Remembered one : new TreeMap<>(items).values()) {
            text.append(MAPPER.writeValueAsString(Line.of(one, adopted))).append('\n');
        }
        Output.write(file, text.toString());
    }
}
