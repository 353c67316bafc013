package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;

/** What the soil tests of a bed say. */
final class SoilRecord {
    private SoilRecord() {}

    /**
     * The last measured pH.
     *
     * @param ph the pH
     * @param date the day of the test
     * @param freeLime whether free lime was found
     */
    public record Ph(double ph, LocalDate date, boolean freeLime) {}

    public static Optional<Ph> ph(BedState bed) {
        List<Entry> entries = bed.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (entry.kind() == EntryKind.SOIL_TEST && entry.number("ph").isPresent()) {
                return Optional.of(new Ph(entry.number("ph").getAsDouble(), entry.date(), entry.flag("freeLime")));
            }
        }
        return Optional.empty();
    }
}
