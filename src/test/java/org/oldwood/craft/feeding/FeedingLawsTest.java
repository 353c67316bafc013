package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.oldwood.craft.feeding.liming.LimingTest;

/** Things that hold whatever the numbers are. */
class FeedingLawsTest {
    @Provide
    Arbitrary<Nutrients> nutrients() {
        Arbitrary<Double> amount = Arbitraries.doubles().between(0, 40);
        return Combinators.combine(amount, amount, amount, amount).as(Nutrients::new);
    }

    @Provide
    Arbitrary<List<Feed>> kept() {
        return Arbitraries.of(Data.MATERIALS.feeds()).list().uniqueElements().ofMaxSize(5);
    }

    @Property
    void need_plus_surplus_is_given_plus_due(
            @ForAll("nutrients") Nutrients need, @ForAll("nutrients") Nutrients given) {
        Balance balance = Balance.of(need, given);

        for (Nutrient each : Nutrient.values()) {
            assertThat(need.of(each) + balance.surplus().of(each))
                    .isCloseTo(given.of(each) + balance.due().of(each), within(1e-9));
            assertThat(balance.due().of(each)).isNotNegative();
            assertThat(balance.surplus().of(each)).isNotNegative();
        }
    }

    @Property
    void more_given_never_means_more_due(
            @ForAll("nutrients") Nutrients need,
            @ForAll("nutrients") Nutrients given,
            @ForAll("nutrients") Nutrients more) {
        Nutrients less = Balance.of(need, given.plus(more)).due();
        Nutrients due = Balance.of(need, given).due();

        for (Nutrient each : Nutrient.values()) {
            assertThat(less.of(each)).isLessThanOrEqualTo(due.of(each));
        }
    }

    @Property(tries = 200)
    void a_recipe_has_no_negative_part_and_never_too_much_nitrogen(
            @ForAll("nutrients") Nutrients due, @ForAll("kept") List<Feed> kept) {
        Recipe recipe = Recipe.best(due, kept, feed -> feed.bulky() ? 3000 : 200);

        assertThat(recipe.parts()).allMatch(part -> part.amount() > 0);
        assertThat(recipe.parts())
                .allMatch(part -> part.amount() <= (part.feed().bulky() ? 3000 : 200) + 1e-6);
        assertThat(recipe.balance().surplus().n()).isLessThan(1e-6);
        assertThat(recipe.gives().plus(recipe.balance().due()).minus(due).sum())
                .isCloseTo(recipe.balance().surplus().sum(), within(1e-6));
    }

    @Property(tries = 200)
    void a_recipe_is_never_worse_than_nothing(@ForAll("nutrients") Nutrients due, @ForAll("kept") List<Feed> kept) {
        Recipe recipe = Recipe.best(due, kept, feed -> Double.POSITIVE_INFINITY);
        double undone =
                recipe.balance().due().sum() + recipe.balance().surplus().sum();

        assertThat(undone + recipe.balance().due().n()).isLessThanOrEqualTo(due.sum() + due.n() + 1e-6);
    }

    @Property
    void splitting_never_changes_the_total(
            @ForAll @DoubleRange(min = 0, max = 1e6) double total,
            @ForAll @DoubleRange(min = 1, max = 1e4) double most) {
        double by = total > 1e5 ? most + 1000 : most;

        List<Double> equal = Doses.equal(total, by);
        assertThat(sum(equal)).isCloseTo(total, within(1e-6));
        assertThat(equal).allMatch(dose -> dose <= by * (1 + 1e-9));
        assertThat(sum(Doses.largestFirst(total, by))).isCloseTo(total, within(1e-6));
        assertThat(sum(Doses.byShares(total, List.of(0.5, 0.3, 0.2)))).isCloseTo(total, within(1e-6));
    }

    @Property
    void a_larger_gap_never_means_less_lime(
            @ForAll @DoubleRange(min = 3.5, max = 6.9) double ph,
            @ForAll @DoubleRange(min = 0, max = 1) double lower,
            @ForAll("texture") String texture) {
        double near = LimingTest.plan(LimingTest.asked(texture, ph, 6.5, true), "ground-limestone")
                .gPerM2();
        double far = LimingTest.plan(LimingTest.asked(texture, Math.max(3, ph - lower), 6.5, true), "ground-limestone")
                .gPerM2();

        assertThat(far).isGreaterThanOrEqualTo(near);
    }

    @Property
    void a_higher_ph_never_means_less_sulphur(
            @ForAll @DoubleRange(min = 4.5, max = 7) double ph,
            @ForAll @DoubleRange(min = 4.5, max = 7) double other,
            @ForAll("sulphurClass") String soilClass) {
        double low = Data.SULPHUR.gPerM2(soilClass, Math.min(ph, other), 4.8).getAsDouble();
        double high = Data.SULPHUR.gPerM2(soilClass, Math.max(ph, other), 4.8).getAsDouble();

        assertThat(high).isGreaterThanOrEqualTo(low);
    }

    @Property
    void rounding_stays_close_and_never_turns_something_into_nothing(
            @ForAll @DoubleRange(min = 1, max = 1e6) double grams) {
        double rounded = Portion.rounded(grams);

        assertThat(rounded).isPositive();
        assertThat(Math.abs(rounded - grams)).isLessThanOrEqualTo(Math.max(0.5, grams * 0.13));
        assertThat(Portion.roundedDown(grams)).isLessThanOrEqualTo(grams + 1e-6).isPositive();
    }

    @Provide
    Arbitrary<String> texture() {
        return Arbitraries.of(Data.TABLES.soils().textures());
    }

    @Provide
    Arbitrary<String> sulphurClass() {
        return Arbitraries.of("sand", "loam", "clay");
    }

    private static double sum(List<Double> doses) {
        return doses.stream().mapToDouble(Double::doubleValue).sum();
    }
}
