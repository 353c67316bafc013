package org.oldwood.facts.cuttings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.PastLot;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;

/** Reads what the journal says of a lot. */
final class LotRecord {
    private LotRecord() {}

    /** The counts of a lot, the latest last; once planted out, its plants that still stand. */
    static LotCounts counts(LotState lot, GardenState state) {
        LotCounts counts = LotCounts.struck(lot.struck(), lot.struckOn());
        List<String> plants = new ArrayList<>();
        for (Entry entry : lot.entries()) {
            counts = after(counts, entry);
            plants.addAll(entry.ids("plants"));
        }
        return counts.plantedOutOn().isPresent() ? standing(counts, plants, state) : counts;
    }

    private static LotCounts after(LotCounts counts, Entry entry) {
        LocalDate day = entry.date();
        return switch (entry.kind()) {
            case CHECKED -> counts.counted(within(counts, entry.count("alive")), day);
            case LOST -> lost(counts, entry);
            case LIFTED -> counts.lifted(within(counts, fit(entry)), day);
            case PLANTED_OUT -> {
                int out = entry.ids("plants").size();
                int all = counts.plantedOutOn().isPresent() ? counts.alive() + out : out;
                yield counts.plantedOut(Math.min(counts.struck(), all), counts.plantedOutOn().orElse(day));
            }
            default -> counts;
        };
    }

    /** A loss noted on the day of a count says what killed those that the count found missing. */
    private static LotCounts lost(LotCounts counts, Entry entry) {
        boolean counted = counts.wasCounted() && counts.countedOn().equals(entry.date());
        int number = entry.count("number").orElse(0);
        return counted || number == 0 ? counts : counts.counted(Math.max(0, counts.alive() - number), entry.date());
    }

    /** As everywhere in a garden, a plant stands until it is noted as gone. */
    private static LotCounts standing(LotCounts counts, List<String> plants, GardenState state) {
        int alive = 0;
        LocalDate seen = counts.countedOn();
        for (String id : plants) {
            Optional<PlantState> plant = state.plant(id);
            alive += plant.isPresent() && plant.get().gone().isEmpty() ? 1 : 0;
            LocalDate last = plant.map(PlantState::entries).map(all -> all.get(all.size() - 1).date()).orElse(seen);
            seen = last.isAfter(seen) ? last : seen;
        }
        return counts.counted(Math.min(counts.struck(), alive), seen);
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
            if (entry.kind() == EntryKind.CHECKED && rooted.isEmpty() && !entry.date().isBefore(line.rooted().date())) {
                rooted = entry.count("alive");
            } else if (entry.kind() == EntryKind.LIFTED) {
                rooted = rooted.isPresent() ? rooted : entry.count("rooted");
                lifted = fit(entry);
            } else if (entry.kind() == EntryKind.PLANTED_OUT && entry.date().plusYears(1).isBefore(state.date())) {
                for (String id : entry.ids("plants")) {
                    out++;
                    standing += stood(id, entry.date().plusYears(1), state) ? 1 : 0;
                }
            }
        }
        return new PastLot(lot.struck(), rooted, lifted, out == 0 ? OptionalInt.empty() : OptionalInt.of(out),
                out == 0 ? OptionalInt.empty() : OptionalInt.of(standing));
    }

    private static boolean stood(String plant, LocalDate day, GardenState state) {
        return state.plant(plant).map(found -> found.gone().map(gone -> gone.date().isAfter(day)).orElse(true))
                .orElse(false);
    }
}
