package org.oldwood.craft.feeding;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Which of the materials at hand meet what is due, and how much of each. Of all ways to meet one, two or three
 * nutrients exactly with as many materials, the one is taken that leaves the least undone and overdone in all; nitrogen
 * is never overdone, and being short of it counts double. Fewer materials win a tie, then the order in which they are
 * kept. A way that would pass the limit of a material takes the limit of it and solves the rest with the others.
 *
 * @param parts the materials and their amounts
 * @param gives what they give in the first year, in the unit of {@code due}
 * @param balance what was due against what they give
 */
public record Recipe(List<Part> parts, Nutrients gives, Balance balance) {
    /** An amount of a material, in the unit of what was due: g/m² or g. */
    public record Part(Feed feed, double amount) {}

    static Recipe of(List<Part> parts, Nutrients due) {
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
     * @param most the most of a material, in the unit of {@code due}; infinite where nothing limits it
     */
    public static Recipe best(Nutrients due, List<Feed> kept, ToDoubleFunction<Feed> most) {
        return new RecipeSearch(due, kept, most).best();
    }

    /** What is left undone, nitrogen twice, and what is overdone. */
    double penalty() {
        return balance.due().sum() + balance.due().n() + balance.surplus().sum();
    }
}
