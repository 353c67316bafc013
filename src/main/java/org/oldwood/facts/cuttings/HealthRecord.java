package org.oldwood.facts.cuttings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.cuttings.parent.HealthSigns;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;

/** Reads what the journal says of a bush's health. */
final class HealthRecord {
    private static final double DAYS_A_YEAR = 365.25;

    private HealthRecord() {}

    /**
     * A disease that goes with the cuttings never leaves the bush, so a finding that bars it holds for good; of the
     * others only the last inspection counts.
     */
    static ParentHealth of(PlantState plant, HealthSigns signs, LocalDate day) {
        List<Entry> inspections = Entries.all(plant.entries(), EntryKind.INSPECTED);
        if (inspections.isEmpty()) {
            double age = years(plant.plant().planted(), day);
            return ParentHealth.of(signs, List.of(), age, age);
        }
        List<String> found = inspections.stream()
                .map(entry -> entry.text("finding").orElse(""))
                .filter(finding -> bars(signs, finding) || isLast(inspections, finding))
                .distinct()
                .toList();
        double age = years(plant.plant().planted(), day);
        double seen = years(inspections.get(inspections.size() - 1).date(), day);
        return ParentHealth.of(signs, found, seen, age);
    }

    private static double years(LocalDate from, LocalDate day) {
        return ChronoUnit.DAYS.between(from, day) / DAYS_A_YEAR;
    }

    /** The first finding on a bush that bars it; empty where nothing does. */
    static Optional<ParentHealth.Sick> barring(PlantState plant, HealthSigns signs) {
        for (Entry inspection : Entries.all(plant.entries(), EntryKind.INSPECTED)) {
            String finding = inspection.text("finding").orElse("");
            for (HealthSigns.Sign sign : signs.signs()) {
                if (sign.bars() && sign.finding().equals(finding)) {
                    return Optional.of(new ParentHealth.Sick(plant.plant().id(), finding, sign.sources()));
                }
            }
        }
        return Optional.empty();
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
