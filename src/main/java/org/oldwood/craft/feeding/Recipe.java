package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Which of the materials at hand meet what is due, and how much of each. Of all ways to meet one, two or three
 * nutrients exactly with as many materials, or to take the most of one and to meet the rest with the others, the one is
 * taken that leaves the least undone and overdone in all; nitrogen is never overdone, and being short of it weighs
 * more. Fewer materials win a tie, then the order in which they are kept. A fourth material is weighed only where the
 * others leave more than a dressing undone or overdone.
 *
 * @param parts the materials and their amounts
 * @param gives what they give in the first year, in the unit of what was due
 */
public record Recipe(List<Part> parts, Nutrients gives) {
    private static final double HAIR = 1e-9;
    private static final int MOST_MATERIALS = 4;
    private static final int FEW = 3;

    /** An amount of a material, in the unit of what was due: g/m² or g. */
    public record Part(Feed feed, double amount) {
        /** Slow nitrogen worth a weighing; what a phosphate like bone meal brings beside is not. */
        boolean slowly(double smallest) {
            return feed.slow() && feed.gives(amount).n() >= smallest;
        }

        /** Whether it has no place in a second dressing. */
        boolean isLate(double smallest) {
            return feed.is("manure") || slowly(smallest);
        }
    }

    double amount(Feed feed) {
        return parts.stream().filter(part -> part.feed.equals(feed)).mapToDouble(Part::amount).sum();
    }

    /** A material at hand, what a gram of it gives, and the most of it. */
    private record Kept(Feed feed, Nutrients ofOne, double most) {}

    static Recipe of(List<Part> parts) {
        return new Recipe(List.copyOf(parts),
                parts.stream().map(part -> part.feed.gives(part.amount)).reduce(Nutrients.NONE, Nutrients::plus));
    }

    /**
     * The best recipe; without parts where none of the materials helps.
     *
     * @param kept the materials at hand, the favourite first
     * @param most the most of a material, in the unit of {@code due}; infinite where nothing limits it
     * @param weight what being short of a gram of nitrogen weighs
     * @param fourth what a fourth material must save, undone and overdone together
     */
    static Recipe best(Nutrients due, List<Feed> kept, ToDoubleFunction<Feed> most, double weight, double fourth) {
        return new Search(due, weight, fourth)
                .best(kept.stream().distinct().map(feed -> new Kept(feed, feed.gives(1), most.applyAsDouble(feed)))
                        .filter(each -> each.ofOne.sum() > 0 && each.most > HAIR).toList());
    }

    /**
     * Speed: each bed is asked for again in every season and state that the plan weighs, and six in seven ask for a
     * recipe that is known; without this the search takes a third of the work of {@code tasks}.
     */
    static final class Found {
        private final Map<Asked, Recipe> known = new HashMap<>();

        private record Asked(Nutrients due, List<String> kept, List<Double> most) {}

        /** {@link Recipe#best}, for one weight and one saving by a fourth. */
        Recipe best(Nutrients due, List<Feed> kept, ToDoubleFunction<Feed> most, double weight, double fourth) {
            Asked asked = new Asked(due, kept.stream().map(Feed::id).toList(),
                    kept.stream().map(most::applyAsDouble).toList());
            return known.computeIfAbsent(asked, key -> Recipe.best(due, kept, most, weight, fourth));
        }
    }

    private static final class Search {
        private final Nutrients due;
        private final double weight;
        private final double fourth;
        private Recipe best = of(List.of());
        private double least;

        Search(Nutrients due, double weight, double fourth) {
            this.due = due;
            this.weight = weight;
            this.fourth = fourth;
            this.least = penalty(Nutrients.NONE);
        }

        Recipe best(List<Kept> kept) {
            List<Nutrient> wanted = new ArrayList<>(List.of(Nutrient.values()));
            wanted.removeIf(nutrient -> due.of(nutrient) <= HAIR);
            for (int size = 1; size <= (least > fourth ? MOST_MATERIALS : FEW); size++) {
                for (List<Kept> materials : choices(kept, size)) {
                    choices(wanted, size).forEach(exactly -> tryOut(materials, List.of(), exactly));
                    for (Kept full : materials) {
                        List<Kept> others = materials.stream().filter(each -> !each.equals(full)).toList();
                        choices(wanted, size - 1).forEach(exactly -> tryOut(others, List.of(full), exactly));
                    }
                }
            }
            return best;
        }

        /** So much of these materials, beside the most of another, that these nutrients are met, if that is allowed. */
        private void tryOut(List<Kept> materials, List<Kept> full, List<Nutrient> exactly) {
            List<Part> parts = new ArrayList<>();
            Nutrients gives = Nutrients.NONE;
            for (Kept each : full) {
                if (Double.isInfinite(each.most)) { return; }
                parts.add(new Part(each.feed, each.most));
                gives = gives.plus(each.ofOne.times(each.most));
            }
            double[] amounts = Mix.exact(materials.stream().map(Kept::ofOne).toList(), exactly, due.minus(gives))
                    .orElse(new double[0]);
            if (amounts.length < materials.size()) { return; }
            for (int i = 0; i < amounts.length; i++) {
                if (amounts[i] > materials.get(i).most + HAIR) { return; }
                if (amounts[i] > HAIR) {
                    parts.add(new Part(materials.get(i).feed, amounts[i]));
                    gives = gives.plus(materials.get(i).ofOne.times(amounts[i]));
                }
            }
            double penalty = penalty(gives) + (parts.size() > FEW ? fourth : 0);
            if (gives.n() <= due.n() + HAIR && penalty < least - HAIR) {
                best = new Recipe(List.copyOf(parts), gives);
                least = penalty;
            }
        }

        /** What is left undone, nitrogen by its weight, and what is overdone. */
        private double penalty(Nutrients gives) {
            Nutrients undone = due.minus(gives).atLeastZero();
            return undone.sum() + (weight - 1) * undone.n() + gives.minus(due).atLeastZero().sum();
        }
    }

    /** All choices of {@code size} of them, in their order. */
    private static <T> List<List<T>> choices(List<T> of, int size) {
        if (size == 0) { return List.of(List.of()); }
        List<List<T>> all = new ArrayList<>();
        for (int i = 0; i + size <= of.size(); i++) {
            for (List<T> rest : choices(of.subList(i + 1, of.size()), size - 1)) {
                List<T> chosen = new ArrayList<>(List.of(of.get(i)));
                chosen.addAll(rest);
                all.add(chosen);
            }
        }
        return all;
    }
}
