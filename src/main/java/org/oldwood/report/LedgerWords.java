package org.oldwood.report;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.facts.feeding.Applications;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/** Ledgers and shopping lists in words, for the terminal and for sheets. */
public final class LedgerWords {
    private LedgerWords() {}

    /** What one application was: {@code dried blood, 300 g (30 g/m²)}. */
    public static String what(Applications.Given line) {
        String where = line.plant().map(plant -> " to " + plant + " alone").orElse("");
        String rate = line.kind() == EntryKind.MULCHED ? "" : " (" + Words.amount(line.gPerM2()) + " g/m²)";
        return line.name() + ", " + line.amount() + where + rate;
    }

    /** What one application brings in its season: {@code N 3, P2O5 0.5 g/m²}. */
    public static String brings(Applications.Given line) {
        if (!line.known()) { return "not a known material: not counted"; }
        return line.now().sum() == 0 ? "" : FeedPlan.inWords(line.now()) + " g/m²";
    }

    /** The sums of a season, a line each. */
    public static List<String> sums(BedLedger.Sum sum) {
        List<String> lines = new ArrayList<>();
        if (sum.given().sum() > 0) { lines.add("given " + FeedPlan.inWords(sum.given()) + " g/m²"); }
        if (sum.left().sum() > 0) { lines.add("left by the season before: " + FeedPlan.inWords(sum.left()) + " g/m²"); }
        if (sum.limestone() > 0) { lines.add("lime as ground limestone: " + Words.amount(sum.limestone()) + " g/m²"); }
        if (sum.sulphur() > 0) { lines.add("as elemental sulphur: " + Words.amount(sum.sulphur()) + " g/m²"); }
        return lines;
    }
}
