package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;

/**
 * What must hold among the figures themselves, with the reason. Most figures that no print gives are ours; that they
 * are right none of this shows, but that none of them stands alone against the others.
 */
class RelationsTest {
    private static final List<String> CROPS = names("crops/index.json/crops");

    /** Every number and day of the data of crops and rules by its place. */
    private static final Map<String, String> ALL = new TreeMap<>();

    static {
        CROPS.forEach(crop -> Stream.of("stages", "cuttings", "water", "pruning", "yield")
                .map(name -> "crops/%s/%s.json".formatted(crop, name))
                .filter(name -> Documents.bundled().read(name).isPresent())
                .forEach(name -> leaves(name, SafetyFiguresTest.at(name))));
        names("rules/index.json/rules").stream().map("rules/%s.json"::formatted)
                .forEach(name -> leaves(name, SafetyFiguresTest.at(name)));
    }

    static Stream<String[]> same() { return table("same.txt"); }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void same(String places, String why) {
        Map<String, String> found = matching(places);
        assertThat(found).as(places).hasSizeGreaterThan(1);
        assertThat(found.values()).as("%s: %s", why, found).containsOnly(found.values().iterator().next());
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
        ALL.forEach((place, value) -> {
            if (place.matches(places)) { found.put(place, value); }
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
