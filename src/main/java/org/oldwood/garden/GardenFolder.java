package org.oldwood.garden;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;
import org.oldwood.store.Journal;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import org.oldwood.store.Text;

/** A garden's folder: {@code garden.json}, {@code journal.jsonl}, and data of its own beside them. */
public final class GardenFolder {
    public static final String GARDEN_FILE = "garden.json";
    public static final String JOURNAL_FILE = "journal.jsonl";

    private final Path folder;
    private final Problems problems = new Problems();
    private final List<Problem> notices = new ArrayList<>();
    private final Documents documents;
    private final Crops crops;
    private final Garden garden;
    private final List<Entry> journal;

    private GardenFolder(Path folder) {
        this.folder = folder;
        this.documents = Documents.with(folder, problems);
        Optional<Garden> read = readGarden();
        this.crops = new Crops(documents);
        this.journal = readJournal();
        SecondCopies.in(folder).forEach(copy -> notices.add(SecondCopies.notice(copy)));
        this.garden = read.orElseThrow(() -> new RecordException(problems.list()));
    }

    /**
     * Opens the folder and reads it whole. Problems of the journal are kept in {@link #problems()}.
     *
     * @throws RecordException where there is no garden, or {@code garden.json} has problems
     */
    public static GardenFolder open(Path folder) {
        if (!Files.isRegularFile(folder.resolve(GARDEN_FILE))) {
            throw new RecordException(Problem.of("no-garden", Place.of(folder.toString()),
                    Files.isDirectory(folder) ? "holds no " + GARDEN_FILE : "is not a folder"));
        }
        return new GardenFolder(folder);
    }

    private Optional<Garden> readGarden() {
        try (InputStream in = Files.newInputStream(folder.resolve(GARDEN_FILE))) {
            return JsonReader.read(in, GARDEN_FILE, problems).flatMap(json -> GardenReader.read(json, problems));
        } catch (IOException e) {
            problems.tell("unreadable-file", Place.of(GARDEN_FILE));
            return Optional.empty();
        }
    }

    private Journal.Contents journalLines() {
        try {
            return new Journal(journalPath()).read();
        } catch (IOException e) {
            problems.tell("unreadable-file", Place.of(JOURNAL_FILE));
            return new Journal.Contents(List.of(), Optional.empty());
        }
    }

    private List<Entry> readJournal() {
        Journal.Contents contents = journalLines();
        contents.torn().ifPresent(line -> notices.add(Problem.of("torn-line", Place.of(JOURNAL_FILE, line.number()))));
        List<Entry> entries = new ArrayList<>();
        Map<String, String> words = new HashMap<>();
        Map<String, Map<String, Json>> alike = new HashMap<>();
        for (Journal.Line line : contents.lines()) {
            if (line.text().indexOf(Text.UNREADABLE) >= 0) {
                notices.add(Problem.of("not-utf-8 journal", Place.of(JOURNAL_FILE, line.number()), Text.UNREADABLE));
            }
            JsonReader.readLine(line, JOURNAL_FILE, words, problems)
                    .flatMap(json -> EntryReader.read(json, alike, problems)).ifPresent(entries::add);
        }
        return entries;
    }

    public Path path() { return folder; }

    public Path journalPath() { return folder.resolve(JOURNAL_FILE); }

    public Garden garden() { return garden; }

    public Documents documents() { return documents; }

    public Crops crops() { return crops; }

    /** All entries that could be read, in the order of the file. */
    public List<Entry> journal() { return journal; }

    /** What is wrong with the records, so far as was read. */
    public Problems problems() { return problems; }

    /** Things to know that stop nothing, a torn last line for example. */
    public List<Problem> notices() {
        return notices;
    }

    /** The garden on a day. Problems of adding up go to {@link #problems()}. */
    public GardenState on(LocalDate day) {
        return on(day, Set.of());
    }

    /** The garden on a day, had some entries, and what they booked, never been noted. */
    public GardenState on(LocalDate day, Set<String> without) {
        List<Entry> counting = journal.stream().filter(
                entry -> !without.contains(entry.id()) && entry.text("tick").filter(without::contains).isEmpty())
                .toList();
        return new StateBuilder(garden, crops, problems).on(day, counting);
    }
}
