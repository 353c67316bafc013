package org.oldwood.words;

import java.util.List;

/**
 * A unit of the metric system as the program writes it, and what people elsewhere measure instead.
 *
 * <p>Factors after NIST Special Publication 811, appendix B, as the Unicode CLDR tables of units carry them: 1 ft is
 * 0.3048 m, 1 lb 453.59237 g, 1 US gallon 3.785411784 l, 1 imperial gallon 4.54609 l. All are exact.
 */
@SuppressWarnings("ImmutableEnumChecker") // its scales are records of lists that cannot change
enum Measure {
    /** Of ground limestone, which US tables give for 1,000 sq ft. */
    LIMESTONE(
            "g/m²(?= (?:of|as) ground limestone)",
            new Scales(
                    List.of(new Scale("oz per sq yd", Measure.OUNCE / (9 * Measure.SQUARE_FOOT))),
                    List.of(new Scale("lb per 1,000 sq ft", Measure.POUND / (1000 * Measure.SQUARE_FOOT))))),
    GRAM_OF_NITROGEN(
            "g N/m²",
            new Scales(
                    List.of(new Scale("oz N per sq yd", Measure.OUNCE / (9 * Measure.SQUARE_FOOT))),
                    List.of(new Scale("oz N per 100 sq ft", Measure.OUNCE / (100 * Measure.SQUARE_FOOT))))),
    KILOGRAM_PER_SQUARE_METRE(
            "kg/m²|kg (?:a|per) (?:square metre|m²)",
            new Scales(
                    List.of(new Scale("lb per sq yd", Measure.POUND / 1000 / (9 * Measure.SQUARE_FOOT))),
                    List.of(new Scale("lb per 100 sq ft", Measure.POUND / 1000 / (100 * Measure.SQUARE_FOOT))))),
    KILOGRAM_PER_HECTARE(
            "kg/ha",
            new Scales(List.of(new Scale(
                    "lb per acre", 10 * Measure.POUND / (Measure.SQUARE_FEET_PER_ACRE * Measure.SQUARE_FOOT))))),
    TONNE_PER_HECTARE(
            "t/ha",
            new Scales(
                    List.of(new Scale("lb per sq yd", Measure.POUND / 1e5 / (9 * Measure.SQUARE_FOOT) * 1000)),
                    List.of(new Scale("lb per 1,000 sq ft", Measure.POUND / 1e5 / Measure.SQUARE_FOOT)))),
    GRAM_PER_METRE(
            "g/m|g (?:a|per) metre",
            new Scales(
                    List.of(new Scale("oz per yd", Measure.OUNCE / (3 * Measure.FOOT))),
                    List.of(new Scale("lb per 100 ft", Measure.POUND / (100 * Measure.FOOT))))),
    KILOGRAM_PER_METRE(
            "kg/m|kg (?:a|per) metre",
            new Scales(List.of(new Scale("lb per ft", Measure.POUND / 1000 / Measure.FOOT)))),
    LITRE_PER_SQUARE_METRE(
            "l/m²|l (?:a|per) (?:square metre|m²)",
            new Scales(
                    List.of(new Scale("gal per sq yd", Measure.IMPERIAL_GALLON / (9 * Measure.SQUARE_FOOT))),
                    List.of(new Scale("gal per 100 sq ft", Measure.US_GALLON / (100 * Measure.SQUARE_FOOT))))),
    GRAM_PER_LITRE(
            "g/l|g (?:a|per) litre",
            new Scales(
                    List.of(new Scale("oz per gal", Measure.OUNCE / Measure.IMPERIAL_GALLON)),
                    List.of(new Scale("oz per gal", Measure.OUNCE / Measure.US_GALLON)))),
    KILOGRAM_PER_LITRE(
            "kg/l|kg (?:a|per) litre",
            new Scales(
                    List.of(new Scale("lb per gal", Measure.POUND / 1000 / Measure.IMPERIAL_GALLON)),
                    List.of(new Scale("lb per gal", Measure.POUND / 1000 / Measure.US_GALLON)))),
    KILOGRAM_PER_CUBIC_METRE(
            "kg/m[3³]", new Scales(List.of(new Scale("lb per cu ft", Measure.POUND / 1000 / Measure.CUBIC_FOOT)))),
    CENTIMETRE_A_YEAR("cm/year", new Scales(List.of(new Scale("in a year", 2.54)))),
    MILLIMETRE_A_DAY("mm/day", new Scales(List.of(new Scale("in a day", 25.4)))),
    MILLIMETRE_PER_METRE("mm (?:a|per) metre|mm/m", new Scales(List.of(new Scale("in per ft", 1000.0 / 12)))),
    EACH_METRE("(?:a|per|to the|on a) metre", new Scales(List.of(new Scale("per ft", 1 / Measure.FOOT)))),
    METRE_PER_SECOND("m/s", new Scales(List.of(new Scale("mph", 0.44704)))),
    DEGREE_DAY("°C·d|degree days", new Scales(List.of(new Scale("°F·d", 5.0 / 9)))),
    DEGREE_STEP(
            "°C(?= (?:warmer|colder|cooler|higher|lower|more|less|apart|either way|a day)\\b)",
            new Scales(List.of(new Scale("°F", 5.0 / 9)))),
    DEGREE("°C", new Scales(List.of(new Scale("°F", 5.0 / 9)))),
    GRAM_PER_SQUARE_METRE(
            "g/m²|g (?:a|per) (?:square metre|m²)",
            new Scales(
                    List.of(new Scale("oz per sq yd", Measure.OUNCE / (9 * Measure.SQUARE_FOOT))),
                    List.of(
                            new Scale("oz per 100 sq ft", Measure.OUNCE / (100 * Measure.SQUARE_FOOT), 48.5),
                            new Scale("lb per 100 sq ft", Measure.POUND / (100 * Measure.SQUARE_FOOT))))),
    GRAM("g|grams?", Weight.SCALES),
    KILOGRAM("kg|kilograms?", Weight.SCALES, 1000),
    LITRE("l|litres?", Volume.SCALES),
    MILLILITRE("ml", Volume.SCALES, 0.001),
    CUBIC_METRE(
            "m³",
            new Scales(List.of(
                    new Scale("cu ft", Measure.CUBIC_FOOT, 0.75), new Scale("cu yd", 27 * Measure.CUBIC_FOOT)))),
    MILLIMETRE("mm", new Scales(List.of(new Scale("in", 25.4)))),
    CENTIMETRE("cm|centimetres?", Length.SCALES, 0.01),
    METRE("m|metres?", Length.SCALES),
    KILOMETRE("km", new Scales(List.of(new Scale("miles", 1.609344)))),
    SQUARE_METRE(
            "m²|square metres?",
            new Scales(
                    List.of(new Scale("sq ft", Measure.SQUARE_FOOT, 0.4), new Scale("sq yd", 9 * Measure.SQUARE_FOOT)),
                    List.of(new Scale("sq ft", Measure.SQUARE_FOOT)))),
    HECTARE("ha", new Scales(List.of(new Scale("acres", 0.40468564224))));

    static final double POUND = 453.59237;
    static final double OUNCE = POUND / 16;
    static final double US_GALLON = 3.785411784;
    static final double IMPERIAL_GALLON = 4.54609;
    static final double FOOT = 0.3048;
    static final double SQUARE_FOOT = FOOT * FOOT;
    static final double SQUARE_FEET_PER_ACRE = 43_560;
    static final double CUBIC_FOOT = SQUARE_FOOT * FOOT;

    /** Fahrenheit's thermometer shows this where water freezes. */
    private static final double FREEZING_F = 32;

    private final String written;
    private final Scales scales;
    private final double base;

    Measure(String written, Scales scales) {
        this(written, scales, 1);
    }

    Measure(String written, Scales scales, double base) {
        this.written = written;
        this.scales = scales;
        this.base = base;
    }

    /** How it is written in a text: a regular expression. */
    String written() {
        return written;
    }

    private List<Scale> scales(Units units) {
        return units == Units.US ? scales.us : scales.imperial;
    }

    /** The scale on which somebody would measure so much. */
    Scale scale(Units units, double most) {
        return scales(units).stream()
                .filter(scale -> Math.abs(most * base) < scale.below)
                .findFirst()
                .orElseThrow();
    }

    /** So much on a scale, not rounded. */
    double on(Scale scale, double value) {
        return value * base / scale.per + (this == DEGREE ? FREEZING_F : 0);
    }

    /** Rounded as one would measure or weigh it. */
    double rounded(Scale scale, double value) {
        if (this == DEGREE) {
            return Math.rint(value);
        }
        double size = Math.abs(value);
        double step =
                switch (scale.unit) {
                    case "in" ->
                        this == MILLIMETRE
                                ? size < 0.5 ? 0.01 : size < 1 ? 0.05 : 0.1
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
        return step == 0 ? significant(value) : Math.rint(value / step) * step;
    }

    /** Two digits that count. */
    private static double significant(double value) {
        if (value == 0) {
            return 0;
        }
        double unit = Math.pow(10, 1 - Math.floor(Math.log10(Math.abs(value))));
        return Math.rint(value * unit) / unit;
    }

    /**
     * A scale of measuring.
     *
     * @param unit its name
     * @param per how much of the metric unit one of it is
     * @param below up to how much, in the metric unit, one measures on it
     */
    record Scale(String unit, double per, double below) {
        Scale(String unit, double per) {
            this(unit, per, Double.POSITIVE_INFINITY);
        }
    }

    /** What one measures on, the finest first. */
    private record Scales(List<Scale> imperial, List<Scale> us) {
        Scales(List<Scale> both) {
            this(both, both);
        }
    }

    private static final class Weight {
        static final Scales SCALES = new Scales(
                List.of(new Scale("oz", Measure.OUNCE, Measure.POUND * 0.99), new Scale("lb", Measure.POUND)));
    }

    private static final class Volume {
        static final Scales SCALES = new Scales(
                List.of(
                        new Scale("fl oz", Measure.IMPERIAL_GALLON / 160, 0.28),
                        new Scale("pt", Measure.IMPERIAL_GALLON / 8, 2.2),
                        new Scale("gal", Measure.IMPERIAL_GALLON)),
                List.of(
                        new Scale("tsp", Measure.US_GALLON / 768, 0.0147),
                        new Scale("tbsp", Measure.US_GALLON / 256, 0.059),
                        new Scale("cups", Measure.US_GALLON / 16, 0.9),
                        new Scale("qt", Measure.US_GALLON / 4, 3.6),
                        new Scale("gal", Measure.US_GALLON)));
    }

    private static final class Length {
        static final Scales SCALES =
                new Scales(List.of(new Scale("in", Measure.FOOT / 12, 1.19), new Scale("ft", Measure.FOOT)));
    }
}
