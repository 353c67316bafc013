package org.oldwood.crop;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers in words without {@code String.format}, which reads the locale data of the JDK: a short
 * run would spend more on it than on its plan.
 */
public final class Decimals {
    private Decimals() {}

    /** With one decimal, halves rounded up: {@code 2.5}. */
    public static String one(double value) {
        return rounded(value, 1);
    }

    /** Without decimals, halves rounded up: {@code 3}. */
    public static String whole(double value) {
        return rounded(value, 0);
    }

    private static String rounded(double value, int decimals) {
        return new BigDecimal(Double.toString(value))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
