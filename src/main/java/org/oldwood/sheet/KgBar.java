package org.oldwood.sheet;

import org.oldwood.crop.Range;

/**
 * A crop that is not known for sure, drawn from its least to its most with a mark at what is expected.
 *
 * @param low least, kg
 * @param is expected, kg
 * @param high most, kg
 * @param most the picture's right end, kg
 */
record KgBar(double low, double is, double high, double most) {
    private static final double WHOLE = 100;

    static KgBar of(Range range, double most) { return new KgBar(range.low(), range.is(), range.high(), most); }

    private double at(double kg) { return most <= 0 ? 0 : WHOLE * Math.min(1, kg / most); }

    /** The picture's right end, kg. */
    String mostWords() { return Shown.plain(most); }

    String x() { return Shown.percent(at(low)); }

    String width() { return Shown.percent(Math.max(0, at(high) - at(low))); }

    String middle() { return Shown.percent(at(is)); }

    /** {@code 2.1 kg (1.5–2.8 kg)}. */
    String inShort() {
        return low == high ? Shown.kg(is) + " kg"
                : "%s kg (%s–%s kg)".formatted(Shown.kg(is), Shown.kg(low), Shown.kg(high));
    }
}
