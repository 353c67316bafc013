package org.oldwood.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A unit of the metric system as the program writes it, and what people elsewhere measure instead, as
 * {@code words/measures.txt} lists them with where the factors come from.
 *
 * @param written how it is written in a text: a regular expression
 * @param base how much of the unit that its scales are in
 * @param imperial what one measures on in Britain, the finest first
 * @param us the same in the United States
 */
record Measure(String name, String written, double base, List<Scale> imperial, List<Scale> us) {
    /** Fahrenheit's thermometer shows this where water freezes. */
    private static final double FREEZING_F = 32;

    private static final Map<String, Double> FACTORS = new HashMap<>();

    /** All, those that a text may name by more words first. */
    static final List<Measure> ALL = new ArrayList<>();

    /** Rows of what people type: kind, names, and how much one is, everywhere or in metric, imperial and US units. */
    static final List<String[]> TYPED = new ArrayList<>();

    static {
        Texts.lines("measures.txt").filter(line -> !line.startsWith("#")).map(line -> line.split(" \\| ", -1))
                .forEach(Measure::take);
    }

    private static void take(String[] row) {
        if (row.length == 2) {
            FACTORS.put(row[0], reckoned(row[1]));
        } else if (row[0].equals("typed")) {
            TYPED.add(row);
        } else {
            ALL.add(new Measure(row[0], row[1], Double.parseDouble(row[2]), scales(row[3]),
                    scales(row[row.length - 1])));
        }
    }

    /** A product and quotient of numbers and named factors, {@code lb /1000 /sq-yd}. */
    static double reckoned(String words) {
        double product = 1;
        for (String word : words.split(" ", -1)) {
            String name = word.replaceFirst("^[*/]", "");
            double factor = FACTORS.containsKey(name) ? FACTORS.getOrDefault(name, 0.0) : Double.parseDouble(name);
            product = word.startsWith("/") ? product / factor : product * factor;
        }
        return product;
    }

    private static List<Scale> scales(String text) {
        return Stream.of(text.split("; ", -1)).map(scale -> scale.split(" [=<] ", -1)).map(parts -> new Scale(parts[0],
                reckoned(parts[1]), parts.length > 2 ? reckoned(parts[2]) : Double.POSITIVE_INFINITY)).toList();
    }

    /** By its name in the table. */
    static Measure of(String name) {
        return ALL.stream().filter(measure -> measure.name.equals(name)).findFirst().orElseThrow();
    }

    /** The scale on which somebody would measure so much; nothing at all as two of the unit. */
    Scale scale(Units units, double most) {
        double much = Math.abs((most == 0 ? 2 : most) * base);
        return (units == Units.US ? us : imperial).stream().filter(scale -> much < scale.below).findFirst()
                .orElseThrow();
    }

    private boolean isDegree() { return name.equals("DEGREE"); }

    /** So much on a scale, not rounded. */
    double on(Scale scale, double value) {
        return value * base / scale.per + (isDegree() ? FREEZING_F : 0);
    }

    /** Rounded as one would measure or weigh it. */
    double rounded(Scale scale, double value) {
        if (isDegree()) { return Words.nearest(value, 1); }
        double size = Math.abs(value);
        double step = switch (scale.unit) {
            case "in" -> name.equals("MILLIMETRE") ? size < 0.5 ? 0.01 : size < 1 ? 0.05 : 0.1
                    : size < 1 ? 0.05 : size < 3 ? 0.25 : size < 6 ? 0.5 : 1;
            case "ft" -> size < 30 ? 0.5 : size < 300 ? 1 : 10;
            case "oz" -> size < 0.25 ? 0 : size < 1 ? 0.05 : size < 4 ? 0.25 : 0.5;
            case "lb" -> size < 10 ? 0.25 : size < 50 ? 0.5 : 1;
            case "tsp", "tbsp", "cups", "cu ft", "qt" -> size < 0.25 ? 0 : 0.25;
            case "fl oz", "pt", "gal", "cu yd" -> size < 0.5 ? 0 : size < 5 ? 0.25 : size < 10 ? 0.5 : 1;
            case "lb per 1,000 sq ft" -> size < 10 ? 0.1 : size < 20 ? 0.5 : 1;
            case "sq ft", "sq yd" -> size < 1 ? 0 : size < 20 ? 0.5 : size < 1000 ? 1 : 10;
            case "miles" -> 1;
            default -> size < 1 ? 0 : size < 10 ? 0.1 : 1;
        };
        return step == 0 ? significant(value) : Words.nearest(value, step);
    }

    /** Two digits that count. */
    private static double significant(double value) {
        if (value == 0) { return 0; }
        double unit = Math.pow(10, 1 - Math.floor(Math.log10(Math.abs(value))));
        return Math.rint(value * unit) / unit;
    }

    /**
     * A scale of measuring.
     *
     * @param per how much of the metric unit one of it is
     * @param below up to how much, in the metric unit, one measures on it
     */
    record Scale(String unit, double per, double below) {}
}
