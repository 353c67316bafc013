package org.oldwood.cli.pruning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.plan.Cautions;
import org.oldwood.report.TaskWords;

/**
 * What is kept of the cut lists that were told, for what is told after them. The sheets themselves are let go one by
 * one: those of a large garden would take more room than its record.
 */
final class PrunedSheets {
    private final Map<String, Crop> crops = new LinkedHashMap<>();
    private int sheets;
    private double minutes;

    void add(PruneSheet sheet) {
        crops.putIfAbsent(sheet.crop().id(), sheet.crop());
        sheets++;
        minutes += sheet.minutes().orElse(0.0);
    }

    /** How long the winter's work on all of them takes, where there are several. */
    Optional<String> total() {
        return sheets < 2 || minutes == 0
                ? Optional.empty()
                : Optional.of("The winter's work on all %s takes %s; tasks spreads it over the days you work."
                        .formatted(sheets, TaskWords.minutes(minutes)));
    }

    /** The cautions of the cut that concern any of their crops. */
    List<Cautions.Caution> cautions(Cautions cautions) {
        return cautions.of(new Cautions.Job(
                List.of("prune"),
                List.of("blade", "saw"),
                List.of(),
                crops.values(),
                Optional.empty(),
                Optional.empty()));
    }
}
