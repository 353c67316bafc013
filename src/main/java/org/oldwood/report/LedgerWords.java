package org.oldwood.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.facts.feeding.Applications;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/** Ledgers and shopping lists in words, for the terminal and for sheets. */
public final class LedgerWords {
    private LedgerWords() {}

    /** Those that are alike but for the plant that got them, together; each one to a whole bed by itself. */
    public static Collection<List<Applications.Given>> alike(Stream<Applications.Given> lines) {
        return lines.collect(Collectors.groupingBy(
                line -> line.plant().isEmpty() ? new Object()
                        : List.of(line.date(), line.name(), line.amount(), line.now()),
                LinkedHashMap::new, Collectors.toList())).values();
    }

    /** What it was and what it brings: {@code dried blood, 300 g to bc-1 alone (30 g/m²): N 3, P2O5 0.5 g/m²}. */
    public static String inWords(List<Applications.Given> alike) {
        Applications.Given line = alike.get(0);
        List<String> plants = alike.stream().flatMap(each -> each.plant().stream()).toList();
        String where = plants.isEmpty() ? ""
                : plants.size() == 1 ? " to %s alone".formatted(plants.get(0)) : " each to " + Words.list(plants);
        String rate = line.kind() == EntryKind.MULCHED ? "" : " (" + Words.amount(line.gPerM2()) + " g/m²)";
        String brings = !line.known() ? ": not a known material: not counted"
                : line.now().sum() == 0 ? "" : ": " + FeedPlan.inWords(line.now()) + " g/m²";
        return line.name() + ", " + line.amount() + where + rate + brings;
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
