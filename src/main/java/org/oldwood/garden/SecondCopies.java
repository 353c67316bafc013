package org.oldwood.garden;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.store.Journal;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.words.Words;

/**
 * Files beside the record that look like a second copy of one of its files. A program that keeps a folder the same on
 * several machines makes one where two of them wrote: it keeps the file's name and puts something before the ending,
 * after it, or before the name ({@code journal (conflict 2026-11-20).jsonl}, {@code journal.conflict-ab12.jsonl},
 * {@code journal (1).jsonl}, {@code Copy of journal.jsonl}). What such a file holds does not count, so it must be told.
 */
public final class SecondCopies {
    private static final List<String> RECORD = List.of(GardenFolder.GARDEN_FILE, GardenFolder.JOURNAL_FILE,
            "weather.csv");

    /** What editors and careful people leave behind on purpose. */
    private static final List<String> BACKUPS = List.of(".bak", ".orig", ".old", "~", ".schema.json");

    private static final String SET_ASIDE = ".torn-line-";
    private static final int NAMED = 5;
    private static final String LIKE = "looks like a second copy of %s, as a file-sync program makes one where two machines wrote; %s";

    private SecondCopies() {}

    /** Names of the files in a folder that look like second copies, each with what it copies. */
    public record Copy(String name, String of) {}

    /** Those in a folder, by name. */
    public static List<Copy> in(Path folder) {
        String[] names = folder.toFile().list();
        return Stream.of(names == null ? new String[0] : names).sorted()
                .flatMap(name -> copied(name).map(of -> new Copy(name, of)).stream()).toList();
    }

    /** Which file of the record a name is a copy of, if any. */
    static Optional<String> copied(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        boolean known = lower.startsWith(".") || lower.contains(SET_ASIDE)
                || BACKUPS.stream().anyMatch(lower::endsWith);
        return RECORD.stream().filter(file -> !known && !lower.equals(file) && isLike(lower, file)).findFirst();
    }

    private static boolean isLike(String name, String file) {
        int dot = file.lastIndexOf('.');
        String stem = file.substring(0, dot);
        String ending = file.substring(dot);
        if (name.startsWith(file)) { return isApart(name.charAt(file.length())); }
        if (name.endsWith(file)) { return isApart(name.charAt(name.length() - file.length() - 1)); }
        return name.startsWith(stem) && name.endsWith(ending) && isApart(name.charAt(stem.length()))
                && (!file.equals("weather.csv") || saysCopy(name));
    }

    private static boolean isApart(char c) { return !Character.isLetterOrDigit(c); }

    /** Tables of weather from elsewhere may well lie in the folder. */
    private static boolean saysCopy(String name) {
        return name.contains("conf") || name.contains("copy") || name.contains("(");
    }

    static Problem notice(Copy copy) {
        return Problem.of("second-copy", Place.of(copy.name), LIKE.formatted(copy.of, "what it holds is not counted"),
                copy.of);
    }

    /** The same, having looked into a copy of a journal. */
    public static Problem compared(Copy copy, GardenFolder folder) {
        if (!copy.of.equals(GardenFolder.JOURNAL_FILE)) {
            Problem notice = notice(copy);
            return new Problem(notice.name(), notice.place(), notice.message(),
                    "Keep in %s what is right of both, then take it out of the folder.".formatted(copy.of));
        }
        List<String> missing = missing(folder, copy);
        String what = missing.isEmpty() ? "it holds no entry that the journal lacks"
                : "it holds %s that the journal lacks: %s%s".formatted(Words.count(missing.size(), "entry", "entries"),
                        String.join(", ", missing.subList(0, Math.min(NAMED, missing.size()))),
                        missing.size() > NAMED ? " …" : "");
        return new Problem("second-copy", Place.of(copy.name), LIKE.formatted("the journal", what),
                missing.isEmpty() ? "Take it out of the folder."
                        : "Add the lines you miss to the end of journal.jsonl, then take it out of the folder.");
    }

    private static List<String> missing(GardenFolder folder, Copy copy) {
        Set<String> known = folder.journal().stream().map(Entry::id).collect(Collectors.toSet());
        try {
            return new Journal(folder.path().resolve(copy.name)).read().lines().stream()
                    .flatMap(line -> id(line).stream()).filter(id -> !known.contains(id)).toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static Optional<String> id(Journal.Line line) {
        return JsonReader.readLine(line.text(), "", line.number(), new Problems()).filter(Json.Obj.class::isInstance)
                .map(json -> ((Json.Obj) json).members().get("id")).filter(Json.Text.class::isInstance)
                .map(id -> ((Json.Text) id).value());
    }
}
