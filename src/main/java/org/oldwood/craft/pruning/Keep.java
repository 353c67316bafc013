package org.oldwood.craft.pruning;

import java.util.List;
import java.util.stream.IntStream;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Stems;
import org.oldwood.store.Fields;

/**
 * How many stems of each age stay after the winter's pruning. Lists begin with age 1.
 *
 * @param stems the number aimed at
 * @param least the fewest that print allows
 * @param total the fewest and the most of all ages together; empty for the sums of each
 */
public record Keep(List<Integer> stems, List<Integer> least, List<Integer> most, List<Integer> total,
        List<String> sources, Seen seen, String note) implements Checked {

    public Keep {
        least = least.isEmpty() ? stems : least;
        most = most.isEmpty() ? stems : most;
    }

    @Override
    public void check(Fields fields) {
        boolean rises = stems.size() == least.size() && stems.size() == most.size() && IntStream.range(0, stems.size())
                .allMatch(i -> least.get(i) <= stems.get(i) && stems.get(i) <= most.get(i));
        fields.tellIf(!rises || stems.isEmpty(), "stems", "stems-outside-range");
    }

    /** The fewest of all ages together. */
    int totalLeast() {
        return total.isEmpty() ? least.stream().mapToInt(Integer::intValue).sum() : total.get(0);
    }

    /** The number aimed at for that age; 0 beyond the last. */
    public int of(int age) {
        return age <= stems.size() ? stems.get(age - 1) : 0;
    }

    /** The numbers aimed at from {@code youngest} to {@code oldest}, both included. */
    int between(int youngest, int oldest) {
        return IntStream.rangeClosed(youngest, Math.min(oldest, stems.size())).map(this::of).sum();
    }

    /** The structure aimed at. */
    public Stems target() {
        return Stems.of(stems.stream().mapToInt(it -> it).toArray());
    }
}
