package org.oldwood.craft.pruning;

import java.util.function.DoubleFunction;
import org.oldwood.crop.Figure;

/** Words for figures. */
public final class Measures {
    private Measures() {}

    /** {@code 2 buds (1 to 3)}; {@code 38 cm (30 to 46 cm)}, as a text may be put into inches; {@code a quarter}. */
    public static String inWords(Figure figure) {
        if (figure.unit().equals("share")) {
            return share(figure.is()) + range(figure, Measures::share, "") + figure.seen().beside();
        }
        boolean one = figure.is() == 1 && figure.unit().endsWith("s");
        String words = figure.plain();
        String unit = figure.unit().matches("1|.*s") ? "" : " " + figure.unit();
        return (one ? words.substring(0, words.length() - 1) : words) + range(figure, Measures::number, unit)
                + figure.seen().beside();
    }

    private static String range(Figure figure, DoubleFunction<String> word, String unit) {
        return figure.low() == figure.high() ? ""
                : " (%s to %s%s)".formatted(word.apply(figure.low()), word.apply(figure.high()), unit);
    }

    /** A number without a needless decimal point. */
    static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    /** A share as people say it: {@code a third}, {@code 20 %}. */
    public static String share(double share) {
        for (int parts = 2; parts < NAMES.length; parts++) {
            if (Math.abs(share - 1.0 / parts) < 0.004) { return NAMES[parts]; }
        }
        return Math.round(share * 100) + " %";
    }

    private static final String[] NAMES = {"", "", "half", "a third", "a quarter", "a fifth", "a sixth"};
}
