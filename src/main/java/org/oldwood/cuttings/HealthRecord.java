package org.oldwood.cuttings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;

/** Reads what the journal says of a bush's health. */
final class HealthRecord {
    private static final double DAYS_A_YEAR = 365.25;

    private HealthRecord() {}

    /**
     * A disease that goes with the cuttings never leaves the bush, so a finding that bars it holds
     * for good; of the others only the last inspection counts.
     */
    static ParentHealth of(PlantState plant, HealthSigns signs, LocalDate day) {
        List<Entry> inspections = Entries.all(plant.entries(), EntryKind.INSPECTED);
        List<String> found =
                inspections.stream()
                        .map(entry -> entry.text("finding").orElse(""))
                        .filter(finding -> bars(signs, finding) || isLast(inspections, finding))
                        .distinct()
                        .toList();
        double age = ChronoUnit.DAYS.between(plant.plant().planted(), day) / DAYS_A_YEAR;
        return ParentHealth.of(signs, found, !inspections.isEmpty(), age);
    }

    private static boolean bars(HealthSigns signs, String finding) {
        return signs.signs().stream()
                .anyMatch(sign -> sign.bars() && sign.finding().equals(finding));
    }

    private static boolean isLast(List<Entry> inspections, String finding) {
        return inspections
                .get(inspections.size() - 1)
                .text("finding")
                .map(finding::equals)
                .orElse(false);
    }
}
