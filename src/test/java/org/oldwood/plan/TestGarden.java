package org.oldwood.plan;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Crops;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryReader;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenReader;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.StateBuilder;
import org.oldwood.season.CalendarStages;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

/** A small garden in memory: one bed for each need of a test, and a journal that grows. */
public final class TestGarden {
    public static final Documents DOCUMENTS = Documents.bundled();
    public static final Crops CROPS = new Crops(DOCUMENTS);

    private final Problems problems = new Problems();
    private final Garden garden;
    private final List<Entry> journal = new ArrayList<>();
    private int entries;

    /** {@code more} are further members of garden.json, each with a comma before it. */
    public TestGarden(double latitude, String more) {
        String json = """
                {"format": 1, "name": "Test", "id": "0b7f0a52-6a3e-4d2c-8b54-0c1f3f3a9d11",
                 "site": {"latitude": %s, "longitude": 0, "zone": "UTC"},
                 "beds": [{"id": "ribes", "name": "the currant bed", "areaM2": 10, "texture": "sandy-loam"},
                          {"id": "blue", "name": "the blueberry bed", "areaM2": 6, "texture": "sand"},
                          {"id": "canes", "name": "the cane bed", "areaM2": 8}]%s}
                """.formatted(latitude, more);
        garden = GardenReader.read(parsed(json, "garden.json"), problems).orElseThrow();
        String planted = latitude < 0 ? "2021-05-20" : "2021-11-20";
        note("planted", planted, "'plant': 'bc', 'crop': 'blackcurrant', 'bed': 'ribes', 'bushes': 4");
        note("planted", planted, "'plant': 'bl', 'crop': 'blueberry', 'bed': 'blue', 'bushes': 3");
        note("planted", planted, "'plant': 'ra', 'crop': 'summer-raspberry', 'bed': 'canes', 'lengthM': 4");
    }

    private Json parsed(String json, String name) {
        try {
            return JsonReader.read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)), name, problems)
                    .orElseThrow(() -> new AssertionError(problems.list().toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Notes something; single quotes stand for double ones. */
    public TestGarden note(String kind, String date, String values) {
        journal.add(entry(kind, date, values));
        return this;
    }

    Entry entry(String kind, String date, String values) {
        entries++;
        String json = ("{'id': 'e" + entries + "', 'date': '" + date + "', 'entry': '" + kind + "', " + values + "}")
                .replace('\'', '"');
        return EntryReader.read(parsed(json, "journal.jsonl"), problems)
                .orElseThrow(() -> new AssertionError(problems.list().toString()));
    }

    public GardenState on(String day) {
        GardenState state = new StateBuilder(garden, CROPS, problems).on(LocalDate.parse(day), journal);
        if (!problems.isEmpty()) { throw new AssertionError(problems.list().toString()); }
        return state;
    }

    public Plan plan(String day) {
        return new Planner(on(day), new CalendarStages(), CROPS, DOCUMENTS, new AllCrafts()).plan();
    }

    public Task task(String day, String id) {
        return plan(day).tasks().stream().filter(task -> task.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError("no task " + id));
    }
}
