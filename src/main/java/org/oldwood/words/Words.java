package org.oldwood.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The one way in which numbers, amounts and lists are put in words, as a gardener writes them. The same in every
 * locale, and without the locale data of the JDK, which a short run would spend more on than on its plan.
 */
public final class Words {
    private Words() {}

    /** At most three digits that count, no needless zeros: {@code 12.5}, {@code 0.35}, {@code 1460}. */
    public static String amount(double value) {
        if (value == 0) { return "0"; }
        double size = Math.abs(value);
        int decimals = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        return fixed(value, decimals);
    }

    /** With so many decimals at most; zeros at the end are left off. */
    public static String fixed(double value, int decimals) {
        long scaled = Math.round(Math.abs(value) * (long) Math.pow(10, decimals));
        return (value < 0 && scaled > 0 ? "-" : "")
                + BigDecimal.valueOf(scaled, decimals).stripTrailingZeros().toPlainString();
    }

    /** Grams below a kilogram, kilograms above: {@code 350 g}, {@code 1.46 kg}. */
    public static String weight(double grams) {
        return Math.abs(grams) < 1000 ? amount(grams) + " g" : amount(grams / 1000) + " kg";
    }

    /** With its first letter as a capital. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** One of a thing, or several: {@code 1 bag}, {@code 3 bags}. */
    public static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** With one decimal, halves rounded up: {@code 2.5}. */
    public static String one(double value) {
        return halvesUp(value, 1);
    }

    /** Without decimals, halves rounded up: {@code 3}. */
    public static String whole(double value) {
        return halvesUp(value, 0);
    }

    /** The nearest whole number of steps, halves rounded up as a person would: {@code 3} for {@code 2.5}. */
    public static double nearest(double value, double step) {
        return Math.floor(value / step + 0.5 + 1e-9) * step;
    }

    private static String halvesUp(double value, int decimals) {
        return new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /** The number itself with so many decimals, for JSON. */
    public static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.round(value * scale) / scale;
    }

    /** {@code a}, {@code a and b}, {@code a, b and c}. */
    public static String list(List<String> items) {
        int last = items.size() - 1;
        return last < 1 ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    /** As {@link #list}; three names and more that number on are told by their ends: {@code bc-1 to bc-6}. */
    public static String names(List<String> names) {
        List<String> told = new ArrayList<>(names);
        for (int first = 0; first < told.size(); first++) {
            int end = first + 1;
            while (end < told.size() && follows(told.get(end - 1), told.get(end))) {
                end++;
            }
            if (end - first > 2) {
                told.set(first, told.get(first) + " to " + told.get(end - 1));
                told.subList(first + 1, end).clear();
            }
        }
        return list(told);
    }

    private static boolean follows(String name, String next) {
        String before = name.replaceFirst("\\d{1,8}$", "");
        return before.length() < name.length()
                && next.equals(before + (Integer.parseInt(name.substring(before.length())) + 1));
    }
}
