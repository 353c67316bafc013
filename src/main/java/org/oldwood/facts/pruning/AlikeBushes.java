package org.oldwood.facts.pruning;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.facts.Amount;

/**
 * Amounts of pruning, put in words once for all plants that are alike: of one crop, form and way of pruning, with the
 * same stems, age and room, taking the same time. A plantation has many.
 */
final class AlikeBushes {
    private static final int MOST = 2000;

    private final Map<Alike, Amount> known = new HashMap<>();

    private record Alike(
            String amount,
            String crop,
            String form,
            String school,
            Bush bush,
            StemFaults faults,
            int bushes,
            Optional<Double> minutes) {}

    /** What {@code make} makes of a case, or made of one like it. */
    Amount amount(String name, PruningCase one, int bushes, Optional<Double> minutes, Supplier<Amount> make) {
        if (hangsOnItsPast(one)) {
            return make.get();
        }
        Alike alike = new Alike(
                name,
                one.crop().id(),
                one.form().form(),
                one.school().id(),
                one.bush().orElse(one.blank()),
                one.faults(),
                bushes,
                minutes);
        Amount found = known.get(alike);
        if (found == null) {
            found = make.get();
            if (known.size() >= MOST) {
                known.clear();
            }
            known.put(alike, found);
        }
        return found;
    }

    /** A neglected bush is told how it goes on, and that rests on what grew on it before. */
    private static boolean hangsOnItsPast(PruningCase one) {
        return one.cut().life() == StageOfLife.NEGLECTED;
    }
}
