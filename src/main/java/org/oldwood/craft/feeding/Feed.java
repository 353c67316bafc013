package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/**
 * A material given to feed plants, with what its label or a table says of it.
 *
 * @param id {@code dried-blood}
 * @param tags what keep-apart pairs and exclusions look at: {@code ammonium}, {@code nitrate},
 *     {@code organic-nitrogen}, {@code manure}, {@code chloride} …
 * @param analysis nutrients, % by weight; a nutrient that is not named is taken as none
 * @param firstYear share of each nutrient that plants can use in the first year, 0 to 1; a nutrient that is not named
 *     counts in full
 * @param density kg per litre, where it was read
 * @param handfuls grams in a handful by kind of hand; empty where nobody weighed one
 * @param pack kg in a usual pack
 * @param yearlyMost the most in a year, g/m², where there is a limit
 * @param cautions ids of cautions to show
 */
@Notes("lbCaCO3Per100Lb")
public record Feed(String id, String name, List<String> tags, Map<Nutrient, Figure> analysis,
        Map<Nutrient, Figure> firstYear, Optional<Figure> density, @Key("handfulG") Map<String, Figure> handfuls,
        Optional<Figure> pack, @Key("yearlyMostGPerM2") Optional<Figure> yearlyMost,
        List<String> cautions) implements Checked {
    /** What percentages are of. */
    static final double WHOLE = 100;

    static Feed read(Fields fields) {
        Map<Nutrient, Figure> analysis = figures(fields, "analysis", "%", WHOLE);
        Map<Nutrient, Figure> firstYear = figures(fields, "firstYear", "1", 1);
        return RecordReader.read(fields, Feed.class, Map.of("analysis", analysis, "firstYear", firstYear));
    }

    @Override
    public void check(Fields fields) {
        double sum = percent().sum();
        fields.tellIf(sum > WHOLE, "analysis", "analysis-over-100", Math.round(sum));
    }

    /**
     * A feed of which only the label's analysis is known. All of it counts in the first year.
     *
     * @param percent each nutrient, % by weight
     * @throws RecordException where it is less than nothing, or adds up to more than 100 %
     */
    public static Feed ofLabel(Nutrients percent) {
        double least = Math.min(Math.min(percent.n(), percent.p2o5()), percent.k2o());
        if (percent.sum() > WHOLE || Math.min(least, percent.mgo()) < 0 || percent.sum() == 0) {
            throw new RecordException(
                    Problem.of("analysis-over-100 label", Place.of("analysis"), Words.amount(percent.sum())));
        }
        Map<Nutrient, Figure> analysis = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            double is = percent.of(nutrient);
            analysis.put(nutrient, new Figure(is, is, is, "%", List.of(), Seen.READ, "from the grower's label"));
        }
        return new Feed("own", "your feed", List.of(), analysis, Map.of(), Optional.empty(), Map.of(), Optional.empty(),
                Optional.empty(), List.of("dust", "lime-and-ammonium"));
    }

    /** Each nutrient, % by weight. */
    public Nutrients percent() { return all(analysis, 0); }

    /** Share of each nutrient that counts in the first year, 0 to 1. */
    public Nutrients shares() {
        return all(firstYear, 1);
    }

    private static Nutrients all(Map<Nutrient, Figure> figures, double otherwise) {
        return Nutrients.each(nutrient -> one(figures, nutrient, otherwise));
    }

    private static double one(Map<Nutrient, Figure> figures, Nutrient nutrient, double otherwise) {
        Figure figure = figures.get(nutrient);
        return figure == null ? otherwise : figure.is();
    }

    /** All nutrients in so many grams, g. */
    public Nutrients holds(double grams) {
        return percent().times(grams / WHOLE);
    }

    /** What plants can use in the first year of so many grams, g. */
    public Nutrients gives(double grams) {
        return holds(grams).times(shares());
    }

    public boolean is(String tag) { return tags.contains(tag); }

    /** True of manures, meals and composts, whose nutrients are not all free at once. */
    public boolean organic() {
        return is("organic-nitrogen") || is("compost") || is("manure");
    }

    /** True of organic feeds whose nitrogen comes over months. */
    public boolean slow() {
        return organic() && !is("quick");
    }

    /** Whether plants can use nitrogen of it in the first year. */
    boolean givesNitrogen() {
        return one(analysis, Nutrient.N, 0) * one(firstYear, Nutrient.N, 1) > 0;
    }

    /** True of manures and composts, which are given by the barrow and vary from heap to heap. */
    public boolean bulky() {
        return is("compost") || is("manure");
    }

    /**
     * Which of its figures were never read in print, each with its mark: {@code 80 % of its N counts in the first year
     * (from memory)}. Empty where all were.
     */
    public List<String> notRead() {
        List<String> words = new ArrayList<>();
        analysis.forEach((nutrient, figure) -> mark(figure)
                .ifPresent(mark -> words.add(Words.amount(figure.is()) + " % " + nutrient.symbol() + mark)));
        firstYear.forEach((nutrient, figure) -> mark(figure).filter(mark -> percent().of(nutrient) > 0)
                .ifPresent(mark -> words.add("%s %% of its %s counts in the first year%s"
                        .formatted(Words.amount(figure.is() * WHOLE), nutrient.symbol(), mark))));
        return words;
    }

    /** Empty for a figure that was read, quoted or worked out, and for nothing of something. */
    private static Optional<String> mark(Figure figure) {
        boolean open = figure.seen() == Seen.MEMORY || figure.seen() == Seen.ASSUMED;
        return open && figure.is() != 0 ? Optional.of(figure.seen().beside()) : Optional.empty();
    }

    private static Map<Nutrient, Figure> figures(Fields fields, String key, String unit, double most) {
        Map<Nutrient, Figure> all = new EnumMap<>(Nutrient.class);
        fields.object(key).ifPresent(inner -> {
            for (Nutrient nutrient : Nutrient.values()) {
                figure(inner, nutrient.symbol(), unit, most).ifPresent(figure -> all.put(nutrient, figure));
            }
            inner.done();
        });
        return all;
    }

    /** A figure with its source, or a plain number from the grower's own label. */
    private static Optional<Figure> figure(Fields inner, String key, String unit, double most) {
        if (inner.raw(key).orElse(null) instanceof Json.Num) {
            double is = inner.number(key, 0, most);
            return Optional.of(new Figure(is, is, is, unit, List.of(), Seen.READ, "from the grower's label"));
        }
        Optional<Figure> figure = Figure.optional(inner, key);
        inner.tellIf(figure.isPresent() && (figure.get().is() < 0 || figure.get().is() > most), key,
                "number-out-of-range figure", most, unit);
        return figure;
    }
}
