package org.oldwood.craft.mulching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.crop.Seen;

/**
 * A mulching material.
 *
 * @param id {@code straw}
 * @param tags what keep-apart pairs and exclusions look at
 * @param depth the depth to hold once settled, cm
 * @param density kg/m³ as laid
 * @param layFactor how much deeper than the settled depth it is laid
 * @param decayCmPerYear how fast the layer shrinks
 * @param bale the bale in which it comes, for straw
 * @param asFeed the feed whose nutrients it brings, for compost and manure
 * @param nitrogenDrawdown true where it takes nitrogen from the soil that it touches
 * @param acidSoil true where it suits crops of acid soils
 * @param warning what to know of it; absent where nothing
 * @param poison what in it harms animals; absent for most
 * @param cautions ids of cautions to show
 */
@Notes("barrow")
public record Mulch(String id, String name, List<String> tags, Figure depth, Figure density, Figure layFactor,
        Figure decayCmPerYear, Optional<Bale> bale, Optional<String> asFeed, boolean nitrogenDrawdown, boolean acidSoil,
        @Key("ph") Optional<String> warning, Optional<Poison> poison, List<String> cautions) {

    /**
     * A bale.
     *
     * @param kg its weight, kg
     * @param flakes the layers into which it comes apart by hand
     */
    public record Bale(Figure kg, Figure volume, Figure flakes) {
        /** What one flake of a bale of so many kilograms weighs, kg. */
        public double flakeKg(double baleKg) {
            return baleKg / flakes.is();
        }
    }

    /**
     * A poison that it holds.
     *
     * @param percent its share by weight, %, as it varies
     * @param mgPerKg from how much of it for each kilogram of body weight an animal shows signs, mg
     */
    public record Poison(Figure percent, Figure mgPerKg) {
        /** From how much of the mulch an animal shows signs, g, where it holds so many percent. */
        public double gramsForSigns(double animalKg, double percentOfWeight) {
            return animalKg * mgPerKg.is() / 1000 / (percentOfWeight / 100);
        }
    }

    /**
     * Which of its figures were never read in print, each with its mark: {@code weighs 50 kg/m3 (from memory)}. Empty
     * where all were.
     */
    public List<String> notRead() {
        List<String> words = new ArrayList<>();
        mark("lies ", depth, words);
        mark("weighs ", density, words);
        mark("rots ", decayCmPerYear, words);
        return words;
    }

    private static void mark(String what, Figure figure, List<String> words) {
        if (figure.seen() != Seen.READ) { words.add(what + figure.inWords()); }
    }
}
