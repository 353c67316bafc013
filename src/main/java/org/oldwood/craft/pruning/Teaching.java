package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * What every published way of pruning has, whatever its craft: a name, its sources and the work in words.
 *
 * @param id short name, {@code half-young}
 * @param words what it does, in one sentence
 * @param sources source keys
 * @param seen how it was seen
 * @param note what to know about it; may be empty
 * @param steps the work in words
 */
public record Teaching(String id, String words, List<String> sources, Seen seen, String note, List<Step> steps) {

    /** Reads the keys that all ways share. */
    static Teaching read(Fields fields) {
        List<Step> steps = new ArrayList<>();
        for (Fields step : fields.objects("steps")) {
            steps.add(Step.read(step));
        }
        Teaching teaching = new Teaching(
                fields.text("id"),
                fields.text("words"),
                fields.texts("source"),
                Seen.parse(fields.oneOf("seen", Seen.keys())),
                fields.text("note", ""),
                List.copyOf(steps));
        if (teaching.sources.isEmpty()) {
            fields.wrong("source", "missing-source", "is missing; a way names its source", "");
        }
        return teaching;
    }

    /** The steps for a time of year and a stage of life. */
    public List<Step> steps(String time, StageOfLife life) {
        return steps.stream().filter(step -> step.suits(time, life)).toList();
    }
}
