package org.oldwood.crop;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Fields;

/**
 * What a crop bears, from its {@code yield} section: the crop of a mature plant by form, and the share of it that comes
 * year by year after planting. Sources differ widely; the range says so.
 *
 * @param mature kilograms a year of a mature plant, or of a metre of row, by form
 * @param series shares of the full crop by year; of several that fit a form the first is the default
 * @param wood what a stem bears by its age
 * @param frames what a branch bears by its age, of forms with permanent branches
 * @param crowding how far fewer stems make up for it by bearing more each; empty where a crop goes with their number
 * @param picking kilograms that a person picks in an hour; empty where nothing was found
 * @param frostYear share of a full crop left in a year of frost at bloom
 * @param unpruned what print says of leaving the bush alone; empty where nothing was found
 */
public record Yield(Map<String, Figure> mature, List<Series> series, Optional<WoodAge> wood,
        Map<String, WoodAge> frames, Optional<Figure> crowding, Optional<Figure> picking, Optional<Figure> frostYear,
        Optional<UnprunedBush> unpruned) {

    public static Optional<Yield> read(Crop crop) { return crop.section("yield", Yield.class); }

    /** What a stem of that age bears in a form, the best being 1: at least (0), expected (1), at most (2). */
    public double weight(String form, int age, int which) {
        WoodAge ages = frames.getOrDefault(form, wood.orElse(null));
        return ages == null ? 1 : ages.weight(age, which);
    }

    /** The figure of {@link #crowding}: low (0), expected (1), high (2). */
    public double crowding(int which) {
        return crowding.map(k -> List.of(k.low(), k.is(), k.high()).get(which)).orElse(PROPORTIONAL);
    }

    private static final double PROPORTIONAL = 1e9;

    /** The default series for a form. */
    public Optional<Series> series(String form) {
        return series.stream().filter(one -> one.suits(form)).findFirst();
    }

    /**
     * Kilograms to expect of one plant, or of one metre of row, in its {@code year}-th growing season in place (1 is
     * the season of planting), by the default series. Empty where the form has no figures.
     */
    public Optional<Range> expected(String form, int year) {
        Optional<Series> shares = series(form);
        Figure full = mature.get(form);
        return full == null || shares.isEmpty() ? Optional.empty()
                : Optional.of(Range.of(full).times(shares.get().share(year)));
    }

    /**
     * Shares of the full crop by year after planting.
     *
     * @param forms the forms that it suits; all where empty
     * @param percent per cent of the full crop in years 1, 2, 3 …; the last goes on
     */
    public record Series(String id, List<String> forms, String words, List<Double> percent, List<String> sources,
            Seen seen, String note) implements Checked {

        @Override
        public void check(Fields fields) { fields.tellIf(percent.isEmpty(), "percent", "empty-series"); }

        boolean suits(String form) { return forms.isEmpty() || forms.contains(form); }

        /** Share of the full crop, 0 to 1, in that year; 1 is the season of planting. */
        public double share(int year) {
            if (year < 1 || percent.isEmpty()) { return 0; }
            return percent.get(Math.min(year, percent.size()) - 1) / 100;
        }
    }
}
