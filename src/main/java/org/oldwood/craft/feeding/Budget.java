package org.oldwood.craft.feeding;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The food of one piece of ground in one season: what it needs, what counts already, and the dressings that bring the
 * rest. One recipe serves the year; its dressings are parts of it. For every nutrient need and beyond together are what
 * counts, what the dressings bring and what stays undone.
 *
 * @param need the need of the season by one school
 * @param choice the materials that it may get
 * @param ground how much ground and how many plants
 * @param timing when the year's food is given
 * @param dressings what is still to give, in order
 * @param missing what stays undone and why, a line each; for a shopping list
 * @param notes what else to know of the year's amounts
 */
public record Budget(Need need, Counting counting, Choice choice, NeedCase.Ground ground, Timing timing,
        List<FeedPlan> dressings, List<String> missing, List<String> notes) {

    /**
     * What counts towards a season's need, g/m².
     *
     * @param left what earlier seasons left
     * @param mulch what the mulch that is still to be laid will bring
     * @param materials how much of which material was given in the season, g/m²
     */
    public record Counting(Nutrients left, Nutrients mulch, Nutrients given, Map<String, Double> materials) {
        public static final Counting NOTHING = of(Nutrients.NONE, Nutrients.NONE);

        static Counting of(Nutrients left, Nutrients given) {
            return new Counting(left, Nutrients.NONE, given, Map.of());
        }

        /** With a dressing that is given first. */
        private Counting and(FeedPlan dressing) {
            Map<String, Double> all = new HashMap<>(materials);
            dressing.parts().forEach(
                    part -> all.merge(part.feed().id(), part.amount() / dressing.ground().areaM2(), Double::sum));
            return new Counting(left, mulch, given.plus(dressing.gives()), all);
        }

        public Nutrients all() { return left.plus(mulch).plus(given); }
    }

    /**
     * The budget.
     *
     * @param texture the soil: on light sand and on peat dressings are smaller
     * @param from the first dressing that is still to come, 0 for the year's first
     */
    public static Budget of(FeedingTables tables, Need need, Counting counting, Timing timing, Optional<String> texture,
            int from, Choice choice, NeedCase.Ground ground) {
        FeedLimits limits = new FeedLimits(tables, need, counting.materials());
        Nutrients due = need.gPerM2().minus(counting.all()).atLeastZero();
        Recipe recipe = recipe(tables, limits, due, choice.allowed());
        if (from > 0) { recipe = quicker(tables, limits, due, choice.allowed(), recipe); }
        Dressings split = Dressings.of(tables, timing, texture, recipe);
        List<FeedPlan> dressings = split.of(need.gPerM2().n(), counting.all().n(), from, ground);
        if (from == 0 && dressings.size() > 1) {
            FeedPlan first = dressings.get(0);
            List<FeedPlan> rest = of(tables, need, counting.and(first), timing, texture, 1, choice, ground).dressings;
            if (!materials(rest).equals(materials(dressings.subList(1, 2)))) {
                dressings = Stream.concat(Stream.of(first), rest.stream()).toList();
            }
        }
        Budget year = new Budget(need, counting, choice, ground, timing, dressings, List.of(), List.of());
        List<String> notes = Stream.concat(limits.notes(year).stream(), choice.refused().stream()).toList();
        return new Budget(need, counting, choice, ground, timing, dressings, limits.missing(year, recipe, split.most()),
                notes);
    }

    private static Recipe recipe(FeedingTables tables, FeedLimits limits, Nutrients due, List<Feed> kept) {
        FeedingTables.Limits all = tables.limits();
        return tables.recipes().best(limits.worthGiving(due), kept, limits::left, all.nitrogenWeight().is(),
                all.smallest().p2o5());
    }

    private static Set<Feed> materials(List<FeedPlan> dressings) {
        return dressings.stream().flatMap(dressing -> dressing.parts().stream()).map(Recipe.Part::feed)
                .collect(Collectors.toSet());
    }

    /**
     * After the first dressing slow nitrogen comes too late for the wood to ripen: quick feeds bring it, if kept. Raw
     * manure comes too late before picking.
     */
    private static Recipe quicker(FeedingTables tables, FeedLimits limits, Nutrients due, List<Feed> kept,
            Recipe recipe) {
        boolean quickKept = kept.stream().anyMatch(feed -> feed.givesNitrogen() && !feed.slow());
        Set<Feed> late = recipe.parts().stream().filter(part -> part.isLate(tables.limits().smallest().n()))
                .map(Recipe.Part::feed).filter(feed -> quickKept || feed.is("manure")).collect(Collectors.toSet());
        if (late.isEmpty()) { return recipe; }
        List<Feed> others = kept.stream().filter(feed -> !late.contains(feed)).toList();
        return quicker(tables, limits, due, others, recipe(tables, limits, due, others));
    }

    /** What is due of each nutrient, g/m². */
    public Nutrients due() {
        return need.gPerM2().minus(counting.all()).atLeastZero();
    }

    /** What the dressings bring in all, g/m². */
    public Nutrients dressed() {
        return dressings.stream().map(FeedPlan::gives).reduce(Nutrients.NONE, Nutrients::plus);
    }

    /** What stays undone, g/m². */
    public Nutrients undone() { return due().minus(dressed()).atLeastZero(); }

    /** What there is beyond the need once the dressings are given, g/m². */
    public Nutrients beyond() {
        return counting.all().plus(dressed()).minus(need.gPerM2()).atLeastZero();
    }

    /** What of that the dressings bring. */
    Nutrients comesWithIt() { return dressed().minus(due()).atLeastZero(); }

    /** The next dressing; empty where nothing is to be given. */
    public Optional<FeedPlan> next() {
        return dressings.stream().findFirst();
    }

    /**
     * The last northern day for a dressing, by the slowest nitrogen in it that is worth a weighing; empty for one
     * without nitrogen, whose time does not matter.
     */
    public Optional<MonthDay> latest(FeedPlan dressing) {
        return dressing.parts().stream().noneMatch(part -> part.feed().givesNitrogen()) ? Optional.empty()
                : Optional.of(dressing.slow() ? timing.latestSlow() : timing.latestQuick());
    }

    /** The sum in one line: {@code needs N 14; left N 0.6; given N 7; to give N 6.3, K2O 12; undone P2O5 4 g/m²}. */
    public String inWords() {
        List<String> parts = new ArrayList<>(List.of("needs " + FeedPlan.inWords(need.gPerM2())));
        Map<String, Nutrients> all = new LinkedHashMap<>();
        all.put("left", counting.left());
        all.put("mulch to come", counting.mulch());
        all.put("given", counting.given());
        all.put("to give", dressed());
        all.put("undone", undone());
        all.put("beyond the need", beyond());
        all.forEach((what, nutrients) -> {
            if (!FeedPlan.isNothing(nutrients)) { parts.add(what + " " + FeedPlan.inWords(nutrients)); }
        });
        return String.join("; ", parts) + " g/m²";
    }

    /** How the sum closes, a line for each step. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        line(lines, "left by earlier seasons", counting.left());
        line(lines, "the mulch that is to be laid this season brings", counting.mulch());
        line(lines, "given this season", counting.given());
        lines.add("due: " + FeedPlan.perM2(due()));
        dressings.forEach(dressing -> lines.addAll(dressing.lines()));
        line(lines, "more than needed", beyond());
        return lines;
    }

    private static void line(List<String> lines, String what, Nutrients nutrients) {
        if (!FeedPlan.isNothing(nutrients)) { lines.add("%s: %s g/m²".formatted(what, FeedPlan.inWords(nutrients))); }
    }
}
