package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.crop.Stems;

/**
 * What every cut list holds to, whatever the bush and the way: random bushes for each way of each crop,
 * {@code -Dbushes=10000} for the long run.
 */
class ListLawsTest {
    private static final int BUSHES = Integer.getInteger("bushes", 300);

    static Stream<Arguments> ways() {
        return Schools.named().entrySet().stream().map(way -> Arguments.of(way.getKey(), way.getValue()));
    }

    private static void each(String name, java.util.function.BiConsumer<Bush, Random> law) {
        Random random = new Random(name.hashCode());
        for (int i = 0; i < BUSHES; i++) {
            law.accept(bush(random), random);
        }
    }

    /** Spread over the ages, or lumped in one or two of them; a third with faults; of any age or of unknown age. */
    private static Bush bush(Random random) {
        int[] counts = new int[1 + random.nextInt(10)];
        if (random.nextInt(3) == 0) {
            counts[random.nextInt(counts.length)] += random.nextInt(41);
            counts[random.nextInt(counts.length)] += random.nextInt(21);
        } else {
            int most = 1 + random.nextInt(14);
            IntStream.range(0, counts.length).forEach(i -> counts[i] = random.nextInt(most + 1));
        }
        Stems stems = random.nextInt(3) == 0 ? Stems.ofOpen(counts) : Stems.of(counts);
        int[] sick = new int[counts.length];
        int[] weak = new int[counts.length];
        if (random.nextInt(3) == 0) {
            for (int i = 0; i < counts.length; i++) {
                sick[i] = random.nextInt(counts[i] / 2 + 1);
                weak[i] = random.nextInt((counts[i] - sick[i]) / 2 + 1);
            }
        }
        Bush bush = Bush.of(stems).withFaults(Stems.of(sick), Stems.of(weak)).along(0.5 + random.nextInt(6));
        bush = random.nextInt(4) == 0 ? bush.inRenovationWinter(1 + random.nextInt(4)) : bush;
        return random.nextBoolean() ? bush : Bushes.after(random.nextInt(13), bush);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void taken_and_kept_are_what_it_had(String name, School way) {
        each(name, (bush, random) -> {
            Cut cut = way.winter(bush);
            for (int age = 1; age <= bush.stems().oldest(); age++) {
                assertThat(cut.of(age) + cut.after().at(age)).isEqualTo(bush.stems().at(age));
                assertThat(cut.after().at(age)).isNotNegative();
            }
        });
    }

    /** One sound stem more never leaves fewer, and takes the place of one younger stem at most. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void a_small_change_of_the_bush_is_a_small_change_of_the_list(String name, School way) {
        each(name, (bush, random) -> {
            int added = 1 + random.nextInt(bush.stems().oldest());
            Stems more = Stems.of();
            int[] counts = IntStream.rangeClosed(1, bush.stems().oldest())
                    .map(age -> bush.stems().at(age) + (age == added ? 1 : 0)).toArray();
            more = bush.stems().isOpen() ? Stems.ofOpen(counts) : Stems.of(counts);
            Stems kept = way.winter(bush).after();
            Stems keptOfMore = way.winter(bush.with(more)).after();
            String told = name + ": " + bush + " and one of age " + added + ", " + kept + " and " + keptOfMore;
            assertThat(keptOfMore.total()).as(told).isGreaterThanOrEqualTo(kept.total());
            int gone = 0;
            for (int age = 1; age < added; age++) {
                int fewer = kept.at(age) - keptOfMore.at(age);
                assertThat(fewer).as(told).isLessThanOrEqualTo(1);
                gone += Math.max(0, fewer);
                if (fewer > 0 && way instanceof RenewalSchool renewal) {
                    int own = renewal.keep(bush).orElseThrow().of(age);
                    assertThat(keptOfMore.at(age)).as(told).isGreaterThanOrEqualTo(own);
                }
            }
            assertThat(gone).as(told).isLessThanOrEqualTo(1);
        });
    }

    /** Sound young and bearing stems stay up to the printed total; only where a way names no number none is held to. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void no_bush_is_left_with_fewer_than_its_printed_total_while_it_has_them(String name, School way) {
        each(name, (bush, random) -> {
            Cut cut = way.winter(bush);
            if (way instanceof RenewalSchool renewal && renewal.keep(bush).isPresent()) {
                boolean open = bush.stems().isOpen();
                int spent = open ? Math.min(renewal.spent(), bush.stems().oldest()) : renewal.spent();
                int sound = sound(bush).between(1, spent - 1);
                assertThat(cut.after().total()).as("%s: %s", name, bush)
                        .isGreaterThanOrEqualTo(Math.min(sound, renewal.keep(bush).get().totalLeast()));
            } else if (way instanceof CaneSchool canes && !canes.all()) {
                assertThat(cut.after().at(1)).isGreaterThanOrEqualTo(Math.min(sound(bush).at(1), canes.canes(bush)));
            }
        });
    }

    /** No more sound bearing stems go than young ones came up in two seasons, but for a bush more than full. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void no_more_bearing_stems_go_than_came_up(String name, School way) {
        each(name, (bush, random) -> {
            boolean oldAge = bush.stems().isOpen() && bush.stems().oldest() <= 2;
            if (!(way instanceof RenewalSchool renewal) || renewal.cutsDown() || oldAge) { return; }
            Cut cut = renewal.winter(bush);
            int bearing = cut.of(Why.OLDEST) + cut.of(Why.CROWDED) - cut.taken().stream()
                    .filter(one -> one.age() == 1 && one.why() == Why.CROWDED).mapToInt(Cut.Taken::number).sum();
            int cameUp = bush.stems().between(1, 2);
            int aimed = renewal.keep(bush).map(it -> it.between(1, 60)).orElse(Integer.MAX_VALUE);
            int left = cut.after().between(2, renewal.spent() - 1);
            assertThat(bearing <= cameUp || left >= aimed).as("%s: %s, %s", name, bush, cut.after()).isTrue();
        });
    }

    private static Stems sound(Bush bush) {
        return Stems.of(IntStream.rangeClosed(1, bush.stems().oldest())
                .map(age -> bush.stems().at(age) - bush.sick().at(age) - bush.weak().at(age)).toArray());
    }
}
