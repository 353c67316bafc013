package org.oldwood.cli.pruning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.plan.Cautions;

/**
 * What is kept of the cut lists that were told, for what is told after them. The sheets themselves are let go one by
 * one: those of a large garden would take more room than its record.
 */
final class PrunedSheets {
    private static final List<String> CAUTIONS =
            List.of("blades", "eyes", "thorns", "clean-tools", "dry-day", "silver-leaf", "sick-wood", "nesting-birds");

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
                : Optional.of("The winter's work on all "
                        + sheets
                        + " takes about "
                        + Math.round(minutes)
                        + " min; tasks spreads it over the days you work.");
    }

    /** The cautions that concern any of their crops, a line each. */
    List<String> cautions(Cautions cautions) {
        List<String> lines = new ArrayList<>();
        for (String id : CAUTIONS) {
            cautions.find(id)
                    .filter(it -> crops.values().stream().anyMatch(of -> it.concerns(Optional.of(of))))
                    .ifPresent(caution -> lines.add(caution.line()));
        }
        return lines;
    }
}
