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
        double age = years(plant.plant().planted(), day);
        if (inspections.isEmpty()) { return ParentHealth.of(signs, List.of(), age, age); }
        Entry last = inspections.get(inspections.size() - 1);
        List<String> found = inspections.stream().map(entry -> entry.text("finding").orElse(""))
                .filter(finding -> bars(signs, finding) || last.text("finding").filter(finding::equals).isPresent())
                .distinct().toList();
        return ParentHealth.of(signs, found, years(last.date(), day), age);
    }

    private static double years(LocalDate from, LocalDate day) {
        return ChronoUnit.DAYS.between(from, day) / DAYS_A_YEAR;
    }

    /** The first finding on a bush that bars it; empty where nothing does. */
    static Optional<ParentHealth.Sick> barring(PlantState plant, HealthSigns signs) {
        return Entries.all(plant.entries(), EntryKind.INSPECTED).stream()
                .flatMap(inspection -> inspection.text("finding").stream())
                .flatMap(finding -> signs.signs().stream().filter(sign -> sign.bars() && sign.finding().equals(finding))
                        .map(sign -> new ParentHealth.Sick(plant.plant().id(), finding, sign.sources())))
                .findFirst();
    }

    private static boolean bars(HealthSigns signs, String finding) {
        return signs.signs().stream().anyMatch(sign -> sign.bars() && sign.finding().equals(finding));
    }
}
