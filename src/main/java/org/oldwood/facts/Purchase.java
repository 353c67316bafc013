package org.oldwood.facts;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;

/**
 * So much of a material that a task will use.
 *
 * @param material the material's id
 * @param name for people
 * @param amount how much
 * @param unit {@code g}, {@code l} or {@code sheets}
 * @param pack the usual pack; empty where it is not sold in packs, or none is told
 * @param notRead figures behind the amount that were never read in print, each with its mark
 */
public record Purchase(
        String material, String name, double amount, String unit, Optional<Pack> pack, List<String> notRead) {

    /**
     * A pack.
     *
     * @param holds its content, in the unit of the purchase
     * @param one what one is called, {@code bag} for example
     * @param many what several are called
     * @param size its size, whose mark tells whether it was read
     */
    public record Pack(double holds, String one, String many, Figure size) {
        /** Of so many kilograms. */
        public static Pack ofKilograms(Figure kg) {
            return new Pack(kg.is() * 1000, "pack", "packs", kg);
        }
    }

    /** Whole packs to buy; 0 where it is not sold in packs, or nothing is needed. */
    public long packs() {
        return pack.map(each -> (long) Math.ceil(amount / each.holds() - 1e-9)).orElse(0L);
    }

    /** Both together, of one material in one unit. */
    public Purchase plus(Purchase other) {
        return new Purchase(material, name, amount + other.amount, unit, pack, notRead);
    }
}
