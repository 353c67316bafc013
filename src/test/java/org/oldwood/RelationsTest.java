package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.store.Json;

/**
 * What must hold among the figures themselves, with the reason. Most figures that no print gives are ours; that they
 * are right none of this shows, but that none of them stands alone against the others.
 */
class RelationsTest {
    private static final List<String> CROPS = names("crops/index.json/crops");

    /** Every number and day of the data by its place. */
    private static final Map<String, String> ALL = new TreeMap<>();

    static {
        Path data = Path.of("src/main/resources/org/oldwood");
        try (Stream<Path> files = Files.walk(data)) {
            files.map(path -> data.relativize(path).toString())
                    .filter(name -> name.matches("(crops|rules|materials|season)/.*json|[a-z]+[.]json"))
                    .forEach(name -> leaves(name, SafetyFiguresTest.at(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<String[]> same() { return table("same.txt"); }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void same(String places, String why) {
        Map<String, Set<String>> found = new HashMap<>();
        int size = 0;
        for (String place : matching(places).keySet()) {
            found.computeIfAbsent(part(places, place), part -> new TreeSet<>()).add(ALL.get(place));
            size++;
        }
        assertThat(size).as(places).isGreaterThan(found.size());
        assertThat(found).as(why).allSatisfy((part, values) -> assertThat(values).hasSize(1));
    }

    private static String part(String places, String place) {
        Matcher matcher = Pattern.compile(places).matcher(place);
        return places.contains("(?<of>") && matcher.matches() ? matcher.group("of") : "";
    }

    static Stream<String[]> middle() { return table("middle.txt"); }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource
    void middle(String places, String figure, String one, String other, String why) {
        Set<String> found = matching(places + "/" + figure).keySet();
        assertThat(found).as(places).isNotEmpty();
        assertThat(found).as(why).allSatisfy(place -> {
            String of = place.substring(0, place.lastIndexOf('/') + 1);
            assertThat(number(place)).as(place).isCloseTo((number(of + one) + number(of + other)) / 2, within(1e-9));
        });
    }

    /** No more roots, runs off or feeds than there is; none of these is a choice. */
    @ParameterizedTest
    @CsvSource({"crops/.*/survival/.*/rate/(is|low|high),100", "surfaces.json/.*/coefficient/(is|low|high),1",
            "materials/feeds.json/.*/firstYear/.*,1", "feeding.json/winter/left.*,1",
            "soils.json/textures/.*/(fieldCapacity|wiltingPoint)/(is|low|high),1"})
    void a_part_is_not_more_than_the_whole(String places, double whole) {
        assertThat(matching(places)).hasSizeGreaterThan(4)
                .allSatisfy((place, part) -> assertThat(Double.parseDouble(part)).as(place).isBetween(0.0, whole));
    }

    /** What is given in parts is given whole. */
    @Test
    void the_dressings_of_a_year_are_the_whole_of_it() {
        Map<String, Double> whole = new TreeMap<>();
        matching("feeding.json/timings/.*/share").forEach((place, share) -> whole
                .merge(place.replaceAll("/[^/]+/share", ""), Double.parseDouble(share), Double::sum));
        assertThat(whole).hasSizeGreaterThan(3).allSatisfy((dressings, all) -> assertThat(all).as(dressings).isOne());
    }

    /**
     * How many plants a rate weighs, where that is worked out: as many as leave nine lots in ten between its ends, by the
     * normal law, p (1 - p) (2 · 1.645 / (high - low))² - 1.
     */
    @Test
    void a_rate_weighs_as_much_as_its_range_says() {
        int held = 0;
        for (String crop : CROPS) {
            for (String weight : matching("crops/%s/cuttings.json/methods/.*/weight/is".formatted(crop)).keySet()) {
                String place = weight.replace("/is", "");
                if (((Json.Obj) SafetyFiguresTest.at(place)).members().get("seen") instanceof Json.Text seen
                        && seen.value().equals("computed")) {
                    String rate = place.replace("weight", "rate/");
                    double is = number(rate + "is") / 100;
                    double wide = (number(rate + "high") - number(rate + "low")) / 100;
                    assertThat(number(weight)).as(place).isCloseTo(is * (1 - is) * Math.pow(2 * 1.645 / wide, 2) - 1,
                            within(1.0));
                    held++;
                }
            }
        }
        assertThat(held).isEqualTo(9);
    }

    private static double number(String place) {
        return Double.parseDouble(Optional.ofNullable(ALL.get(place)).orElseThrow());
    }

    /** The flower lasts as long by the calendar as in the model, so that both tell of one plant. */
    @ParameterizedTest
    @CsvSource({"first-flower,full-flower", "first-flower,petal-fall"})
    void the_calendar_flowers_as_long_as_the_model(String from, String to) {
        List<String> crops = CROPS.stream().filter(crop -> !crop.startsWith("autumn"))
                .filter(crop -> ALL.containsKey("crops/%s/stages.json/models/%s/days/is".formatted(crop, to))).toList();
        assertThat(crops).hasSizeGreaterThan(6);
        assertThat(crops).allSatisfy(crop -> assertThat((double) day(crop, to) - day(crop, from)).as(crop)
                .isCloseTo(number("crops/%s/stages.json/models/%s/days/is".formatted(crop, to)), within(1.0)));
    }

    /** The calendar is for years that nobody saw: it is told in whole weeks. */
    @Test
    void a_date_of_the_calendar_is_as_wide_as_whole_weeks() {
        Map<String, String> widths = matching("crops/[^/]+/stages.json/calendar/[^/]+/plusMinusDays");
        assertThat(widths).hasSizeGreaterThan(100)
                .allSatisfy((place, width) -> assertThat(Double.parseDouble(width) % 7).as(place).isZero());
    }

    /** Crops that nobody told apart have the same days between two stages. */
    @ParameterizedTest
    @CsvSource({"bud-burst,first-leaves,.*", "bud-swell,bud-burst,.*currant|gooseberry|jostaberry",
            "bud-swell,bud-burst,.*blackberry|.*raspberry", "first-flower,full-flower,.*currant|gooseberry|jostaberry",
            "full-flower,petal-fall,.*currant|gooseberry|jostaberry",
            "full-flower,petal-fall,(semi-)?erect-blackberry"})
    void stages_of_the_calendar_are_as_far_apart(String from, String to, String crops) {
        assertThat(CROPS.stream().filter(crop -> crop.matches(crops) && ALL.containsKey(date(crop, from)))
                .map(crop -> day(crop, to) - day(crop, from)).distinct()).hasSize(1);
    }

    private static int day(String crop, String stage) {
        return LocalDate.parse("2027-" + ALL.get(date(crop, stage))).getDayOfYear();
    }

    private static String date(String crop, String stage) {
        return "crops/%s/stages.json/calendar/%s/north".formatted(crop, stage);
    }

    /**
     * A bush in order has the fewest or the most stems of each age; what is older than the oldest kept is spent. The
     * totals of seven ways are no sums of their ages, and are not held here.
     */
    @Test
    void ages_add_up_to_the_bush() {
        Set<String> ownTotals = Set.of("blackcurrant/half-young", "blackcurrant/eight-to-ten", "blueberry/six-ages",
                "blueberry/two-oldest", "blueberry/one-to-four", "blueberry/half-at-once", "redcurrant/two-to-four");
        int schools = 0;
        for (String place : matching("crops/[^/]+/pruning.json/forms/stool/schools/[^/]+/keep/stems/0").keySet()) {
            String school = place.replace("/keep/stems/0", "");
            List<Double> stems = list(school + "/keep/stems");
            List<Double> least = list(school + "/keep/least");
            List<Double> most = list(school + "/keep/most");
            List<Double> total = list(school + "/keep/total");
            String name = school.replaceAll("crops/(.*)/pruning.*schools", "$1");
            double fewest = sum(least.isEmpty() ? stems : least);
            double greatest = sum(most.isEmpty() ? stems : most);
            String sums = fewest == greatest ? "%.0f".formatted(fewest) : "%.0f %.0f".formatted(fewest, greatest);
            if (!ownTotals.contains(name)) {
                assertThat(total.stream().map("%.0f"::formatted).collect(Collectors.joining(" "))).as(name)
                        .isEqualTo(sums);
            }
            String spent = ALL.get(school + "/spentAge/is");
            assertThat(spent).as(name + ": spent age").isEqualTo(Double.toString(stems.size() + 1));
            schools++;
        }
        assertThat(schools).isEqualTo(20);
    }

    /** The best age counts as one, the range holds the figure, and ages after the best bear ever less. */
    @Test
    void crop_by_age_rises_to_one_and_falls() {
        Map<String, String> firsts = matching("crops/[^/]+/yield.json/(wood|frames/[^/]+)/weights/0");
        assertThat(firsts).hasSizeGreaterThan(10);
        for (String first : firsts.keySet()) {
            String wood = first.replace("/weights/0", "");
            List<Double> weights = list(wood + "/weights");
            int best = weights.indexOf(1.0);
            assertThat(Collections.max(weights)).as(wood).isEqualTo(1);
            assertThat(weights.subList(0, best)).as(wood).isSorted();
            assertThat(weights.subList(best, weights.size())).as(wood).isSortedAccordingTo(Collections.reverseOrder());
            assertThat(Collections.max(list(wood + "/most"))).as(wood).isEqualTo(1);
            for (int age = 0; age < weights.size(); age++) {
                assertThat(list(wood + "/least").get(age)).as(wood).isLessThanOrEqualTo(weights.get(age));
                assertThat(list(wood + "/most").get(age)).as(wood).isGreaterThanOrEqualTo(weights.get(age));
            }
        }
    }

    /** Shares of a full crop rise from year to year and end with the whole. */
    @Test
    void crop_by_year_rises_to_the_whole() {
        matching("crops/[^/]+/yield.json/series/[^/]+/percent/0").keySet().forEach(first -> {
            List<Double> percent = list(first.replaceAll("/0$", ""));
            assertThat(percent).as(first).isSorted().endsWith(100.0);
            assertThat(percent.get(percent.size() - 2)).as(first).isLessThan(100);
        });
    }

    private static Stream<String[]> table(String name) {
        return SafetyFiguresTest.lines(Path.of("src/test/resources/reference", name))
                .filter(line -> !line.startsWith("#")).map(line -> line.split(" ; "));
    }

    private static double sum(List<Double> values) { return values.stream().mapToDouble(each -> each).sum(); }

    private static List<Double> list(String place) {
        List<Double> found = new ArrayList<>();
        for (String value = ALL.get(place + "/0"); value != null; value = ALL.get(place + "/" + found.size())) {
            found.add(Double.valueOf(value));
        }
        return found;
    }

    private static Map<String, String> matching(String places) {
        Map<String, String> found = new HashMap<>();
        Predicate<String> wanted = Pattern.compile(places).asMatchPredicate();
        ALL.forEach((place, value) -> {
            if (wanted.test(place)) { found.put(place, value); }
        });
        return found;
    }

    private static void leaves(String place, Json value) {
        if (value instanceof Json.Num number) { ALL.put(place, Double.toString(number.value())); }
        if (value instanceof Json.Text text && text.value().matches("\\d\\d-\\d\\d")) { ALL.put(place, text.value()); }
        SafetyFiguresTest.children(value).forEach(each -> leaves(place + "/" + each.getKey(), each.getValue()));
    }

    private static List<String> names(String place) {
        return SafetyFiguresTest.children(SafetyFiguresTest.at(place)).map(Map.Entry::getValue)
                .map(each -> ((Json.Text) each).value()).toList();
    }
}
