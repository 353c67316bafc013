package org.oldwood.craft.cuttings.parent;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a bush is fit to be a parent.
 *
 * @param warnings what speaks against it, one sentence each, the gravest first; empty where nothing does
 */
public record ParentHealth(boolean fit, List<Warning> warnings) {

    /** A bush with a disease that goes with its cuttings, and what was found on it. */
    public record Sick(String plant, String finding, List<String> sources) {}

    public record Warning(String words, List<String> sources) {}

    /**
     * Judges a bush.
     *
     * @param findings what inspections found, as the journal says it: {@code big-bud}
     * @param seenYears years since it was last inspected; its age where it never was
     * @param ageYears its age; below 0 where unknown
     */
    public static ParentHealth of(HealthSigns signs, List<String> findings, double seenYears, double ageYears) {
        List<Warning> bars = new ArrayList<>();
        List<Warning> warnings = new ArrayList<>();
        for (HealthSigns.Sign sign : signs.signs()) {
            if (findings.contains(sign.finding())) {
                (sign.bars() ? bars : warnings).add(new Warning(sign.words(), sign.sources()));
            }
        }
        if (Math.min(seenYears, ageYears) >= signs.uninspectedYears().is()) {
            warnings.add(uninspected(signs, seenYears, ageYears));
        }
        boolean fit = bars.isEmpty();
        bars.addAll(warnings);
        return new ParentHealth(fit, bars);
    }

    /** The same bush with sick ones of its kind beside it in the bed. */
    public ParentHealth beside(List<Sick> neighbours) {
        if (neighbours.isEmpty()) { return this; }
        Sick first = neighbours.get(0);
        List<Warning> all = new ArrayList<>();
        all.add(new Warning(
                "%s beside it in the bed was found with %s, and a bush may carry that before it shows. Take none here; buy certified stock."
                        .formatted(first.plant(), first.finding()),
                first.sources()));
        all.addAll(warnings);
        return new ParentHealth(false, all);
    }

    private static Warning uninspected(HealthSigns signs, double seenYears, double ageYears) {
        return new Warning(
                "The bush is %s years old and %s; after %s without one, look it over and note what you find, or buy certified stock."
                        .formatted((int) ageYears,
                                seenYears < ageYears ? "its last inspection is " + (int) seenYears + " years back"
                                        : "no inspection is noted",
                                signs.uninspectedYears().inWords()),
                signs.uninspectedYears().sources());
    }
}
