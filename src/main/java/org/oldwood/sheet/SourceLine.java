package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Source;
import org.oldwood.crop.Sources;
import org.oldwood.plan.Task;

/**
 * A publication that the sheet's figures come from.
 *
 * @param key its short name
 * @param words who wrote what, and when
 * @param mark how it was seen, where it was not read in print; else empty
 */
record SourceLine(String key, String words, String mark) {
    static List<SourceLine> of(List<Task> tasks, Sources sources) {
        TreeSet<String> keys = new TreeSet<>();
        tasks.forEach(task -> keys.addAll(task.sources()));
        List<SourceLine> lines = new ArrayList<>();
        for (String key : keys) {
            sources.find(key).ifPresent(it -> lines.add(line(it)));
        }
        return lines;
    }

    private static SourceLine line(Source source) {
        String year = source.year().isEmpty() ? "" : ", " + source.year();
        return new SourceLine(
                source.key(),
                (source.by().isEmpty() ? "" : source.by() + ": ") + source.title() + year,
                source.seen() == Seen.READ ? "" : source.seen().words());
    }
}
