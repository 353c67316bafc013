package org.oldwood.crop;

import java.util.List;
import java.util.stream.IntStream;
import org.oldwood.store.Fields;

/**
 * What a stem bears by its age at the winter before, against a stem of the best age. The first number stands for age 1;
 * the last for all older stems.
 */
public record WoodAge(List<Double> weights, List<Double> least, List<Double> most, List<String> sources, Seen seen,
        String note) implements Checked {

    @Override
    public void check(Fields fields) {
        boolean even = !weights.isEmpty() && least.size() == weights.size() && most.size() == weights.size();
        fields.tellIf(!even, "weights", "uneven-wood-ages");
        boolean rises = even && IntStream.range(0, weights.size())
                .allMatch(i -> least.get(i) <= weights.get(i) && weights.get(i) <= most.get(i));
        fields.tellIf(even && !rises, "weights", "wood-ages-outside");
    }

    /** What a stem of that age bears, ages from 1: at least (0), expected (1), at most (2). */
    public double weight(int age, int which) {
        return List.of(least, weights, most).get(which).get(Math.min(age, weights.size()) - 1);
    }
}
