package org.oldwood.plan.settle;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;

/**
 * What counts as doing a rule's work.
 *
 * @param kinds the kinds of entry, the usual one first
 * @param fields what such an entry must not contradict: {@code cut} is {@code winter}
 * @param together one share for all plants, not one for each
 * @param earlyDays how long before its time at most
 * @param measure how much is enough; empty where any entry is
 */
public record DoneBy(List<EntryKind> kinds, Map<String, String> fields, boolean together, int earlyDays,
        Optional<Measure> measure) {

    /**
     * How much is enough.
     *
     * @param sum the field that is added up, {@code kg} for example; empty where the craft is asked what is left
     * @param percent of the amount that was planned
     */
    public record Measure(Optional<String> sum, double percent) {}

    /** What an entry says for or against being this work. */
    public enum Says {
        YES,
        NOTHING,
        NO
    }

    public Says of(Entry entry) {
        if (!kinds.contains(entry.kind())) { return Says.NO; }
        Says says = Says.NOTHING;
        for (Map.Entry<String, String> wanted : fields.entrySet()) {
            Optional<String> noted = entry.text(wanted.getKey());
            if (noted.isPresent() && !noted.get().equals(wanted.getValue())) { return Says.NO; }
            says = noted.isPresent() ? Says.YES : says;
        }
        return says;
    }
}
