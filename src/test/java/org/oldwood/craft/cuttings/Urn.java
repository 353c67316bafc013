package org.oldwood.craft.cuttings;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.oldwood.craft.cuttings.survival.Spread;

/**
 * The beta-binomial worked out another way, for tests: every path of Pólya's urn is walked, in exact fractions. Draws
 * from an urn with a green and b brown balls, each put back with one more of its colour, give as many green ones as
 * plants live under a Beta(a, b) rate (Eggenberger and Pólya, 1923).
 */
public final class Urn {
    private Urn() {}

    /** An exact fraction, not reduced. */
    public record Fraction(BigInteger above, BigInteger below) {
        static final Fraction ZERO = of(0, 1);
        static final Fraction ONE = of(1, 1);

        static Fraction of(long above, long below) {
            return new Fraction(BigInteger.valueOf(above), BigInteger.valueOf(below)).reduced();
        }

        Fraction times(Fraction other) {
            return new Fraction(above.multiply(other.above), below.multiply(other.below)).reduced();
        }

        Fraction plus(Fraction other) {
            return new Fraction(above.multiply(other.below).add(other.above.multiply(below)),
                    below.multiply(other.below)).reduced();
        }

        Fraction reduced() {
            BigInteger common = above.gcd(below).max(BigInteger.ONE);
            return new Fraction(above.divide(common), below.divide(common));
        }

        public double value() {
            return new java.math.BigDecimal(above)
                    .divide(new java.math.BigDecimal(below), java.math.MathContext.DECIMAL64).doubleValue();
        }
    }

    /** The chances of 0..n alive for a rate of {@code green}/{@code per} lived and {@code brown}/{@code per} died. */
    public static Fraction[] chances(int n, int green, int brown, int per) {
        Fraction[] chances = new Fraction[n + 1];
        Arrays.fill(chances, Fraction.ZERO);
        walk(n, 0, 0, Fraction.ONE, new int[]{green, brown, per}, chances);
        return chances;
    }

    private static void walk(int n, int drawn, int alive, Fraction chance, int[] urn, Fraction[] sums) {
        if (drawn == n) {
            sums[alive] = sums[alive].plus(chance);
            return;
        }
        long all = urn[0] + urn[1] + (long) drawn * urn[2];
        long green = urn[0] + (long) alive * urn[2];
        walk(n, drawn + 1, alive + 1, chance.times(Fraction.of(green, all)), urn, sums);
        walk(n, drawn + 1, alive, chance.times(Fraction.of(all - green, all)), urn, sums);
    }

    /** The chances after one phase after another; each phase is {green, brown, per}. */
    public static Fraction[] chain(int n, int[]... phases) {
        Fraction[] now = new Fraction[n + 1];
        Arrays.fill(now, Fraction.ZERO);
        now[n] = Fraction.ONE;
        for (int[] phase : phases) {
            Fraction[] after = new Fraction[n + 1];
            Arrays.fill(after, Fraction.ZERO);
            for (int m = 0; m <= n; m++) {
                Fraction[] step = chances(m, phase[0], phase[1], phase[2]);
                for (int k = 0; k <= m; k++) {
                    after[k] = after[k].plus(now[m].times(step[k]));
                }
            }
            now = after;
        }
        return now;
    }

    /** The chance of {@code number} or more. */
    public static double atLeast(Spread spread, int number) {
        return IntStream.rangeClosed(number, spread.most()).mapToDouble(spread::chance).sum();
    }
}
