package org.oldwood.season;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Twelve monthly values, January first. Nobody can change them. */
public final class Months {
    private final double[] values;
    private @Nullable MeanCurve curve;

    private Months(double[] values) { this.values = values; }

    public static Months of(double... values) {
        if (values.length != 12) { throw new IllegalArgumentException("twelve monthly values, not " + values.length); }
        return new Months(values.clone());
    }

    /** The value of a month, 1 to 12. */
    public double in(int month) { return values[month - 1]; }

    public double most() { return Arrays.stream(values).max().orElseThrow(); }

    public double least() { return Arrays.stream(values).min().orElseThrow(); }

    /** Half way between these and others, month by month. */
    public Months mean(Months others) {
        return new Months(IntStream.range(0, 12).mapToDouble(i -> (values[i] + others.values[i]) / 2).toArray());
    }

    /** The curve through them, day by day; made when first asked for. */
    public MeanCurve curve() {
        MeanCurve made = curve;
        if (made == null) {
            made = MeanCurve.through(this);
            curve = made;
        }
        return made;
    }

    /** A copy, January first. */
    public double[] toArray() { return values.clone(); }
}
