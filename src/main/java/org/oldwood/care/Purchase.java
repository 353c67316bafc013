package org.oldwood.care;

import java.util.OptionalDouble;

/**
 * So much of a material that a task will use.
 *
 * @param material the material's id
 * @param name for people
 * @param amount how much
 * @param unit {@code g}, {@code l} or {@code sheets}
 * @param pack content of a usual pack, in that unit; absent where it is not sold in packs
 */
public record Purchase(
        String material, String name, double amount, String unit, OptionalDouble pack) {
    /** Whole packs to buy; 0 where it is not sold in packs. */
    public long packs() {
        return pack.isEmpty() ? 0 : (long) Math.ceil(amount / pack.getAsDouble() - 1e-9);
    }

    Purchase plus(Purchase other) {
        return new Purchase(material, name, amount + other.amount, unit, pack);
    }
}
