package org.oldwood.craft.feeding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
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
    Arbitrary<List<Feed>> kept() { return Arbitraries.of(Data.MATERIALS.feeds()).list().uniqueElements().ofMaxSize(5); }

    private static Budget budget(Nutrients need, Nutrients left, Nutrients given, List<Feed> kept) {
        return Budget.of(Data.TABLES, new Need(need, EnumSet.allOf(Nutrient.class), "", List.of(), List.of()),
                Budget.Counting.of(left, given), Data.TABLES.timing("ribes"), Optional.empty(), 0,
                new Choice(kept, List.of()), new NeedCase.Ground(1000, 0, 0));
    }

    /** What is weighed out is reckoned anew from the labels, not taken from the budget. */
    @Property(tries = 300)
    void the_year_closes_and_what_is_not_given_is_said(@ForAll("nutrients") Nutrients need,
            @ForAll("nutrients") Nutrients left, @ForAll("nutrients") Nutrients given,
            @ForAll("kept") List<Feed> kept) {
        Budget budget = budget(need, left, given.times(0.5), kept);
        Nutrients weighed = Nutrients.NONE;
        for (FeedPlan dressing : budget.dressings()) {
            for (Recipe.Part part : dressing.parts()) {
                weighed = weighed
                        .plus(part.feed().percent().times(part.amount() / 1000 / 100).times(part.feed().shares()));
            }
        }
        Nutrients all = weighed.plus(left).plus(given.times(0.5));
        String said = String.join(" ", budget.missing());
        for (Nutrient each : Nutrient.values()) {
            double lacking = need.of(each) - all.of(each);
            assertThat(need.of(each) + budget.beyond().of(each)).isCloseTo(all.of(each) + budget.undone().of(each),
                    within(1e-6));
            if (lacking > Data.TABLES.limits().smallest().of(each) + 1e-6) {
                assertThat(said).contains(" g/m² " + each.symbol());
            }
        }
        assertThat(weighed.n()).isLessThanOrEqualTo(Math.max(0, need.n() - left.n() - given.n() * 0.5) * 1.05 + 0.01);
    }

    @Property(tries = 200)
    void a_recipe_has_no_negative_part_and_never_too_much_nitrogen(@ForAll("nutrients") Nutrients due,
            @ForAll("kept") List<Feed> kept) {
        Recipe recipe = Recipe.best(due, kept, feed -> feed.bulky() ? 3000 : 200, 5, 1);

        assertThat(recipe.parts()).allMatch(part -> part.amount() > 0);
        assertThat(recipe.parts()).allMatch(part -> part.amount() <= (part.feed().bulky() ? 3000 : 200) + 1e-6);
        assertThat(recipe.gives().n()).isLessThan(due.n() + 1e-6);
    }

    @Property(tries = 200)
    void a_recipe_is_never_worse_than_nothing(@ForAll("nutrients") Nutrients due, @ForAll("kept") List<Feed> kept) {
        Nutrients gives = Recipe.best(due, kept, feed -> Double.POSITIVE_INFINITY, 2, 1).gives();
        Nutrients undone = due.minus(gives).atLeastZero();

        assertThat(undone.sum() + undone.n() + gives.minus(due).atLeastZero().sum())
                .isLessThanOrEqualTo(due.sum() + due.n() + 1e-6);
    }

    @Property
    void splitting_never_changes_the_total(@ForAll @DoubleRange(min = 0, max = 1e6) double total,
            @ForAll @DoubleRange(min = 1, max = 1e4) double most) {
        double by = total > 1e5 ? most + 1000 : most;

        List<Double> equal = Doses.equal(total, by);
        assertThat(sum(equal)).isCloseTo(total, within(1e-6));
        assertThat(equal).allMatch(dose -> dose <= by * (1 + 1e-9));
        assertThat(sum(Doses.largestFirst(total, by))).isCloseTo(total, within(1e-6));
    }

    @Property
    void a_larger_gap_never_means_less_lime(@ForAll @DoubleRange(min = 3.5, max = 6.9) double ph,
            @ForAll @DoubleRange(min = 0, max = 1) double lower, @ForAll("texture") String texture) {
        double near = LimingTest.plan(LimingTest.asked(texture, ph, 6.5, true), "ground-limestone").gPerM2();
        double far = LimingTest.plan(LimingTest.asked(texture, Math.max(3, ph - lower), 6.5, true), "ground-limestone")
                .gPerM2();

        assertThat(far).isGreaterThanOrEqualTo(near);
    }

    @Property
    void a_higher_ph_never_means_less_sulphur(@ForAll @DoubleRange(min = 4.5, max = 7) double ph,
            @ForAll @DoubleRange(min = 4.5, max = 7) double other, @ForAll("sulphurClass") String soilClass) {
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
        assertThat(Portion.within(grams, grams)).isLessThanOrEqualTo(grams + 1e-6).isPositive();
    }

    @Provide
    Arbitrary<String> texture() { return Arbitraries.of(Data.TABLES.soils().textures()); }

    @Provide
    Arbitrary<String> sulphurClass() { return Arbitraries.of("sand", "loam", "clay"); }

    private static double sum(List<Double> doses) { return doses.stream().mapToDouble(Double::doubleValue).sum(); }
}
