package org.oldwood.craft.feeding;

import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/**
 * What the need of a piece of ground depends on. What is not known is absent, and the reckoning says what it took
 * instead.
 *
 * @param soil texture and soil indices
 * @param age seasons since planting, 1 in the first
 * @param growth how strongly the plants grow: weak, normal, strong
 * @param ground how much ground and how many plants
 */
public record NeedCase(Soil soil, OptionalInt age, Optional<String> cultivar, String growth, Ground ground) {

    /**
     * What is known of the soil.
     *
     * @param phosphorus index of P
     * @param potassium index of K
     * @param magnesium index of Mg
     * @param organic whether it is peat, or so rich in humus that it sets nitrogen free
     */
    public record Soil(Optional<String> texture, OptionalInt phosphorus, OptionalInt potassium, OptionalInt magnesium,
            boolean organic) {
        public static final Soil UNKNOWN = new Soil(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(),
                OptionalInt.empty(), false);

        /** The index that the need of a nutrient is read by; empty for nitrogen. */
        OptionalInt index(Nutrient nutrient) {
            return switch (nutrient) {
                case N -> OptionalInt.empty();
                case P2O5 -> phosphorus;
                case K2O -> potassium;
                case MGO -> magnesium;
            };
        }
    }

    /**
     * How much ground and how many plants share it.
     *
     * @param areaM2 area, m², more than 0
     * @param bushes bushes on it, 0 where not known
     * @param rowM metres of row on it, 0 where not known
     */
    public record Ground(double areaM2, int bushes, double rowM) {
        public Ground {
            if (!(areaM2 > 0) || bushes < 0 || rowM < 0) {
                throw new RecordException(Problem.of("area-not-positive", Place.of("area"), areaM2, bushes, rowM));
            }
        }
    }

    public static NeedCase of(Ground ground) {
        return new NeedCase(Soil.UNKNOWN, OptionalInt.empty(), Optional.empty(), "normal", ground);
    }

    public NeedCase withSoil(Soil other) { return new NeedCase(other, age, cultivar, growth, ground); }

    public NeedCase withAge(int seasons) {
        return new NeedCase(soil, OptionalInt.of(seasons), cultivar, growth, ground);
    }

    public NeedCase withGrowth(String other) { return new NeedCase(soil, age, cultivar, other, ground); }

    public NeedCase withCultivar(Optional<String> other) { return new NeedCase(soil, age, other, growth, ground); }
}
