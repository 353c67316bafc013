package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.craft.feeding.liming.Acidifier;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.store.Problem;

class FeedArithmeticTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/feed-arithmetic.csv", useHeadersInDisplayName = true)
    void one_and_two_materials_as_in_print(ArgumentsAccessor row) {
        List<Feed> feeds = new ArrayList<>();
        feeds.add(Data.plain("first", row.getDouble(1), row.getDouble(2), row.getDouble(3)));
        if (row.get(4) != null) {
            feeds.add(Data.plain("second", row.getDouble(4), row.getDouble(5), row.getDouble(6)));
        }
        Nutrients wanted = new Nutrients(row.getDouble(7), row.getDouble(8), row.getDouble(9), 0);
        List<Nutrient> exactly = Stream.of(row.getString(10).split("\\+")).map(Nutrient::valueOf).toList();

        double[] amounts = Mix.exact(feeds.stream().map(feed -> feed.gives(1)).toList(), exactly, wanted).orElseThrow();

        assertThat(amounts[0]).as(row.getString(14)).isCloseTo(row.getDouble(11), within(row.getDouble(13)));
        if (feeds.size() > 1) { assertThat(amounts[1]).isCloseTo(row.getDouble(12), within(row.getDouble(13))); }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/organic-supply.csv", useHeadersInDisplayName = true)
    void organic_materials_as_in_print(ArgumentsAccessor row) {
        double amount = row.getDouble(2);
        Feed feed = Data.shared("heap", row.getDouble(3), row.getDouble(4), row.getDouble(5), row.getDouble(6),
                row.getDouble(7), row.getDouble(8));
        Nutrients need = new Nutrients(row.getDouble(9), row.getDouble(10), row.getDouble(11), 0);

        Nutrients computed = switch (row.getString(1)) {
            case "holds" -> feed.holds(amount);
            case "gives" -> feed.gives(amount);
            case "due of total" -> need.minus(feed.gives(amount)).atLeastZero();
            case "surplus of total" -> feed.gives(amount).minus(need).atLeastZero();
            default -> throw new AssertionError(row.getString(1));
        };

        double tolerance = row.getDouble(15);
        assertThat(computed.n()).as(row.getString(16)).isCloseTo(row.getDouble(12), within(tolerance));
        assertThat(computed.p2o5()).isCloseTo(row.getDouble(13), within(tolerance));
        assertThat(computed.k2o()).isCloseTo(row.getDouble(14), within(tolerance));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/reference/household.csv", useHeadersInDisplayName = true)
    void household_measures_follow_from_the_densities_that_were_read(String id, String material, double grams,
            String vessel, double expected, double printedTo, String source) {
        double kgPerLitre = density(material);
        double computed = switch (vessel) {
            case "ML" -> grams / kgPerLitre;
            case "LITRE" -> grams / kgPerLitre / 1000;
            case "small-open", "large-open" -> grams / Data.feed(material).handfuls().get(vessel).is();
            default -> grams / kgPerLitre / 10;
        };

        assertThat(computed).as(source).isCloseTo(expected, within(printedTo / 2));
    }

    private static double density(String material) {
        if (material.startsWith("density ")) { return Double.parseDouble(material.substring("density ".length())); }
        return Data.MATERIALS.feed(material).flatMap(Feed::density)
                .or(() -> Data.MATERIALS.lime(material).flatMap(Lime::density))
                .or(() -> Data.MATERIALS.acidifier(material).flatMap(Acidifier::density)).orElseThrow().is();
    }

    @Test
    void a_material_of_unknown_density_is_told_in_grams_only() {
        assertThat(Household.inWords(100, Data.feed("hoof-and-horn").density())).isEmpty();
    }

    @Test
    void spoons_are_told_in_halves_and_more_in_millilitres() {
        assertThat(Household.inWords(100, Data.feed("sulphate-of-potash").density()))
                .contains("about 7.5 level 10 ml spoons");
        assertThat(Household.inWords(120, Data.feed("sulphate-of-potash").density()))
                .contains("about 90 ml in a measuring jug");
        assertThat(Household.inWords(400, Data.feed("bone-meal").density()))
                .contains("about 450 ml in a measuring jug");
    }

    @Test
    void an_analysis_that_adds_to_130_percent_is_refused() {
        List<Problem> problems = new ArrayList<>();

        Data.read("""
                {"id": "wonder", "name": "wonder", "tags": [],
                 "analysis": {"N": 50, "P2O5": 40, "K2O": 40}}
                """, problems);

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).inWords()).contains("130 %").contains("100 %");
    }

    /** Two nitrogen feeds cannot meet potash; 5 g N and 10 g K2O from 10-0-10 leave less than nothing for 10-0-0. */
    @Test
    void a_mix_that_cannot_be_has_no_answer() {
        Nutrients nitrogen = new Nutrients(0.1, 0, 0, 0);
        Nutrients both = new Nutrients(0.1, 0, 0.1, 0);
        List<Nutrient> exactly = List.of(Nutrient.N, Nutrient.K2O);

        assertThat(Mix.exact(List.of(nitrogen, nitrogen), exactly, new Nutrients(5, 0, 5, 0))).isEmpty();
        assertThat(Mix.exact(List.of(nitrogen, both), exactly, new Nutrients(5, 0, 10, 0))).isEmpty();
        assertThat(Mix.exact(List.of(nitrogen, both), exactly, new Nutrients(10, 0, 5, 0)))
                .hasValueSatisfying(grams -> assertThat(grams).containsExactly(50, 50));
    }
}
