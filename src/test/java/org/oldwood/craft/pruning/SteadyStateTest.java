package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.crop.Stems;

/**
 * A bush cut by the plan for twenty years, its shoots and deaths as the outlook reckons them, comes to the balance of
 * ages that its way prints. {@code -Dbushes=2000} for the long run.
 */
class SteadyStateTest {
    private static final int YEARS = 20;
    private static final int SETTLED = 5;

    static Stream<Arguments> ways() {
        return Schools.forms().entrySet().stream()
                .filter(each -> each.getValue().school() instanceof RenewalSchool way && way.keep().isPresent()
                        && way.spentAge().isPresent() && each.getValue().newShoots().isPresent())
                .map(each -> Arguments.of(each.getKey(), each.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void comes_to_the_printed_balance_of_ages(String name, FormPruning form) {
        RenewalSchool way = (RenewalSchool) form.school();
        Keep keep = way.keep().orElseThrow();
        Random random = new Random(20);
        Outlook.Basis basis = new Outlook.Basis(way, form, Optional.empty(), form.newShoots().orElseThrow());
        for (int i = 0; i < Integer.getInteger("bushes", 40); i++) {
            int[] counts = IntStream.range(0, 1 + random.nextInt(9)).map(age -> random.nextInt(9)).toArray();
            Bush bush = Bush.of(random.nextBoolean() ? Stems.of(counts) : Stems.ofOpen(counts));

            var winters = Outlook.of(bush, Habit.plan(way, way), basis, YEARS).winters();

            for (Outlook.Winter winter : winters.subList(YEARS - SETTLED, YEARS)) {
                Stems after = winter.cut().after();
                assertThat(after.total()).as("%s from %s: %s", name, bush.stems(), after).isBetween(keep.totalLeast(),
                        Math.max(most(keep), keep.target().total()));
                for (int age = 1; age <= keep.stems().size(); age++) {
                    assertThat(after.at(age)).as("age %s of %s from %s: %s", age, name, bush.stems(), after)
                            .isGreaterThanOrEqualTo(keep.least().get(age - 1));
                }
            }
        }
    }

    private static int most(Keep keep) {
        return keep.total().isEmpty() ? keep.most().stream().mapToInt(Integer::intValue).sum()
                : keep.total().get(keep.total().size() - 1);
    }
}
