package org.oldwood.crop;

import java.util.List;
import java.util.Optional;
import org.oldwood.store.Fields;

/**
 * A figure of agronomy with its range, unit, sources and mark. In the data: {@code {"is": 3.5, "low": 1.5, "high": 5,
 * "unit": "kg/bush", "source": "key", "seen": "read"}}.
 *
 * @param is the default value
 * @param low the least value that the sources give; equals {@code is} where they give no range
 * @param high the greatest value that the sources give
 * @param unit the unit, {@code kg/bush} for example; {@code 1} for a plain number
 * @param sources source keys, at least one
 * @param seen how it came into the data
 * @param note what the reader of the figure must know; may be empty
 */
public record Figure(double is, double low, double high, String unit, List<String> sources, Seen seen, String note) {

    public Figure {
        sources = List.copyOf(sources);
    }

    /** Reads the object under {@code key}, which must be there. */
    public static Figure read(Fields parent, String key) {
        return optional(parent, key).orElseGet(() -> {
            parent.tell(key, "missing-figure");
            return new Figure(0, 0, 0, "1", List.of("oldwood"), Seen.ASSUMED, "");
        });
    }

    /** Reads the object under {@code key}, if it is there. */
    public static Optional<Figure> optional(Fields parent, String key) {
        return parent.object(key).map(Figure::of);
    }

    /** Reads a figure from its object. */
    public static Figure of(Fields fields) {
        double is = fields.number("is", -1e9, 1e9);
        double low = fields.number("low", -1e9, 1e9, is);
        double high = fields.number("high", -1e9, 1e9, is);
        Figure figure = new Figure(is, low, high, fields.text("unit"), fields.texts("source"),
                Seen.parse(fields.oneOf("seen", Seen.keys())), fields.text("note", ""));
        fields.tellIf(figure.sources.isEmpty(), "source", "missing-source of-figure");
        fields.tellIf(low > is || is > high, "is", "figure-outside-range", is);
        fields.done();
        return figure;
    }

    /** {@code 3.5 kg/bush (our assumption)}: with its mark where it was not read in print. */
    public String inWords() {
        return plain() + seen.beside();
    }

    /**
     * The value without a needless decimal point, then the unit: {@code 3.5 kg/bush}; for where its mark stands apart.
     */
    public String plain() {
        String number = is == Math.rint(is) ? Long.toString((long) is) : Double.toString(is);
        return unit.equals("1") ? number : "%s %s".formatted(number, unit.replace("m2", "m²").replace("m3", "m³"));
    }
}
