package org.oldwood.facts;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.words.Words;

/**
 * So much of a material that a task will use.
 *
 * @param unit {@code g}, {@code l} or {@code sheets}
 * @param pack the usual pack; empty where it is not sold in packs, or none is told
 * @param notRead figures behind the amount that were never read in print, each with its mark
 */
public record Purchase(String material, String name, double amount, String unit, Optional<Pack> pack,
        List<String> notRead) {

    private static final double LITRES_PER_M3 = 1000;
    private static final double FINE_BELOW = 100;

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

    /** So much in the unit of a purchase: {@code 1.4 kg}, {@code 460 l}, {@code 2.3 m³}. */
    public static String measured(double amount, String unit) {
        return switch (unit) {
            case "g" -> Words.weight(amount);
            case "l" -> amount < LITRES_PER_M3 ? Words.amount(tens(amount)) + " l"
                    : Words.fixed(amount / LITRES_PER_M3, 1) + " m³";
            default -> Math.round(amount) + " " + unit;
        };
    }

    /** Nobody measures a heap to the litre. */
    private static double tens(double litres) {
        return Words.nearest(litres, litres < FINE_BELOW ? 1 : 10);
    }

    /** {@code 3 kg of compost}. */
    public String told() { return "%s of %s".formatted(measured(amount, unit), name); }

    /** {@code 1.4 kg (2 packs of 1 kg)}. */
    public String inWords() {
        String packs = packsInWords();
        return packs.isEmpty() ? measured(amount, unit) : "%s (%s)".formatted(measured(amount, unit), packs);
    }

    /** {@code 2 packs of 1.5 kg}; empty where it is not sold in packs. */
    public String packsInWords() {
        return pack
                .map(each -> "%s of %s".formatted(Words.count(packs(), each.one(), each.many()), each.size().inWords()))
                .orElse("");
    }
}
