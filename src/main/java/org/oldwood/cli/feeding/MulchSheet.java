package org.oldwood.cli.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.mulching.MulchPlan;
import org.oldwood.craft.mulching.MulchTables;
import org.oldwood.craft.mulching.Underlay;
import org.oldwood.crop.Figure;
import org.oldwood.plan.Cautions;
import org.oldwood.words.Words;

/**
 * What mulch for one piece of ground comes to, for people and as JSON.
 *
 * @param tables what a barrow and a bag hold
 * @param facts what is known: what lies there and since when; a line each
 * @param plan depth, volume and weight
 * @param underlay what to lay under it; empty for nothing
 * @param next when the plan has it, in a garden
 */
record MulchSheet(MulchTables tables, String title, Optional<String> bed, List<String> facts, MulchPlan plan,
        Optional<Underlay> underlay, List<String> notes, Optional<String> next) implements GroundSheet {
    @Override
    public void print(Out out) {
        out.hanging("", 2, title);
        facts.forEach(line -> out.hanging("  ", 4, line));
        if (plan.cubicMetres() > 0) {
            out.hanging("  ", 4, "%s of %s, laid %s cm deep: %s, about %s kg.".formatted(plan.volumeWords(),
                    plan.mulch().name(), Words.fixed(plan.layCm(), 0), loads(), Words.amount(plan.kg())));
            underlay.ifPresent(
                    under -> out.hanging("  ", 4, "Under it %s.".formatted(under.inWords(plan.sheets(under)))));
        } else {
            out.hanging("  ", 4, "Enough lies there; nothing to lay.");
        }
        notes.forEach(line -> out.hanging("  ", 4, line));
        plan.mulch().notRead().forEach(mark -> out.hanging("  * ", 4, plan.mulch().name() + " " + mark));
        next.ifPresent(words -> out.hanging("  Next ", 7, words));
        out.section("  How it was reckoned", plan.lines());
        out.line();
    }

    private String loads() {
        if (plan.bales().isPresent()) {
            return "%s of %s".formatted(Words.count(plan.wholeBales().orElseThrow(), "bale", "bales"),
                    plan.mulch().bale().orElseThrow().kg().inWords());
        }
        return "%s or %s".formatted(loads(tables.figure("barrow"), "barrow", "barrows"),
                loads(tables.figure("bag"), "bag", "bags"));
    }

    private String loads(Figure litres, String one, String several) {
        return Words.count(plan.wholeLoads(litres.is()), one, several) + " of " + litres.inWords();
    }

    @Override
    public List<Cautions.Job> jobs() {
        if (plan.cubicMetres() <= 0) { return List.of(); }
        List<String> named = new ArrayList<>(plan.mulch().cautions());
        underlay.ifPresent(under -> named.addAll(under.cautions()));
        return List.of(Cautions.Job.of("mulch", plan.mulch().tags(), named));
    }

    private record Answer(Optional<String> bed, String title, String material, String name, double coveredM2,
            double depthNowCm, double depthWantedCm, double layCm, double litres, double kg, double barrows,
            double bags, Optional<Double> bales, Optional<String> under, Optional<Long> sheets, Optional<String> next,
            List<String> facts, List<String> arithmetic, List<String> notes, List<String> notRead,
            List<String> cautions, List<String> sources) {}

    @Override
    public Record answer(List<String> cautions) {
        return new Answer(bed, title, plan.mulch().id(), plan.mulch().name(), Words.rounded(plan.coveredM2(), 2),
                Words.rounded(plan.depthNowCm(), 2), Words.rounded(plan.depthWantedCm(), 2),
                Words.rounded(plan.layCm(), 2), Words.rounded(plan.litres(), 2), Words.rounded(plan.kg(), 2),
                Words.rounded(plan.loads(tables.figure("barrow").is()), 2),
                Words.rounded(plan.loads(tables.figure("bag").is()), 2), plan.bales().map(it -> Words.rounded(it, 2)),
                underlay.map(Underlay::id), underlay.map(plan::sheets), next, facts, plan.lines(), notes,
                plan.mulch().notRead(), cautions, plan.mulch().depth().sources());
    }
}
