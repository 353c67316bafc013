package org.oldwood.cli.feeding;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.craft.feeding.Recipe;
import org.oldwood.plan.Cautions;
import org.oldwood.report.LedgerJson;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/**
 * What the food of one piece of ground comes to, for people and as JSON.
 *
 * @param budget need, what counts, and the dressings still to give
 * @param when when its dressings are given, where that is not the usual time
 * @param arithmetic how the need was reckoned, a line for each step
 * @param assumed what was taken for want of knowing
 * @param others what other published schools ask for, a line each
 * @param next when the plan has it, in a garden
 */
record FeedSheet(String title, Of of, Budget budget, Optional<String> when, List<String> arithmetic,
        List<String> assumed, List<String> others, Optional<String> next) implements GroundSheet {
    /** Less than this is not worth telling, g/m². */
    private static final double LITTLE = 0.5;

    @Override
    public void print(Out out) {
        out.hanging("", 2, title + ": " + ground());
        Need need = budget.need();
        out.hanging("  Need   ", 9, FeedPlan.inWords(need.gPerM2()) + " g/m² a year, by " + need.school());
        print(out, "  Left   ", budget.counting().left());
        print(out, "  Mulch  ", budget.counting().mulch());
        print(out, "  Given  ", budget.counting().given());
        out.hanging("  Due    ", 9, FeedPlan.perM2(budget.due()));
        budget.dressings().forEach(dressing -> print(out, dressing));
        budget.missing().forEach(line -> out.hanging("         ", 11, line));
        budget.notes().forEach(line -> out.hanging("         ", 11, line));
        print(out, "  Beyond ", Nutrients.each(each -> told(budget.beyond().of(each))));
        next.ifPresent(words -> out.hanging("  Next   ", 9, words));
        out.section("  How it was reckoned", arithmetic());
        out.section("  Other schools ask for", others);
        out.section("  Not known, so assumed", notKnown());
        out.line();
    }

    /** A step of the scales is no surplus. */
    private static double told(double beyond) {
        return beyond < LITTLE ? 0 : beyond;
    }

    private static void print(Out out, String what, Nutrients nutrients) {
        if (!FeedPlan.isNothing(nutrients)) { out.hanging(what, 9, FeedPlan.inWords(nutrients) + " g/m²"); }
    }

    /** What was assumed, and the nutrients of which the school tells no need. */
    private List<String> notKnown() {
        List<String> lines = new ArrayList<>(assumed);
        List<String> untold = budget.need().untold();
        if (!untold.isEmpty()) {
            lines.add("%s tells no need of %s; none is reckoned.".formatted(budget.need().school(),
                    String.join(", ", untold)));
        }
        return lines;
    }

    private void print(Out out, FeedPlan plan) {
        out.hanging("  Give   ", 9, when.orElse(plan.when()) + ": " + plan.words());
        plan.measures().forEach(line -> out.hanging("         ", 11, line));
        for (Recipe.Part part : plan.parts()) {
            part.feed().notRead().forEach(mark -> out.hanging("         * ", 11, part.feed().name() + ": " + mark));
        }
    }

    private String ground() {
        List<String> parts = new ArrayList<>();
        parts.add(Words.amount(budget.ground().areaM2()) + " m²");
        if (budget.ground().bushes() > 0) { parts.add(Words.count(budget.ground().bushes(), "bush", "bushes")); }
        if (budget.ground().rowM() > 0) { parts.add(Words.amount(budget.ground().rowM()) + " m of row"); }
        return String.join(", ", parts);
    }

    /** The arithmetic of need and dressings. */
    @Override
    public List<String> arithmetic() {
        List<String> lines = new ArrayList<>(arithmetic);
        lines.addAll(budget.lines());
        budget.dressings().forEach(dressing -> latest(dressing).ifPresent(lines::add));
        return lines;
    }

    private Optional<String> latest(FeedPlan plan) {
        return budget.latest(plan).map(day -> "%s: its nitrogen no later than %s (%s in the south)"
                .formatted(when.orElse(plan.when()), words(day.atYear(2000)), words(day.atYear(2000).plusMonths(6))));
    }

    private static String words(LocalDate day) { return day.getDayOfMonth() + " " + Dates.monthName(day); }

    @Override
    public List<Cautions.Job> jobs() {
        return budget.dressings().stream().map(plan -> Cautions.Job.of("feed", plan.tags(), plan.cautions())).toList();
    }

    /** What a sheet is of; {@code crop} alone without a garden. */
    record Of(Optional<String> stand, String crop, Optional<String> bed, Optional<String> season) {}

    private record Answer(String title, @JsonUnwrapped Of of, double areaM2, int bushes, double rowM, String school,
            Map<String, Double> need, Map<String, Double> left, Map<String, Double> mulch, Map<String, Double> given,
            Map<String, Double> due, Map<String, Double> undone, Map<String, Double> surplus, List<Dressing> dressings,
            List<String> missing, List<String> notes, Optional<String> next, List<String> arithmetic,
            List<String> others, List<String> assumed, List<String> cautions, List<String> sources) {}

    private record Dressing(String when, List<Material> materials, Map<String, Double> gives, List<String> measures) {}

    private record Material(String material, String name, double grams, List<String> notRead) {
        static Material of(Recipe.Part part) {
            return new Material(part.feed().id(), part.feed().name(), Words.rounded(part.amount(), 2),
                    part.feed().notRead());
        }
    }

    @Override
    public Record answer(List<String> cautions) {
        return new Answer(title, of, Words.rounded(budget.ground().areaM2(), 2), budget.ground().bushes(),
                Words.rounded(budget.ground().rowM(), 2), budget.need().school(),
                LedgerJson.nutrients(budget.need().gPerM2()), LedgerJson.nutrients(budget.counting().left()),
                LedgerJson.nutrients(budget.counting().mulch()), LedgerJson.nutrients(budget.counting().given()),
                LedgerJson.nutrients(budget.due()), LedgerJson.nutrients(budget.undone()),
                LedgerJson.nutrients(budget.beyond()), budget.dressings().stream().map(this::dressing).toList(),
                budget.missing(), budget.notes(), next, arithmetic(), others, notKnown(), cautions,
                budget.need().sources());
    }

    private Dressing dressing(FeedPlan plan) {
        return new Dressing(when.orElse(plan.when()), plan.parts().stream().map(Material::of).toList(),
                LedgerJson.nutrients(plan.gives()), plan.measures());
    }
}
