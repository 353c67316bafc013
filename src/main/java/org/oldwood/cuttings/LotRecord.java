package org.oldwood.cuttings;

import java.time.LocalDate;
import java.util.OptionalInt;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;

/** Reads what the journal says of a lot. */
final class LotRecord {
    private LotRecord() {}

    /** The counts of a lot, the latest last. */
    static LotCounts counts(LotState lot) {
        LotCounts counts = LotCounts.struck(lot.struck(), lot.struckOn());
        for (Entry entry : lot.entries()) {
            counts = after(counts, entry);
        }
        return counts;
    }

    private static LotCounts after(LotCounts counts, Entry entry) {
        LocalDate day = entry.date();
        return switch (entry.kind()) {
            case CHECKED -> counts.counted(within(counts, entry.count("alive")), day);
            case LOST ->
                    counts.counted(
                            Math.max(0, counts.alive() - entry.count("number").orElse(0)), day);
            case LIFTED -> counts.lifted(within(counts, fit(entry)), day);
            case PLANTED_OUT -> {
                int out = entry.ids("plants").size();
                int all = counts.plantedOutOn().isPresent() ? counts.alive() + out : out;
                yield counts.plantedOut(
                        Math.min(counts.struck(), all), counts.plantedOutOn().orElse(day));
            }
            default -> counts;
        };
    }

    private static int within(LotCounts counts, OptionalInt number) {
        return Math.min(counts.struck(), number.orElse(counts.alive()));
    }

    private static OptionalInt fit(Entry lifted) {
        OptionalInt good = lifted.count("good");
        return good.isPresent() ? good : lifted.count("rooted");
    }

    /** What the lot teaches of later ones: only phases that are over. */
    static PastLot past(LotState lot, Timeline line, GardenState state) {
        OptionalInt rooted = OptionalInt.empty();
        OptionalInt lifted = OptionalInt.empty();
        int out = 0;
        int standing = 0;
        for (Entry entry : lot.entries()) {
            if (entry.kind() == EntryKind.CHECKED
                    && rooted.isEmpty()
                    && !entry.date().isBefore(line.rooted().date())) {
                rooted = entry.count("alive");
            } else if (entry.kind() == EntryKind.LIFTED) {
                rooted = rooted.isPresent() ? rooted : entry.count("rooted");
                lifted = fit(entry);
            } else if (entry.kind() == EntryKind.PLANTED_OUT
                    && entry.date().plusYears(1).isBefore(state.date())) {
                for (String id : entry.ids("plants")) {
                    out++;
                    standing += stood(id, entry.date().plusYears(1), state) ? 1 : 0;
                }
            }
        }
        return new PastLot(
                lot.struck(),
                rooted,
                lifted,
                out == 0 ? OptionalInt.empty() : OptionalInt.of(out),
                out == 0 ? OptionalInt.empty() : OptionalInt.of(standing));
    }

    private static boolean stood(String plant, LocalDate day, GardenState state) {
        return state.plant(plant)
                .map(found -> found.gone().map(gone -> gone.date().isAfter(day)).orElse(true))
                .orElse(false);
    }
}
