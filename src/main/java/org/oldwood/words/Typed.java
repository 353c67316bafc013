package org.oldwood.words;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads amounts as a person types them, {@code 4 oz}, {@code 5 ft 6 in} or {@code 45F}, into a metric unit. */
public final class Typed {
    private static final Pattern PART =
            Pattern.compile("\\s*([−-]?\\d+(?:\\.\\d+)?)\\s*([^\\d\\s.][^\\d]*?)?\\s*(?=[\\d]|$)");

    /** What can be measured, with what one would write for it. */
    private enum Kind {
        WEIGHT("a weight such as 250 g, 4 oz or 2 lb 8 oz"),
        VOLUME("a volume such as 10 l, 2 gal or 3 pt"),
        LENGTH("a length such as 5 cm, 1.5 m, 2 in or 5 ft 6 in"),
        AREA("an area such as 12 m2, 130 sq ft or 14 sq yd"),
        SPEED("a speed such as 2 m/s or 5 mph"),
        TEMPERATURE("a temperature such as 7 C or 45 F");

        private final String example;

        Kind(String example) {
            this.example = example;
        }
    }

    /** How much of the kind's metric unit one is, in metric, imperial and US units; 0 where it is not used. */
    private record Unit(Kind kind, double metric, double imperial, double us) {
        Unit(Kind kind, double everywhere) {
            this(kind, everywhere, everywhere, everywhere);
        }

        double in(Units units) {
            return units == Units.US ? us : units == Units.IMPERIAL ? imperial : metric;
        }
    }

    private static final Map<String, Unit> UNITS = new LinkedHashMap<>();

    static {
        put(Kind.WEIGHT, 1, "g", "gram", "grams");
        put(Kind.WEIGHT, 1000, "kg");
        put(Kind.WEIGHT, Measure.OUNCE, "oz", "ounce", "ounces");
        put(Kind.WEIGHT, Measure.POUND, "lb", "lbs", "pound", "pounds");
        put(Kind.VOLUME, 1, "l", "litre", "litres", "liter", "liters");
        put(Kind.VOLUME, 0.001, "ml");
        ofGallon(1, "gal", "gallon", "gallons");
        ofGallon(4, "qt", "quart", "quarts");
        ofGallon(8, "pt", "pint", "pints");
        UNITS.put("fl oz", new Unit(Kind.VOLUME, 0, Measure.IMPERIAL_GALLON / 160, Measure.US_GALLON / 128));
        put(Kind.VOLUME, Measure.US_GALLON, "us gal");
        put(Kind.VOLUME, Measure.IMPERIAL_GALLON, "imp gal");
        for (String cup : new String[] {"cup", "cups"}) {
            UNITS.put(cup, new Unit(Kind.VOLUME, 0, 0, Measure.US_GALLON / 16));
        }
        put(Kind.LENGTH, 1, "m", "metre", "metres");
        put(Kind.LENGTH, 0.01, "cm");
        put(Kind.LENGTH, 0.001, "mm");
        put(Kind.LENGTH, Measure.FOOT / 12, "in", "inch", "inches", "\"");
        put(Kind.LENGTH, Measure.FOOT, "ft", "foot", "feet", "'");
        put(Kind.LENGTH, 3 * Measure.FOOT, "yd", "yard", "yards");
        put(Kind.AREA, 1, "m²", "m2", "sq m");
        put(Kind.AREA, Measure.SQUARE_FOOT, "sq ft", "ft2", "ft²", "square feet");
        put(Kind.AREA, 9 * Measure.SQUARE_FOOT, "sq yd", "yd2", "yd²", "square yards");
        put(Kind.SPEED, 1, "m/s");
        put(Kind.SPEED, 0.44704, "mph");
        put(Kind.TEMPERATURE, 1, "°c", "c");
        put(Kind.TEMPERATURE, 5.0 / 9, "°f", "f");
    }

    /** What stands for a metric unit in a garden of other units. */
    private static final Map<String, String> OWN =
            Map.of("g", "oz", "kg", "lb", "l", "gal", "cm", "in", "mm", "in", "m", "ft", "m/s", "mph", "°C", "°f");

    private Typed() {}

    private static void put(Kind kind, double per, String... names) {
        for (String name : names) {
            UNITS.put(name, new Unit(kind, per));
        }
    }

    private static void ofGallon(double part, String... names) {
        for (String name : names) {
            UNITS.put(name, new Unit(Kind.VOLUME, 0, Measure.IMPERIAL_GALLON / part, Measure.US_GALLON / part));
        }
    }

    /** What a bare number means to a person with these units, where a metric program would take this unit. */
    public static String own(String metric, Units units) {
        return units == Units.METRIC
                ? metric
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
            String name = Optional.ofNullable(part.group(2))
                    .orElse(end == 0 ? bare : "")
                    .toLowerCase(Locale.ROOT);
            Unit unit = UNITS.get(name);
            if (unit == null || unit.kind != wanted.kind || (end > 0 && wanted.kind == Kind.TEMPERATURE)) {
                throw wrong(text, wanted.kind, "");
            }
            if (unit.in(units) == 0) {
                throw wrong(
                        text,
                        wanted.kind,
                        name.startsWith("cup")
                                ? ""
                                : ". This measure differs between Britain and the United States; give --units or write"
                                        + " litres");
            }
            double value = Double.parseDouble(part.group(1).replace('−', '-'));
            sum += name.endsWith("f") && unit.kind == Kind.TEMPERATURE
                    ? (value - 32) * unit.metric
                    : value * unit.in(units);
            end = part.end();
        }
        if (end == 0 || end < text.length()) {
            throw wrong(text, wanted.kind, "");
        }
        return sum / wanted.metric;
    }

    private static IllegalArgumentException wrong(String text, Kind kind, String more) {
        return new IllegalArgumentException("must be %s, but is \"%s\"%s".formatted(kind.example, text, more));
    }
}
