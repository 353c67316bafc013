package org.oldwood.craft.feeding.liming;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.words.Words;

/**
 * A liming material.
 *
 * @param id {@code ground-limestone}
 * @param tags what keep-apart pairs and exclusions look at
 * @param magnesium magnesium (the element), % by weight
 * @param density kg per litre, where it was read
 * @param pack kg in a usual pack
 * @param yearlyMost the most in a year, g/m², where there is a limit
 * @param avoid why not to use it; absent where nothing speaks against it
 * @param cautions ids of cautions to show
 */
public record Lime(String id, String name, List<String> tags, Figure neutralising, Figure magnesium,
        Optional<Figure> density, Optional<Figure> pack, @Key("yearlyMostGPerM2") Optional<Figure> yearlyMost,
        Optional<String> avoid, List<String> cautions) {

    public boolean is(String tag) { return tags.contains(tag); }

    public NeutralisingValue value() { return NeutralisingValue.of(neutralising.is(), neutralising.unit()); }

    /** Magnesia (MgO) in so many grams of it, g. */
    public double mgoIn(double grams) {
        return MolarMass.mgoFromMg(grams * magnesium.is() / 100);
    }

    /** The same material with the neutralising value that stands on the bag. */
    public Lime withValue(NeutralisingValue value) {
        Figure own = new Figure(value.percentCaCO3(), value.percentCaCO3(), value.percentCaCO3(), "% CaCO3", List.of(),
                neutralising.seen(), "from the bag");
        return new Lime(id, name, tags, own, magnesium, density, pack, yearlyMost, avoid, cautions);
    }

    /**
     * A question where this value lies so far from the usual one of such a lime that the bag's figure was probably read
     * on the other scale; empty where it is likely.
     */
    public Optional<String> doubtAgainst(Lime usual) {
        double times = value().percentCaCO3() / usual.value().percentCaCO3();
        double other = NeutralisingValue.ofCaO(1).percentCaCO3();
        boolean doubtful = times > Math.sqrt(other) || times < 1 / Math.sqrt(other);
        return doubtful ? Optional.of(
                "Question: %s has about %s %% CaO = %s %% CaCO3, this one %s %% CaO = %s %% CaCO3. Does the bag use the other scale?"
                        .formatted(name, Words.amount(usual.value().percentCaO()),
                                Words.amount(usual.value().percentCaCO3()), Words.amount(value().percentCaO()),
                                Words.amount(value().percentCaCO3())))
                : Optional.empty();
    }
}
