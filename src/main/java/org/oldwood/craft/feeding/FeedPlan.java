package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.words.Words;

/**
 * A dressing ready to weigh out: how many grams of which material for the whole ground, and what they bring.
 *
 * @param parts the materials with grams for the whole ground, rounded
 * @param due what was to be met, g/m²
 * @param gives what the rounded amounts give in the first year, g/m²
 * @param ground the ground
 * @param lines the arithmetic, a line for each material
 * @param lacks what no material at hand brings, in one line; empty where they bring all
 * @param notes what stays undone or overdone, and what was refused
 */
public record FeedPlan(
        List<Recipe.Part> parts,
        Nutrients due,
        Nutrients gives,
        NeedCase.Ground ground,
        List<String> lines,
        List<String> lacks,
        List<String> notes) {
    /** Less than this is not worth telling, g/m². */
    private static final double LITTLE = 0.5;

    /** A feed is no source of a nutrient that is less than this share of what it brings. */
    private static final double WORTH_NAMING = 0.1;

    /**
     * The plan.
     *
     * @param due what to meet, g/m²
     * @param needN the nitrogen need of the year, g/m²: manures may bring only a share of it
     * @param choice the materials
     */
    public static FeedPlan of(
            FeedingTables tables, Nutrients due, double needN, Choice choice, NeedCase.Ground ground) {
        double share = tables.limits().organicShareMost().is();
        Recipe recipe = Recipe.best(due, choice.allowed(), feed -> most(feed, needN * share));
        List<Recipe.Part> parts = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        Nutrients gives = Nutrients.NONE;
        for (Recipe.Part part : recipe.parts()) {
            double grams = Portion.rounded(part.amount() * ground.areaM2());
            if (grams >= 1) {
                parts.add(new Recipe.Part(part.feed(), grams));
                gives = gives.plus(Supply.inItsSeason(part.feed(), grams, ground.areaM2()));
                lines.add(line(part, grams, ground));
            }
        }
        Balance balance = Balance.of(due, gives);
        List<String> lacks = lacks(balance, choice);
        return new FeedPlan(
                List.copyOf(parts), due, gives, ground, List.copyOf(lines), lacks, notes(balance, choice, lacks));
    }

    private static double most(Feed feed, double bulkyN) {
        double yearly = feed.yearlyMost().isPresent() ? feed.yearlyMost().get().is() : Double.POSITIVE_INFINITY;
        if (!feed.bulky()) {
            return yearly;
        }
        double n = feed.gives(1).n();
        return n > 0 ? Math.min(yearly, bulkyN / n) : yearly;
    }

    private static String line(Recipe.Part part, double grams, NeedCase.Ground ground) {
        Nutrients gives = Supply.inItsSeason(part.feed(), grams, ground.areaM2());
        return part.feed().name()
                + ": "
                + Words.amount(part.amount())
                + " g/m² × "
                + Words.amount(ground.areaM2())
                + " m² = "
                + Words.weight(grams)
                + ", giving "
                + inWords(gives)
                + " g/m² this season";
    }

    private static List<String> notes(Balance balance, Choice choice, List<String> lacks) {
        List<String> notes = new ArrayList<>(lacks);
        for (Nutrient nutrient : Nutrient.values()) {
            if (balance.due().of(nutrient) > LITTLE && brought(nutrient, choice)) {
                notes.add(Words.amount(balance.due().of(nutrient))
                        + " g/m² "
                        + nutrient.symbol()
                        + " stay undone: more of these materials would overdo another.");
            }
            if (balance.surplus().of(nutrient) > LITTLE) {
                notes.add(Words.amount(balance.surplus().of(nutrient))
                        + " g/m² "
                        + nutrient.symbol()
                        + " come with it beyond the need.");
            }
        }
        notes.addAll(choice.refused());
        return List.copyOf(notes);
    }

    private static List<String> lacks(Balance balance, Choice choice) {
        List<String> amounts = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Nutrient nutrient : Nutrient.values()) {
            if (balance.due().of(nutrient) > LITTLE && !brought(nutrient, choice)) {
                amounts.add(Words.amount(balance.due().of(nutrient)) + " g/m² " + nutrient.symbol());
                names.add(nutrient.words());
            }
        }
        return amounts.isEmpty()
                ? List.of()
                : List.of(Words.list(amounts) + " stay undone: no material at hand brings " + Words.list(names) + ".");
    }

    private static boolean brought(Nutrient nutrient, Choice choice) {
        return choice.allowed().stream()
                .map(feed -> feed.gives(1))
                .anyMatch(gives -> gives.of(nutrient) > gives.sum() * WORTH_NAMING);
    }

    /** {@code N 5, K2O 12}: the nutrients that are there. */
    public static String inWords(Nutrients nutrients) {
        List<String> parts = new ArrayList<>();
        for (Nutrient nutrient : Nutrient.values()) {
            if (Math.abs(nutrients.of(nutrient)) >= 0.05) {
                parts.add(nutrient.symbol() + " " + Words.fixed(nutrients.of(nutrient), 1));
            }
        }
        return parts.isEmpty() ? "nothing" : String.join(", ", parts);
    }

    /** True where there is too little to do for anybody to notice. */
    public boolean nothingToDo() {
        return parts.isEmpty() && lacks.isEmpty();
    }

    public double totalGrams() {
        return parts.stream().mapToDouble(Recipe.Part::amount).sum();
    }

    /** {@code 160 g of dried blood and 100 g of sulphate of potash}. */
    public String words() {
        List<String> words = new ArrayList<>();
        for (Recipe.Part part : parts) {
            words.add(Words.weight(part.amount()) + " of " + part.feed().name());
        }
        return words.isEmpty() ? "nothing" : Words.list(words);
    }

    /** For each material: grams a bush or a metre of row, and spoons, cups or handfuls. */
    public List<String> measures() {
        List<String> lines = new ArrayList<>();
        for (Recipe.Part part : parts) {
            List<String> ways = new ArrayList<>();
            each(part.amount()).ifPresent(ways::add);
            Household.inWords(part.amount(), part.feed().density()).ifPresent(way -> ways.add(way + " in all"));
            part.feed().handfuls().forEach((hand, grams) -> {
                if (hand.endsWith("open")) {
                    Household.inHandfuls(part.amount(), hand.replace('-', ' '), grams)
                            .ifPresent(ways::add);
                }
            });
            if (!ways.isEmpty()) {
                lines.add(part.feed().name() + ": " + String.join("; ", ways));
            }
        }
        return lines;
    }

    private Optional<String> each(double grams) {
        if (ground.bushes() > 1) {
            return Optional.of(Words.weight(Portion.rounded(grams / ground.bushes())) + " a bush");
        }
        return ground.rowM() > 0
                ? Optional.of(Words.weight(Portion.rounded(grams / ground.rowM())) + " a metre of row")
                : Optional.empty();
    }

    /** Tags of all materials, each once. */
    public List<String> tags() {
        Set<String> tags = new LinkedHashSet<>();
        parts.forEach(part -> tags.addAll(part.feed().tags()));
        return List.copyOf(tags);
    }

    /** Ids of the cautions of all materials, each once. */
    public List<String> cautions() {
        Set<String> cautions = new LinkedHashSet<>();
        parts.forEach(part -> cautions.addAll(part.feed().cautions()));
        return List.copyOf(cautions);
    }
}
