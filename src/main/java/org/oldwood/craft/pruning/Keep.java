package org.oldwood.craft.pruning;

import java.util.List;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * How many stems of each age stay after the winter's pruning. Lists begin with age 1.
 *
 * @param stems the number aimed at
 * @param least the fewest that print allows
 * @param most the most
 * @param totalLeast the fewest of all ages together
 * @param totalMost the most of all ages together
 */
public record Keep(
        List<Integer> stems,
        List<Integer> least,
        List<Integer> most,
        int totalLeast,
        int totalMost,
        List<String> sources,
        Seen seen,
        String note) {

    static Keep read(Fields fields) {
        List<Integer> stems = whole(fields, "stems");
        List<Integer> least = fields.has("least") ? whole(fields, "least") : stems;
        List<Integer> most = fields.has("most") ? whole(fields, "most") : stems;
        List<Integer> total = whole(fields, "total");
        Keep keep = new Keep(
                stems,
                least,
                most,
                total.isEmpty() ? sum(least) : total.get(0),
                total.isEmpty() ? sum(most) : total.get(total.size() - 1),
                fields.texts("source"),
                Seen.parse(fields.oneOf("seen", Seen.keys())),
                fields.text("note", ""));
        keep.check(fields);
        fields.done();
        return keep;
    }

    private void check(Fields fields) {
        boolean even = stems.size() == least.size() && stems.size() == most.size();
        for (int i = 0; even && i < stems.size(); i++) {
            even = least.get(i) <= stems.get(i) && stems.get(i) <= most.get(i);
        }
        if (!even || stems.isEmpty()) {
            fields.wrong(
                    "stems",
                    "stems-outside-range",
                    "must have one number for each age, from \"least\" to \"most\"",
                    "");
        }
    }

    private static List<Integer> whole(Fields fields, String key) {
        return fields.numbers(key).stream().map(Double::intValue).toList();
    }

    private static int sum(List<Integer> numbers) {
        return numbers.stream().mapToInt(Integer::intValue).sum();
    }

    /** The number aimed at for that age; 0 beyond the last. */
    public int of(int age) {
        return age <= stems.size() ? stems.get(age - 1) : 0;
    }

    /** The numbers aimed at from {@code youngest} to {@code oldest}, both included. */
    int between(int youngest, int oldest) {
        int all = 0;
        for (int age = youngest; age <= Math.min(oldest, stems.size()); age++) {
            all += of(age);
        }
        return all;
    }

    /** The structure aimed at. */
    public Stems target() {
        return Stems.of(stems.stream().mapToInt(Integer::intValue).toArray());
    }
}
