package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;

/**
 * Holds a calculator against rows of a reference file: id, quantity, inputs, expected as printed, printed_to, source,
 * seen, and where half the last digit is not enough a tolerance and why.
 */
public final class Published {
    private static final int EXPECTED = 3;
    private static final int PRINTED_TO = 4;
    private static final int SOURCE = 5;
    private static final int TOLERANCE = 7;
    private static final int WHY = 8;

    /** Half a unit of floating point beyond half a digit: 0.05 itself is not a double. */
    private static final double ROUNDING = 1e-9;

    private Published() {}

    public static void check(ArgumentsAccessor row, Map<String, ToDoubleFunction<double[]>> quantities) {
        String quantity = row.getString(1);
        assertThat(quantities).containsKey(quantity);
        double computed = quantities.get(quantity).applyAsDouble(numbers(row.getString(2)));

        assertThat(computed).as(row.getString(0) + ", " + row.getString(SOURCE)).isCloseTo(row.getDouble(EXPECTED),
                within(tolerance(row) + ROUNDING));
    }

    private static double tolerance(ArgumentsAccessor row) {
        if (row.size() > TOLERANCE && row.get(TOLERANCE) != null) {
            assertThat(row.getString(WHY)).as("a wider tolerance says why").isNotBlank();
            return row.getDouble(TOLERANCE);
        }
        return row.getDouble(PRINTED_TO) / 2;
    }

    private static double[] numbers(String inputs) {
        return Stream.of(inputs.trim().split(" +")).mapToDouble(Double::parseDouble).toArray();
    }
}
