package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryReader;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenReader;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.StateBuilder;
import org.oldwood.season.CalendarStages;
import org.oldwood.store.Documents;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

/** A garden of one bed for tests: what happened is given as journal lines with single quotes. */
public final class SmallGarden {
    private final Documents documents = Documents.bundled();
    private final Crops crops = new Crops(documents);
    private final Garden garden;
    private final List<Entry> journal = new ArrayList<>();

    private SmallGarden(double latitude, String more) {
        this(latitude, "{'id':'a','name':'Bed A','areaM2':12,'texture':'sandy-loam'}", more);
    }

    /** A garden of the beds given, as they stand in {@code garden.json}. */
    public SmallGarden(double latitude, String beds, String more) {
        Problems problems = new Problems();
        String json = "{'format':1,'name':'Small','id':'6f1c1c58-3d0a-4b0e-9a49-0d7f4e6a2b11','site':{'latitude':"
                + latitude + ",'longitude':0},'beds':[" + beds + "]" + more + "}";
        garden = JsonReader.readLine(json.replace('\'', '"'), "garden.json", 1, problems)
                .flatMap(read -> GardenReader.read(read, problems))
                .orElseThrow(() -> new AssertionError(problems.list().toString()));
    }

    public static SmallGarden north() { return new SmallGarden(52, ""); }

    public static SmallGarden south() { return new SmallGarden(-42, ""); }

    /** A northern garden with further keys of {@code garden.json}, beginning with a comma. */
    public static SmallGarden north(String more) {
        return new SmallGarden(52, more);
    }

    /** A southern one. */
    public static SmallGarden south(String more) { return new SmallGarden(-42, more); }

    public SmallGarden note(String date, String rest) {
        Problems problems = new Problems();
        String json = "{'id':'e-" + (journal.size() + 1) + "','date':'" + date + "','entry':" + rest + "}";
        journal.add(JsonReader.readLine(json.replace('\'', '"'), "journal.jsonl", journal.size() + 1, problems)
                .flatMap(read -> EntryReader.read(read, problems))
                .orElseThrow(() -> new AssertionError(problems.list().toString())));
        return this;
    }

    public GardenState on(String day) {
        Problems problems = new Problems();
        GardenState state = new StateBuilder(garden, crops, problems).on(LocalDate.parse(day), journal);
        if (!problems.isEmpty()) { throw new AssertionError(problems.list().toString()); }
        return state;
    }

    public Planner planner(String day) { return planner(day, documents, new AllCrafts()); }

    /** By other rules than the bundled ones, or other facts. */
    public Planner planner(String day, Documents documents, Advisor advisors) {
        return new Planner(on(day), new CalendarStages(), crops, documents, advisors);
    }

    public Plan plan(String day) { return planner(day).plan(); }
}
