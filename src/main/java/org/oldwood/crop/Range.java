package org.oldwood.crop;

/**
 * A value with the least and the most that print allows. All three in the same unit.
 *
 * @param is the expected value, from {@code low} to {@code high}
 */
public record Range(double low, double is, double high) {
    public Range {
        if (!(low <= is && is <= high)) {
            throw new IllegalArgumentException(
                    "a range must rise from low to high but is " + low + ", " + is + ", " + high);
        }
    }

    public static Range of(Figure figure) { return new Range(figure.low(), figure.is(), figure.high()); }

    /** Both ends and the middle times a factor of 0 or more. */
    public Range times(double factor) {
        return new Range(low * factor, is * factor, high * factor);
    }

    /** End times end, middle times middle; for ranges of 0 or more. */
    public Range times(Range other) {
        return new Range(low * other.low, is * other.is, high * other.high);
    }
}
