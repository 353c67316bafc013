package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.oldwood.crop.Figure;

/**
 * Splits a year's recipe into its dressings. Nitrogen goes by the shares of the timing: after the first dressing its
 * share should have been given, after the last all of it, no single one passes its ceiling, and what the ceiling cuts
 * off goes with the next. What brings little or no nitrogen goes with the first, for the time of phosphate, potash and
 * magnesia does not matter on plants that stand (RB209 section 7). Slow feeds go in one, since they last the season and
 * do not burn.
 *
 * @param most the most nitrogen of one dressing, g/m²
 */
record Dressings(FeedingTables tables, Recipe recipe, List<Timing.Dressing> times, double most) {

    static Dressings of(FeedingTables tables, Timing timing, Optional<String> texture, Recipe recipe) {
        if (allNitrogen(recipe, feed -> feed.is("slow") || feed.is("manure"))
                || (timing.dressings().size() == 1 && allNitrogen(recipe, Feed::slow))) {
            List<Timing.Dressing> once = List.of(new Timing.Dressing("first", "in one dressing", 1));
            return new Dressings(tables, recipe, once, Double.POSITIVE_INFINITY);
        }
        FeedingTables.Limits limits = tables.limits();
        Figure most = tables.soils().organic(texture) ? limits.dressingMostNOnPeat() : limits.dressingMostN();
        return new Dressings(tables, recipe, timing.on(tables.soils().lightSand(texture)), most.is());
    }

    private static boolean allNitrogen(Recipe recipe, Predicate<Feed> is) {
        List<Feed> withN = recipe.parts().stream().map(Recipe.Part::feed).filter(Feed::givesNitrogen).toList();
        return !withN.isEmpty() && withN.stream().allMatch(is);
    }

    /** The dressings from number {@code from} on; without those that would bring nothing. */
    List<FeedPlan> of(double needN, double givenN, int from, NeedCase.Ground ground) {
        List<Double> nitrogen = nitrogen(recipe.gives().n(), needN, givenN, from);
        double all = nitrogen.stream().mapToDouble(Double::doubleValue).sum();
        List<FeedPlan> dressings = new ArrayList<>();
        for (int i = 0; i < nitrogen.size(); i++) {
            int which = i;
            List<Recipe.Part> parts = recipe.parts().stream()
                    .map(part -> new Recipe.Part(part.feed(), part.amount() * share(part, nitrogen, which, all)))
                    .toList();
            FeedPlan plan = FeedPlan.of(from + i, when(from + i), parts, smallest(), ground);
            if (!plan.parts().isEmpty()) { dressings.add(plan); }
        }
        return dressings;
    }

    private String when(int which) {
        return which < times.size() ? times.get(which).words() : "the rest, some weeks later";
    }

    /**
     * The share of a material that a dressing takes; one with too little nitrogen for two weighings is weighed once.
     */
    private double share(Recipe.Part part, List<Double> nitrogen, int dressing, double all) {
        if (!isSplit(part)) { return dressing == 0 ? 1 : 0; }
        double split = recipe.parts().stream().filter(this::isSplit)
                .mapToDouble(each -> each.feed().gives(each.amount()).n()).sum();
        double whole = recipe.gives().n() - split;
        double first = Math.max(0, nitrogen.get(0) - whole);
        double later = Math.max(0, all - whole) - first;
        if (later < smallest()) { return dressing == 0 ? (first + later) / split : 0; }
        return (dressing == 0 ? first : later * nitrogen.get(dressing) / (all - nitrogen.get(0))) / split;
    }

    private boolean isSplit(Recipe.Part part) { return part.feed().gives(part.amount()).n() >= smallest(); }

    private double smallest() { return tables.limits().smallest().n(); }

    /** Nitrogen of each dressing still to come, the first of them even where it brings none, g/m². */
    private List<Double> nitrogen(double brings, double needN, double givenN, int from) {
        List<Double> all = new ArrayList<>();
        double left = brings;
        for (int which = from; which <= Math.max(times.size() - 1, 1); which++) {
            double given = givenN + brings - left;
            double n = Math.max(0, Math.min(Math.min(most, left), needN * shareUntil(which) - given));
            left -= n;
            all.add(n);
        }
        for (int i = all.size() - 1; i > 0; i--) {
            if (all.get(i) < smallest()) {
                double joined = all.remove(i) + all.get(i - 1);
                all.set(i - 1, Math.min(most, joined));
            }
        }
        if (all.size() > 1 && all.get(0) < smallest()) { all.set(1, Math.min(most, all.set(0, 0.0) + all.get(1))); }
        return all;
    }

    private double shareUntil(int which) {
        return which >= times.size() - 1 ? 1
                : times.subList(0, which + 1).stream().mapToDouble(Timing.Dressing::share).sum();
    }
}
