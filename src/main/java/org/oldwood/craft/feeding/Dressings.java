package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a year's recipe into its dressings. Nitrogen goes by the shares of the timing: after the first dressing its
 * share should have been given, after the last all of it, no single one passes its ceiling, and what the ceiling cuts
 * off goes with the next. What brings little or no nitrogen goes with the first, for the time of phosphate, potash and
 * magnesia does not matter on plants that stand (RB209 section 7). Slow feeds go in one, since they last the season and
 * do not burn.
 */
final class Dressings {
    private static final double HAIR = 1e-9;

    private final FeedingTables tables;
    private final Recipe recipe;
    private final List<Timing.Dressing> times;
    private final double most;

    Dressings(FeedingTables tables, Timing timing, boolean sand, Recipe recipe) {
        this.tables = tables;
        this.recipe = recipe;
        boolean slow = slow(recipe);
        this.times = slow ? List.of(new Timing.Dressing("first", "in one dressing", 1)) : timing.on(sand);
        this.most = slow
                ? Double.POSITIVE_INFINITY
                : tables.limits().dressingMostN().is();
    }

    private static boolean slow(Recipe recipe) {
        List<Feed> withN = recipe.parts().stream()
                .map(Recipe.Part::feed)
                .filter(Feed::givesNitrogen)
                .toList();
        return !withN.isEmpty() && withN.stream().allMatch(feed -> feed.is("slow"));
    }

    /** The dressings from number {@code from} on; without those that would bring nothing. */
    List<FeedPlan> of(double needN, double givenN, int from, NeedCase.Ground ground) {
        List<Double> nitrogen = nitrogen(recipe.gives().n(), needN, givenN, from);
        double all = nitrogen.stream().mapToDouble(Double::doubleValue).sum();
        List<FeedPlan> dressings = new ArrayList<>();
        for (int i = 0; i < nitrogen.size(); i++) {
            List<Recipe.Part> parts = new ArrayList<>();
            for (Recipe.Part part : recipe.parts()) {
                double share = goesWithFirst(part, nitrogen, all)
                        ? (i == 0 ? 1 : 0)
                        : nitrogen.get(i) / recipe.gives().n();
                parts.add(new Recipe.Part(part.feed(), part.amount() * share));
            }
            FeedPlan plan = FeedPlan.of(from + i, when(from + i), parts, smallest(), ground);
            if (!plan.parts().isEmpty()) {
                dressings.add(plan);
            }
        }
        return dressings;
    }

    private String when(int which) {
        return which < times.size() ? times.get(which).words() : "the rest, some weeks later";
    }

    /** Too little nitrogen for another weighing. */
    private boolean goesWithFirst(Recipe.Part part, List<Double> nitrogen, double all) {
        double n = part.feed().gives(part.amount()).n();
        return all <= HAIR || n * (1 - nitrogen.get(0) / all) < smallest();
    }

    private double smallest() {
        return tables.limits().smallest().n();
    }

    /** Nitrogen of each dressing still to come, the first of them even where it brings none, g/m². */
    private List<Double> nitrogen(double brings, double needN, double givenN, int from) {
        List<Double> all = new ArrayList<>();
        double given = givenN;
        double left = brings;
        for (int which = from; which <= Math.max(times.size(), from + 1); which++) {
            double n = Math.max(0, Math.min(Math.min(most, left), needN * shareUntil(which) - given));
            given += n;
            left -= n;
            all.add(n);
        }
        for (int i = all.size() - 1; i > 0; i--) {
            if (all.get(i) < smallest()) {
                double joined = all.remove(i) + all.get(i - 1);
                all.set(i - 1, Math.min(most, joined));
            }
        }
        return all;
    }

    private double shareUntil(int which) {
        return which >= times.size() - 1
                ? 1
                : times.subList(0, which + 1).stream()
                        .mapToDouble(Timing.Dressing::share)
                        .sum();
    }
}
