package org.oldwood.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.care.Cautions;
import org.oldwood.crop.Figure;
import org.oldwood.feeding.Words;
import org.oldwood.mulching.MulchPlan;
import org.oldwood.mulching.MulchTables;
import org.oldwood.mulching.Underlay;
import org.oldwood.store.JsonWriter;

/**
 * What mulch for one piece of ground comes to, for people and as JSON.
 *
 * @param title what it is about
 * @param bed the bed's id, in a garden
 * @param facts what is known: what lies there and since when; a line each
 * @param plan depth, volume and weight
 * @param underlay what to lay under it; empty for nothing
 * @param notes what to know
 * @param next when the plan has it, in a garden
 */
record MulchSheet(
        String title,
        Optional<String> bed,
        List<String> facts,
        MulchPlan plan,
        Optional<Underlay> underlay,
        List<String> notes,
        Optional<String> next) {
    private static final List<String> GENERAL = List.of("lifting", "no-bait", "watercourses");

    void print(Out out, MulchTables tables) {
        out.hanging("", 2, title);
        facts.forEach(line -> out.hanging("  ", 4, line));
        if (plan.cubicMetres() > 0) {
            out.hanging(
                    "  ",
                    4,
                    plan.volumeWords()
                            + " of "
                            + plan.mulch().name()
                            + ", laid "
                            + Words.fixed(plan.layCm(), 0)
                            + " cm deep: "
                            + loads(tables)
                            + ", about "
                            + Words.amount(plan.kg())
                            + " kg.");
            underlay.ifPresent(under -> out.hanging("  ", 4, paper(under)));
        } else {
            out.hanging("  ", 4, "Enough lies there; nothing to lay.");
        }
        notes.forEach(line -> out.hanging("  ", 4, line));
        plan.mulch()
                .notRead()
                .forEach(mark -> out.hanging("  * ", 4, plan.mulch().name() + " " + mark));
        next.ifPresent(words -> out.hanging("  Next ", 7, words));
        out.line("  How it was reckoned");
        plan.lines().forEach(line -> out.hanging("  - ", 4, line));
        out.line();
    }

    private String loads(MulchTables tables) {
        if (plan.bales().isPresent()) {
            return Words.count(plan.wholeBales().orElseThrow(), "bale", "bales")
                    + " of "
                    + plan.mulch().bale().orElseThrow().kg().inWords();
        }
        return loads(tables.figure("barrow"), "barrow", "barrows")
                + " or "
                + loads(tables.figure("bag"), "bag", "bags");
    }

    private String loads(Figure litres, String one, String several) {
        return Words.count(plan.wholeLoads(litres.is()), one, several) + " of " + litres.inWords();
    }

    private String paper(Underlay under) {
        return "Under it "
                + Words.count(plan.sheets(under), "sheet", "sheets")
                + " of "
                + under.name()
                + ", "
                + Words.amount(under.layers().is())
                + (under.layers().is() == 1 ? " thick" : " on one another")
                + ", overlapping "
                + Words.amount(under.overlap().is())
                + " cm, wetted.";
    }

    /** The cautions of all sheets that lay something, each once. */
    static void printCautions(Out out, List<MulchSheet> sheets, Cautions all) {
        Set<String> lines = new LinkedHashSet<>();
        sheets.forEach(sheet -> lines.addAll(sheet.cautions(all)));
        if (!lines.isEmpty()) {
            out.line("Take care");
            lines.forEach(line -> out.hanging("  - ", 4, line));
        }
    }

    private List<String> cautions(Cautions all) {
        if (plan.cubicMetres() <= 0) {
            return List.of();
        }
        List<String> ids = new ArrayList<>(plan.mulch().cautions());
        underlay.ifPresent(under -> ids.addAll(under.cautions()));
        ids.addAll(GENERAL);
        return ids.stream()
                .distinct()
                .map(all::find)
                .flatMap(Optional::stream)
                .map(it -> it.line())
                .toList();
    }

    void write(JsonWriter json, MulchTables tables, Cautions all) {
        json.object();
        bed.ifPresent(id -> json.put("bed", id));
        json.put("title", title)
                .put("material", plan.mulch().id())
                .put("name", plan.mulch().name())
                .put("coveredM2", plan.coveredM2())
                .put("depthNowCm", plan.depthNowCm())
                .put("depthWantedCm", plan.depthWantedCm())
                .put("layCm", plan.layCm())
                .put("litres", plan.litres())
                .put("kg", plan.kg())
                .put("barrows", plan.loads(tables.figure("barrow").is()))
                .put("bags", plan.loads(tables.figure("bag").is()));
        plan.bales().ifPresent(bales -> json.put("bales", bales));
        underlay.ifPresent(
                under -> json.put("under", under.id()).put("sheets", plan.sheets(under)));
        next.ifPresent(words -> json.put("next", words));
        json.put("facts", facts)
                .put("arithmetic", plan.lines())
                .put("notes", notes)
                .put("notRead", plan.mulch().notRead())
                .put("cautions", cautions(all))
                .put("sources", plan.mulch().depth().sources())
                .endObject();
    }
}
