package org.oldwood.craft.cuttings.survival;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.oldwood.craft.cuttings.PastLot;

/**
 * The survival rate of each phase for one crop and method, from sources first and then from what the garden's own lots
 * did.
 *
 * <p>A past lot of n plants counts for n / (1 + (n − 1) r) plants, where r is the correlation within a lot that the
 * rate itself implies (Kish's design effect, Survey Sampling, 1965; from memory): a hundred cuttings of one bad spring
 * are one bad spring, not a hundred proofs.
 */
public final class Survival {
    private final Map<Phase, UncertainRate> rates;

    public Survival(Map<Phase, UncertainRate> rates) { this.rates = new EnumMap<>(rates); }

    public UncertainRate rate(Phase phase) { return rates.getOrDefault(phase, UncertainRate.CERTAIN); }

    /** The phases still to come from {@code phase}, of which {@code fraction} is over. */
    public SurvivalChain from(Phase phase, double fraction) {
        List<UncertainRate> left = new ArrayList<>();
        left.add(rate(phase).late(fraction));
        Stream.of(Phase.values()).filter(later -> later.compareTo(phase) > 0).map(this::rate).forEach(left::add);
        return new SurvivalChain(left);
    }

    public SurvivalChain whole() { return from(Phase.ROOTING, 0); }

    /** The rates after the garden's past lots. */
    public Survival learning(List<PastLot> past) {
        Map<Phase, UncertainRate> learnt = new EnumMap<>(rates);
        past.forEach(lot -> learn(learnt, lot));
        return new Survival(learnt);
    }

    private void learn(Map<Phase, UncertainRate> learnt, PastLot lot) {
        double rooted = rooted(lot);
        if (rooted >= 0) { add(learnt, Phase.ROOTING, rooted, lot.struck()); }
        if (rooted > 0 && lot.lifted().isPresent()) {
            add(learnt, Phase.NURSERY, Math.min(rooted, lot.lifted().getAsInt()), rooted);
        }
        if (lot.plantedOut().isPresent() && lot.established().isPresent()) {
            double out = lot.plantedOut().getAsInt();
            add(learnt, Phase.PLANTING_OUT, Math.min(out, lot.established().getAsInt()), out);
        }
    }

    /**
     * The number rooted; where only the lifted were counted, as many as would leave those after the usual loss in the
     * nursery bed; −1 where neither was.
     */
    private double rooted(PastLot lot) {
        if (lot.rooted().isPresent()) { return Math.min(lot.struck(), lot.rooted().getAsInt()); }
        if (lot.lifted().isPresent()) {
            return Math.min(lot.struck(), lot.lifted().getAsInt() / rate(Phase.NURSERY).mean());
        }
        return -1;
    }

    private void add(Map<Phase, UncertainRate> learnt, Phase phase, double alive, double outOf) {
        UncertainRate before = learnt.getOrDefault(phase, UncertainRate.CERTAIN);
        double counts = 1 / (1 + Math.max(0, outOf - 1) * rate(phase).correlation());
        learnt.put(phase, before.after(alive * counts, outOf * counts));
    }
}
