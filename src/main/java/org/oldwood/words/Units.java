package org.oldwood.words;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.oldwood.words.Measure.Scale;

/**
 * The units in which a person thinks. All texts are made in metric units, and a finished text is put into the person's
 * own at the last moment, so that sentences of data files, of rules and of the program are told in one way. Records,
 * files and JSON stay metric.
 */
public enum Units {
    METRIC,
    /** As gardeners in Britain have them: sq yd, oz per sq yd, imperial gallons. */
    IMPERIAL,
    /** US customary: sq ft, lb per 100 sq ft, US gallons, cups. */
    US;

    private static final String NUMBER = "[−-]?\\d{1,9}(?:\\.\\d{1,9})?";
    private static final String NUTRIENT = "(?:N|P2O5|K2O|MgO|CaO|S) " + NUMBER;

    /** {@code 5 to 10 cm}, {@code -2.2 °C}, {@code N 5, K2O 12 g/m²}, {@code 8 canes a metre}; then a group a unit. */
    private static final Pattern TOLD = Pattern.compile(
            "(?<![\\w.,/#−–-])((?:between )?%1$s(?:(?: to | or |-|–| by | × |(?<=between %1$s) and )(?:about |at most )?%1$s)*|%2$s(?:, %2$s)*)([ \\u00a0\\u202f]?|(?: [a-z]{1,15}){1,2} (?=(?:a|per|to the|on a) metre))(?:%3$s)(?![\\w/·²³])"
                    .formatted(NUMBER, NUTRIENT, Measure.ALL.stream().map(measure -> "(" + measure.written() + ")")
                            .collect(Collectors.joining("|"))));

    private static final int FIRST_UNIT = 3;
    private static final Pattern ONE = Pattern.compile("(?<![A-Za-z0-9.])[−-]?\\d+(?:\\.\\d+)?(?![A-Za-z0-9])");
    private static final Pattern SPOONS = Pattern.compile("(\\d+(?:\\.\\d+)?) level 10 ml spoons?");
    private static final Map<String, String> NOTED_IN = Map.of("grams", "GRAM", "kg", "KILOGRAM", "litres", "LITRE",
            "depthCm", "CENTIMETRE");
    private static final Pattern NOTED = Pattern
            .compile("\\b(grams|kg|litres|depthCm|lengthM|metres) (\\d+(?:\\.\\d+)?)(?![\\w.]| [a-z])");
    private static final Pattern TAG = Pattern.compile("(?s)<(style|script)\\b.*?</\\1>|<[^>]*>");
    private static final double SPOON_ML = 10;
    private static final double TABLESPOON_ML = 15;
    private static final double TEASPOONS = 3;
    private static final int OUNCES = 16;

    /** By its word in {@code garden.json} and on the command line. */
    public static Optional<Units> of(String key) {
        return Arrays.stream(values()).filter(units -> units.key().equals(key)).findFirst();
    }

    public static List<String> keys() { return Arrays.stream(values()).map(Units::key).toList(); }

    public String key() { return name().toLowerCase(Locale.ROOT); }

    /** A text of metric amounts in these units, each rounded as one would measure or weigh it. */
    public String said(String text) {
        if (this == METRIC) { return text; }
        String plain = text
                .replace("1 mm on 1 m² is 1 l",
                        this == US ? "1 in on 1 sq ft is 0.62 gal" : "1 in on 1 sq yd is 4.67 gal")
                .replace("each °C", "each 1.8 °F").replace("half a metre", this == US ? "20 in" : "half a yard");
        plain = SPOONS.matcher(plain).replaceAll(match -> spoons(Double.parseDouble(match.group(1))));
        plain = NOTED.matcher(plain).replaceAll(match -> noted(match.group(1), match.group(2)));
        plain = TOLD.matcher(plain).replaceAll(match -> Matcher.quoteReplacement(told(match)));
        return plain.replace("per metre", "per foot").replace("per m²", this == US ? "per sq ft" : "per sq yd");
    }

    /** The same of a page: its words, not its tags. */
    public String saidOnPage(String page) {
        if (this == METRIC) { return page; }
        StringBuilder said = new StringBuilder();
        int from = 0;
        Matcher tags = TAG.matcher(page);
        while (tags.find()) {
            said.append(said(page.substring(from, tags.start()))).append(tags.group());
            from = tags.end();
        }
        return said.append(said(page.substring(from))).toString();
    }

    /** A value of an entry behind its key, as one might type it. */
    private String noted(String key, String value) {
        return key + " " + told(Measure.of(NOTED_IN.getOrDefault(key, "METRE")), value, " ");
    }

    private String spoons(double spoons) {
        if (this == US) { return told(Measure.of("MILLILITRE"), Words.fixed(spoons * SPOON_ML, 0), " level "); }
        double tablespoons = spoons * SPOON_ML / TABLESPOON_ML;
        return tablespoons < 1 ? Words.fixed(Words.nearest(tablespoons * TEASPOONS, 0.5), 1) + " level tsp"
                : Words.fixed(Words.nearest(tablespoons, 0.5), 1) + " level tbsp";
    }

    private String told(MatchResult match) {
        int unit = FIRST_UNIT;
        while (match.group(unit) == null) {
            unit++;
        }
        Measure measure = Measure.ALL.get(unit - FIRST_UNIT);
        return told(measure, match.group(1), match.group(2).isEmpty() ? " " : match.group(2));
    }

    /** Numbers that share a unit, on the scale that suits the greatest of them. */
    private String told(Measure measure, String numbers, String gap) {
        double most = ONE.matcher(numbers).results().mapToDouble(one -> Math.abs(number(one.group()))).max().orElse(0);
        Scale scale = measure.scale(this, most);
        if (scale.unit().equals("lb") && measure.on(scale, most) < 10
                && ONE.matcher(numbers).replaceFirst("").isEmpty()) {
            return pounds(measure.on(scale, number(numbers)));
        }
        String said = ONE.matcher(numbers)
                .replaceAll(one -> Words.amount(measure.rounded(scale, measure.on(scale, number(one.group())))));
        boolean single = said.equals("1") && scale.unit().matches("cups|miles|acres");
        return said + gap + (single ? scale.unit().substring(0, scale.unit().length() - 1) : scale.unit());
    }

    /** {@code 3 lb 4 oz}; of more than a few pounds, to the quarter. */
    private static String pounds(double pounds) {
        long ounces = pounds < 4 ? Math.round(pounds * OUNCES) : Math.round(pounds * 4) * OUNCES / 4;
        return ounces % OUNCES == 0 ? ounces / OUNCES + " lb"
                : "%s lb %s oz".formatted(ounces / OUNCES, ounces % OUNCES);
    }

    private static double number(String text) { return Double.parseDouble(text.replace('−', '-')); }
}
