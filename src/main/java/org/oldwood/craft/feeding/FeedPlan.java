package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.oldwood.words.Words;

/**
 * A dressing ready to weigh out: how many grams of which material for the whole ground, and what they bring.
 *
 * @param number its place in the year, 0 for the first
 * @param parts the materials with grams for the whole ground, rounded
 * @param gives what the rounded amounts give in the first year, g/m²
 * @param slow whether slow nitrogen worth a weighing is in it
 */
public record FeedPlan(int number, String when, List<Recipe.Part> parts, Nutrients gives, boolean slow,
        NeedCase.Ground ground) {
    private static final double SHOWN_FROM = 0.05;

    /** A dressing of materials in g/m²; of one that is less than a gram, or brings next to nothing, none. */
    static FeedPlan of(int number, String when, List<Recipe.Part> gPerM2, double smallestN, NeedCase.Ground ground) {
        List<Recipe.Part> parts = gPerM2.stream()
                .filter(part -> part.feed().gives(part.amount()).sum() >= smallestN / 2)
                .map(part -> new Recipe.Part(part.feed(), Portion.rounded(part.amount() * ground.areaM2())))
                .filter(part -> part.amount() >= 1).toList();
        return new FeedPlan(number, when, parts, Recipe.of(parts).gives().times(1 / ground.areaM2()),
                gPerM2.stream().anyMatch(part -> part.slowly(smallestN)), ground);
    }

    /** The arithmetic, a line for each material. */
    public List<String> lines() {
        return parts.stream()
                .map(part -> "%s, %s: %s on %s m² = %s g/m², giving %s g/m² this season".formatted(when,
                        part.feed().name(), Words.weight(part.amount()), Words.amount(ground.areaM2()),
                        Words.amount(part.amount() / ground.areaM2()),
                        inWords(part.feed().gives(part.amount() / ground.areaM2()))))
                .toList();
    }

    /** {@code N 5, K2O 12}: the nutrients that are there. */
    public static String inWords(Nutrients nutrients) {
        List<String> parts = Arrays.stream(Nutrient.values())
                .filter(nutrient -> Math.abs(nutrients.of(nutrient)) >= SHOWN_FROM)
                .map(nutrient -> nutrient.symbol() + " " + Words.fixed(nutrients.of(nutrient), 1)).toList();
        return parts.isEmpty() ? "nothing" : String.join(", ", parts);
    }

    /** {@code N 5, K2O 12 g/m²}, or {@code nothing}. */
    public static String perM2(Nutrients nutrients) {
        return isNothing(nutrients) ? "nothing" : inWords(nutrients) + " g/m²";
    }

    /** True where no nutrient is worth a word. */
    public static boolean isNothing(Nutrients nutrients) {
        return inWords(nutrients).equals("nothing");
    }

    public double totalGrams() { return parts.stream().mapToDouble(Recipe.Part::amount).sum(); }

    /** {@code 160 g of dried blood and 100 g of sulphate of potash}. */
    public String words() {
        List<String> words = parts.stream().map(part -> Words.weight(part.amount()) + " of " + part.feed().name())
                .toList();
        return words.isEmpty() ? "nothing" : Words.list(words);
    }

    /** For each material: grams a bush or a metre of row, and spoons, millilitres or handfuls. */
    public List<String> measures() {
        List<String> lines = new ArrayList<>();
        for (Recipe.Part part : parts) {
            List<String> ways = new ArrayList<>();
            each(part.amount()).ifPresent(ways::add);
            Household.inWords(part.amount(), part.feed().density()).ifPresent(way -> ways.add(way + " in all"));
            part.feed().handfuls().forEach((hand, grams) -> {
                if (hand.endsWith("open")) {
                    Household.inHandfuls(part.amount(), hand.replace('-', ' '), grams).ifPresent(ways::add);
                }
            });
            if (!ways.isEmpty()) { lines.add(part.feed().name() + ": " + String.join("; ", ways)); }
        }
        return lines;
    }

    private Optional<String> each(double grams) {
        if (ground.bushes() > 1) {
            return Optional.of(Words.weight(Portion.rounded(grams / ground.bushes())) + " a bush");
        }
        return ground.rowM() > 0 ? Optional.of(Words.weight(Portion.rounded(grams / ground.rowM())) + " a metre of row")
                : Optional.empty();
    }

    /** Tags of all materials, each once. */
    public List<String> tags() {
        return parts.stream().flatMap(part -> part.feed().tags().stream()).distinct().toList();
    }

    /** Ids of the cautions of all materials, each once. */
    public List<String> cautions() {
        return parts.stream().flatMap(part -> part.feed().cautions().stream()).distinct().toList();
    }
}
