package org.oldwood.season;

import java.util.Locale;
import org.oldwood.crop.Figure;

/**
 * The chill of a place in one winter beside what a crop wants.
 *
 * @param model the chill model's key
 * @param name its name
 * @param total the chill of the winter
 * @param portions the same winter in chill portions of the Dynamic model
 * @param need what the crop wants, in the model's unit
 */
public record ChillReport(String model, String name, double total, double portions, Figure need) {

    public boolean isMet() {
        return total >= need.is();
    }

    /** True where not even the least of what the sources give is reached. */
    public boolean isShort() {
        return total < need.low();
    }

    /** One sentence: what the winter gives and what the crop wants. */
    public String inWords() {
        return String.format(
                Locale.ROOT,
                "this climate gives %.0f %s (%.0f chill portions); the crop wants %s%s",
                total,
                name,
                portions,
                need.inWords(),
                need.low() < need.high()
                        ? String.format(
                                Locale.ROOT, ", by source %.0f to %.0f", need.low(), need.high())
                        : "");
    }
}
