package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Tries all ways of {@link Recipe#best} to meet what is due. There are hundreds for one dressing, so it reckons in
 * plain numbers and makes a recipe of the best way only.
 */
final class RecipeSearch {
    private static final double HAIR = 1e-9;
    private static final int MOST_MATERIALS = 3;
    private static final Nutrient[] NUTRIENTS = Nutrient.values();

    private final Nutrients due;
    private final List<Feed> kept;
    private final ToDoubleFunction<Feed> limit;
    private final double[] most;
    private final double[] wanted;
    private final int[] wantedOnes;
    private final double[][] percent;
    private final double[][] shares;
    private final double[][] ofOneGram;

    private int[] bestFeeds = new int[0];
    private double[] bestAmounts = new double[0];
    private double bestPenalty;

    RecipeSearch(Nutrients due, List<Feed> kept, ToDoubleFunction<Feed> limit) {
        this.due = due;
        this.kept = kept;
        this.limit = limit;
        this.most = new double[kept.size()];
        this.wanted = plain(due);
        this.wantedOnes = above(wanted);
        this.percent = new double[kept.size()][];
        this.shares = new double[kept.size()][];
        this.ofOneGram = new double[kept.size()][];
        for (int i = 0; i < most.length; i++) {
            most[i] = limit.applyAsDouble(kept.get(i));
            percent[i] = plain(kept.get(i).percent());
            shares[i] = plain(kept.get(i).shares());
            ofOneGram[i] = plain(kept.get(i).gives(1));
        }
        this.bestPenalty = penalty(new double[NUTRIENTS.length]);
    }

    private static double[] plain(Nutrients nutrients) {
        double[] plain = new double[NUTRIENTS.length];
        for (int i = 0; i < plain.length; i++) {
            plain[i] = nutrients.of(NUTRIENTS[i]);
        }
        return plain;
    }

    /** The places of the nutrients that are wanted at all. */
    private static int[] above(double[] wanted) {
        int[] places = new int[wanted.length];
        int found = 0;
        for (int i = 0; i < wanted.length; i++) {
            if (wanted[i] > HAIR) {
                places[found++] = i;
            }
        }
        return Arrays.copyOf(places, found);
    }

    Recipe best() {
        for (int size = 1; size <= Math.min(MOST_MATERIALS, kept.size()); size++) {
            List<int[]> nutrients = choices(wantedOnes, size);
            for (int[] feeds : choices(all(kept.size()), size)) {
                for (int[] exactly : nutrients) {
                    tryOut(feeds, exactly);
                }
            }
        }
        Recipe found = Recipe.of(parts(), due);
        for (int i = 0; i < most.length; i++) {
            Optional<Recipe> other = atLimit(i);
            if (other.isPresent() && other.get().penalty() < found.penalty() - HAIR) {
                found = other.get();
            }
        }
        return found;
    }

    /** So much of these materials that these nutrients are met exactly, if that is allowed. */
    private void tryOut(int[] feeds, int[] exactly) {
        double[][] rows = new double[feeds.length][feeds.length + 1];
        for (int row = 0; row < feeds.length; row++) {
            for (int column = 0; column < feeds.length; column++) {
                rows[row][column] = ofOneGram[feeds[column]][exactly[row]];
            }
            rows[row][feeds.length] = wanted[exactly[row]];
        }
        double[] amounts = new double[feeds.length];
        if (!Mix.solve(rows, amounts)) {
            return;
        }
        double[] gives = new double[NUTRIENTS.length];
        for (int i = 0; i < feeds.length; i++) {
            amounts[i] = Math.max(0, amounts[i]);
            if (amounts[i] > most[feeds[i]] + HAIR) {
                return;
            }
            add(feeds[i], amounts[i], gives);
        }
        double penalty = penalty(gives);
        if (gives[0] - wanted[0] <= HAIR && penalty < bestPenalty - HAIR) {
            bestFeeds = feeds;
            bestAmounts = amounts;
            bestPenalty = penalty;
        }
    }

    /** Adds what an amount gives, in the steps of {@link Feed#gives}. */
    private void add(int feed, double amount, double[] gives) {
        if (amount > HAIR) {
            double part = amount / Feed.WHOLE;
            for (int i = 0; i < gives.length; i++) {
                gives[i] += percent[feed][i] * part * shares[feed][i];
            }
        }
    }

    /** What is left undone, nitrogen twice, and what is overdone: {@link Recipe#penalty}. */
    private double penalty(double[] gives) {
        double undone = 0;
        double overdone = 0;
        for (int i = 0; i < gives.length; i++) {
            undone += Math.max(0, wanted[i] - gives[i]);
            overdone += Math.max(0, gives[i] - wanted[i]);
        }
        return undone + Math.max(0, wanted[0] - gives[0]) + overdone;
    }

    private List<Recipe.Part> parts() {
        List<Recipe.Part> parts = new ArrayList<>();
        for (int i = 0; i < bestFeeds.length; i++) {
            if (bestAmounts[i] > HAIR) {
                parts.add(new Recipe.Part(kept.get(bestFeeds[i]), bestAmounts[i]));
            }
        }
        return parts;
    }

    /** The limit of one material, and the best of the others for the rest. */
    private Optional<Recipe> atLimit(int at) {
        if (Double.isInfinite(most[at]) || most[at] <= HAIR) {
            return Optional.empty();
        }
        Feed feed = kept.get(at);
        Nutrients left = due.minus(feed.gives(most[at]));
        if (left.n() < -HAIR) {
            return Optional.empty();
        }
        List<Feed> others = kept.stream().filter(each -> !each.equals(feed)).toList();
        List<Recipe.Part> parts =
                new ArrayList<>(Recipe.best(left.atLeastZero(), others, limit).parts());
        parts.add(0, new Recipe.Part(feed, most[at]));
        return Optional.of(Recipe.of(parts, due));
    }

    private static int[] all(int number) {
        int[] places = new int[number];
        for (int i = 0; i < number; i++) {
            places[i] = i;
        }
        return places;
    }

    /** All choices of {@code size} of them, in their order. */
    private static List<int[]> choices(int[] of, int size) {
        List<int[]> found = new ArrayList<>();
        choose(of, 0, new int[size], 0, found);
        return found;
    }

    private static void choose(int[] of, int from, int[] chosen, int number, List<int[]> found) {
        if (number == chosen.length) {
            found.add(chosen.clone());
            return;
        }
        for (int i = from; i < of.length; i++) {
            chosen[number] = of[i];
            choose(of, i + 1, chosen, number + 1, found);
        }
    }
}
