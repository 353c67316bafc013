package org.oldwood.craft.pruning;

import java.util.List;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * What every published way of pruning has, whatever its craft: a name, its sources and the work in words.
 *
 * @param id short name, {@code half-young}
 * @param note what to know about it; may be empty
 */
public record Teaching(String id, String words, List<String> sources, Seen seen, String note,
        List<Step> steps) implements Checked {

    @Override
    public void check(Fields fields) { fields.tellIf(sources.isEmpty(), "source", "missing-source of-way"); }

    public List<Step> steps(String time, StageOfLife life) {
        return steps.stream().filter(step -> step.suits(time, life)).toList();
    }
}
