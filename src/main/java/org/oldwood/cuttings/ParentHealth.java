package org.oldwood.cuttings;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether a bush is fit to be a parent.
 *
 * @param fit whether cuttings may be taken; false where a finding bars it
 * @param warnings what speaks against it, one sentence each, the gravest first; empty where nothing
 *     does
 */
public record ParentHealth(boolean fit, List<Warning> warnings) {
    public ParentHealth {
        warnings = List.copyOf(warnings);
    }

    /** A sentence and its sources. */
    public record Warning(String words, List<String> sources) {
        public Warning {
            sources = List.copyOf(sources);
        }
    }

    /**
     * Judges a bush.
     *
     * @param findings what inspections found, as the journal says it: {@code big-bud}
     * @param inspected whether it was ever inspected
     * @param ageYears its age; below 0 where unknown
     */
    public static ParentHealth of(
            HealthSigns signs, List<String> findings, boolean inspected, double ageYears) {
        List<Warning> bars = new ArrayList<>();
        List<Warning> warnings = new ArrayList<>();
        for (HealthSigns.Sign sign : signs.signs()) {
            if (findings.contains(sign.finding())) {
                (sign.bars() ? bars : warnings).add(new Warning(sign.words(), sign.sources()));
            }
        }
        if (!inspected && ageYears >= signs.uninspectedYears().is()) {
            warnings.add(uninspected(signs, ageYears));
        }
        boolean fit = bars.isEmpty();
        bars.addAll(warnings);
        return new ParentHealth(fit, bars);
    }

    private static Warning uninspected(HealthSigns signs, double ageYears) {
        return new Warning(
                "The bush is "
                        + (int) ageYears
                        + " years old and no inspection is noted; from "
                        + signs.uninspectedYears().inWords()
                        + " on, look it over and note what you find, or buy certified stock.",
                signs.uninspectedYears().sources());
    }
}
