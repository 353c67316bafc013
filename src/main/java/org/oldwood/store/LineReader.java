package org.oldwood.store;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the lines of a journal as JSON. */
public final class LineReader {
    private final JournalLines lines;
    private final String file;
    private final Problems problems;
    private final PlainLines plain;
    private final Map<String, String> words = new HashMap<>();

    /**
     * A reader of lines.
     *
     * @param file the journal's name as the user knows it
     * @param problems what is wrong with a line goes there
     */
    public LineReader(JournalLines lines, String file, Problems problems) {
        this.lines = lines;
        this.file = file;
        this.problems = problems;
        this.plain = lines.plain(file);
    }

    /** The value of a line, whose position counts from 0; nothing where it is not JSON. */
    public Optional<Json> read(int position) {
        Json value = lines.read(position, plain);
        return value != null ? Optional.of(value) : JsonReader.readLine(lines.get(position), file, words, problems);
    }
}
