package org.oldwood.words;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads amounts as a person types them, {@code 4 oz}, {@code 5 ft 6 in} or {@code 45F}, into a metric unit. */
public final class Typed {
    private static final Pattern PART = Pattern
            .compile("\\s*([−-]?\\d+(?:\\.\\d+)?)\\s*([^\\d\\s.][^\\d]*?)?\\s*(?=[\\d]|$)");

    /** What can be measured, with what one would write for it. */
    private enum Kind {
        WEIGHT("a weight such as 250 g, 4 oz or 2 lb 8 oz"),
        VOLUME("a volume such as 10 l, 2 gal or 3 pt"),
        LENGTH("a length such as 5 cm, 1.5 m, 2 in or 5 ft 6 in"),
        AREA("an area such as 12 m2, 130 sq ft or 14 sq yd"),
        SPEED("a speed such as 2 m/s or 5 mph"),
        TEMPERATURE("a temperature such as 7 C or 45 F");

        private final String example;

        Kind(String example) { this.example = example; }
    }

    /** How much of the kind's metric unit one is, in metric, imperial and US units; 0 where it is not used. */
    private record Unit(Kind kind, double metric, double imperial, double us) {
        double in(Units units) { return units == Units.US ? us : units == Units.IMPERIAL ? imperial : metric; }
    }

    private static final Map<String, Unit> UNITS = new LinkedHashMap<>();

    static {
        for (String[] row : Measure.TYPED) {
            double[] much = Stream.of(row).skip(3).mapToDouble(Measure::reckoned).toArray();
            Unit unit = new Unit(Kind.valueOf(row[1]), much[0], much[much.length / 2], much[much.length - 1]);
            Stream.of(row[2].split(", ", -1)).forEach(name -> UNITS.put(name, unit));
        }
    }

    /** What stands for a metric unit in a garden of other units. */
    private static final Map<String, String> OWN = Map.of("g", "oz", "kg", "lb", "l", "gal", "cm", "in", "mm", "in",
            "m", "ft", "m/s", "mph", "°C", "°f");

    private Typed() {}

    public static boolean isUnit(String name) { return UNITS.containsKey(name); }

    /** What a bare number means to a person with these units, where a metric program would take this unit. */
    public static String own(String metric, Units units) {
        return units == Units.METRIC ? metric
                : metric.equals("m²") ? (units == Units.US ? "sq ft" : "sq yd") : OWN.getOrDefault(metric, metric);
    }

    /**
     * An amount in the unit {@code metric}.
     *
     * @param bare the unit of a number without one
     * @param units whose gallons and pints they are
     * @throws IllegalArgumentException with what may be written instead
     */
    public static double of(String text, String metric, String bare, Units units) {
        Unit wanted = UNITS.get(metric.toLowerCase(Locale.ROOT));
        if (wanted == null) {
            throw new IllegalArgumentException("must be a number without a unit, but is \"%s\"".formatted(text));
        }
        double sum = 0;
        int end = 0;
        Matcher part = PART.matcher(text);
        while (part.find() && part.start() == end && !part.group().isEmpty()) {
            String name = Optional.ofNullable(part.group(2)).orElse(end == 0 ? bare : "").toLowerCase(Locale.ROOT);
            Unit unit = UNITS.get(name);
            if (unit == null || unit.kind != wanted.kind || (end > 0 && wanted.kind == Kind.TEMPERATURE)) {
                throw wrong(text, wanted.kind, "");
            }
            if (unit.in(units) == 0) {
                throw wrong(text, wanted.kind, name.startsWith("cup") ? ""
                        : ". This measure differs between Britain and the United States; give --units or write litres");
            }
            double value = Double.parseDouble(part.group(1).replace('−', '-'));
            sum += name.endsWith("f") && unit.kind == Kind.TEMPERATURE ? (value - 32) * unit.metric
                    : value * unit.in(units);
            end = part.end();
        }
        if (end == 0 || end < text.length()) { throw wrong(text, wanted.kind, ""); }
        return sum / wanted.metric;
    }

    private static IllegalArgumentException wrong(String text, Kind kind, String more) {
        return new IllegalArgumentException("must be %s, but is \"%s\"%s".formatted(kind.example, text, more));
    }
}
