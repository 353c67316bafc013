package org.oldwood.facts.cuttings;

import java.util.List;
import java.util.OptionalInt;

/**
 * A bush of the garden as a parent of cuttings.
 *
 * @param fit false where its health bars it
 * @param warnings what speaks against it, one sentence each
 * @param cuttings cuttings that its wood gives beside what the bush needs itself; empty where that is not known; 0
 *     where the bush is not fit
 * @param words how that number came about, or what to note so that it is known
 */
public record ParentBush(String plant, boolean fit, List<String> warnings, OptionalInt cuttings, String words) {
    public ParentBush {
        warnings = List.copyOf(warnings);
    }
}
