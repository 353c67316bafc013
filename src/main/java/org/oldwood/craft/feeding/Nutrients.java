package org.oldwood.craft.feeding;

import java.util.function.ToDoubleFunction;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;

/**
 * Amounts of the four nutrients in one unit, g/m² for example; the method that gives them says which. An amount may be
 * negative, as a difference is.
 *
 * @param p2o5 phosphate, P2O5
 * @param k2o potash, K2O
 */
public record Nutrients(double n, double p2o5, double k2o, double mgo) {
    public static final Nutrients NONE = new Nutrients(0, 0, 0, 0);

    public Nutrients {
        if (!Double.isFinite(n + p2o5 + k2o + mgo)) {
            throw new IllegalArgumentException(
                    "nutrients must be finite but are " + n + ", " + p2o5 + ", " + k2o + ", " + mgo);
        }
    }

    static Nutrients read(Fields figures) {
        Nutrients read = each(nutrient -> Figure.read(figures, nutrient.symbol()).is());
        figures.done();
        return read;
    }

    /** The amounts that {@code each} gives. */
    public static Nutrients each(ToDoubleFunction<Nutrient> each) {
        return new Nutrients(each.applyAsDouble(Nutrient.N), each.applyAsDouble(Nutrient.P2O5),
                each.applyAsDouble(Nutrient.K2O), each.applyAsDouble(Nutrient.MGO));
    }

    public double of(Nutrient nutrient) {
        return switch (nutrient) {
            case N -> n;
            case P2O5 -> p2o5;
            case K2O -> k2o;
            case MGO -> mgo;
        };
    }

    public Nutrients plus(Nutrients other) {
        return new Nutrients(n + other.n, p2o5 + other.p2o5, k2o + other.k2o, mgo + other.mgo);
    }

    public Nutrients minus(Nutrients other) {
        return new Nutrients(n - other.n, p2o5 - other.p2o5, k2o - other.k2o, mgo - other.mgo);
    }

    public Nutrients times(double factor) {
        return new Nutrients(n * factor, p2o5 * factor, k2o * factor, mgo * factor);
    }

    /** Each nutrient times the other's share of it. */
    public Nutrients times(Nutrients shares) {
        return new Nutrients(n * shares.n, p2o5 * shares.p2o5, k2o * shares.k2o, mgo * shares.mgo);
    }

    /** The same, with 0 in place of what is negative. */
    public Nutrients atLeastZero() {
        return new Nutrients(Math.max(0, n), Math.max(0, p2o5), Math.max(0, k2o), Math.max(0, mgo));
    }

    public Nutrients withN(double other) { return new Nutrients(other, p2o5, k2o, mgo); }

    /** The sum of all four. */
    public double sum() { return n + p2o5 + k2o + mgo; }
}
