package org.oldwood.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Which of the materials at hand meet what is due, and how much of each. Of all ways to meet one,
 * two or three nutrients exactly with as many materials, the one is taken that leaves the least
 * undone and overdone in all; nitrogen is never overdone, and being short of it counts double.
 * Fewer materials win a tie, then the order in which they are kept. A way that would pass the limit
 * of a material takes the limit of it and solves the rest with the others.
 *
 * @param parts the materials and their amounts
 * @param gives what they give in the first year, in the unit of {@code due}
 * @param balance what was due against what they give
 */
public record Recipe(List<Part> parts, Nutrients gives, Balance balance) {
    private static final double HAIR = 1e-9;
    private static final int MOST_MATERIALS = 3;

    /** An amount of a material, in the unit of what was due: g/m² or g. */
    public record Part(Feed feed, double amount) {}

    private static Recipe of(List<Part> parts, Nutrients due) {
        Nutrients gives = Nutrients.NONE;
        for (Part part : parts) {
            gives = gives.plus(part.feed.gives(part.amount));
        }
        return new Recipe(List.copyOf(parts), gives, Balance.of(due, gives));
    }

    /**
     * The best recipe; without parts where none of the materials helps.
     *
     * @param due what to meet
     * @param kept the materials at hand, the favourite first
     * @param most the most of a material, in the unit of {@code due}; infinite where nothing limits
     *     it
     */
    public static Recipe best(Nutrients due, List<Feed> kept, ToDoubleFunction<Feed> most) {
        Recipe best = of(List.of(), due);
        for (List<Feed> feeds : subsets(kept, MOST_MATERIALS)) {
            for (List<Nutrient> exactly : subsets(wanted(due), feeds.size())) {
                if (exactly.size() == feeds.size()) {
                    best = better(best, candidate(due, feeds, exactly, most));
                }
            }
        }
        for (Feed feed : kept) {
            best = better(best, atLimit(due, kept, feed, most));
        }
        return best;
    }

    private static Recipe better(Recipe best, Optional<Recipe> other) {
        return other.isPresent() && other.get().penalty() < best.penalty() - HAIR
                ? other.get()
                : best;
    }

    private static Optional<Recipe> candidate(
            Nutrients due, List<Feed> feeds, List<Nutrient> exactly, ToDoubleFunction<Feed> most) {
        Optional<double[]> solved = Mix.exact(feeds, exactly, due);
        if (solved.isEmpty()) {
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < feeds.size(); i++) {
            double amount = Math.max(0, solved.get()[i]);
            if (amount > most.applyAsDouble(feeds.get(i)) + HAIR) {
                return Optional.empty();
            }
            if (amount > HAIR) {
                parts.add(new Part(feeds.get(i), amount));
            }
        }
        Recipe recipe = of(parts, due);
        return recipe.balance.surplus().n() > HAIR ? Optional.empty() : Optional.of(recipe);
    }

    /** The limit of one material, and the best of the others for the rest. */
    private static Optional<Recipe> atLimit(
            Nutrients due, List<Feed> kept, Feed feed, ToDoubleFunction<Feed> most) {
        double limit = most.applyAsDouble(feed);
        if (Double.isInfinite(limit) || limit <= HAIR) {
            return Optional.empty();
        }
        Nutrients left = due.minus(feed.gives(limit));
        if (left.n() < -HAIR) {
            return Optional.empty();
        }
        List<Feed> others = kept.stream().filter(each -> !each.equals(feed)).toList();
        List<Part> parts = new ArrayList<>(best(left.atLeastZero(), others, most).parts);
        parts.add(0, new Part(feed, limit));
        return Optional.of(of(parts, due));
    }

    private double penalty() {
        return balance.due().sum() + balance.due().n() + balance.surplus().sum();
    }

    private static List<Nutrient> wanted(Nutrients due) {
        List<Nutrient> wanted = new ArrayList<>();
        for (Nutrient nutrient : Nutrient.values()) {
            if (due.of(nutrient) > HAIR) {
                wanted.add(nutrient);
            }
        }
        return wanted;
    }

    /** All choices of at least one and at most {@code most} of {@code all}, smaller ones first. */
    private static <T> List<List<T>> subsets(List<T> all, int most) {
        List<List<T>> found = new ArrayList<>();
        List<List<T>> last = List.of(List.of());
        for (int size = 1; size <= Math.min(most, all.size()); size++) {
            List<List<T>> next = new ArrayList<>();
            for (List<T> each : last) {
                int from = each.isEmpty() ? 0 : all.indexOf(each.get(each.size() - 1)) + 1;
                for (T item : all.subList(from, all.size())) {
                    List<T> longer = new ArrayList<>(each);
                    longer.add(item);
                    next.add(longer);
                }
            }
            found.addAll(next);
            last = next;
        }
        return found;
    }
}
