package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Seen;
import org.oldwood.season.Hemisphere;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** The short warnings by id, from {@code cautions.json}. */
public final class Cautions {
    private final Map<String, Caution> byId = new LinkedHashMap<>();

    /**
     * A warning.
     *
     * @param line what it says; one that was never seen in print says so
     * @param sources the keys of its sources
     * @param crops the crops that it concerns; with {@code groups}, all where both are empty
     * @param groups the groups of crops that it concerns
     * @param months the first and last month of the north in which it holds, both included; all year where empty
     */
    public record Caution(
            String line, List<String> sources, List<String> crops, List<String> groups, List<Integer> months) {

        static Caution read(Fields fields) {
            boolean remembered = fields.text("seen", "").equals(Seen.MEMORY.key());
            List<Integer> months = new ArrayList<>();
            fields.object("months").ifPresent(span -> {
                months.add(span.count("from", 1, MONTHS));
                months.add(span.count("to", 1, MONTHS));
            });
            return new Caution(
                    fields.text("line") + (remembered ? " (From memory.)" : ""),
                    fields.texts("source"),
                    fields.texts("crops"),
                    fields.texts("groups"),
                    List.copyOf(months));
        }

        /** True where it holds for the crop; where none is named, of every crop. */
        public boolean concerns(Optional<Crop> crop) {
            return crop.isEmpty()
                    || (crops.isEmpty() && groups.isEmpty())
                    || crop.get().isAmong(crops)
                    || groups.contains(crop.get().group());
        }

        /** True where a day from {@code first} to {@code last}, both included, is in its months. */
        boolean holdsBetween(LocalDate first, LocalDate last, Hemisphere hemisphere) {
            if (months.isEmpty()) {
                return true;
            }
            LocalDate month = first.withDayOfMonth(1);
            while (!month.isAfter(last)) {
                if (isIn(month.getMonthValue(), hemisphere)) {
                    return true;
                }
                month = month.plusMonths(1);
            }
            return false;
        }

        private boolean isIn(int month, Hemisphere hemisphere) {
            int shift = hemisphere == Hemisphere.NORTH ? 0 : MONTHS / 2;
            int northern = (month - 1 + shift) % MONTHS + 1;
            return northern >= months.get(0) && northern <= months.get(1);
        }
    }

    private static final int MONTHS = 12;

    public static Cautions read(Documents documents) {
        Cautions cautions = new Cautions();
        documents
                .fields("cautions.json")
                .objects("cautions")
                .forEach(fields -> cautions.byId.put(fields.text("id"), Caution.read(fields)));
        return cautions;
    }

    public Optional<Caution> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The lines of those among {@code ids} that concern the crop and hold in the window. */
    public List<String> lines(Collection<String> ids, Optional<Crop> crop, Window window, Hemisphere hemisphere) {
        List<String> lines = new ArrayList<>(ids.size());
        for (String id : ids) {
            Caution caution = byId.get(id);
            if (caution != null
                    && caution.concerns(crop)
                    && caution.holdsBetween(window.first(), window.last(), hemisphere)) {
                lines.add(caution.line());
            }
        }
        return List.copyOf(lines);
    }
}
