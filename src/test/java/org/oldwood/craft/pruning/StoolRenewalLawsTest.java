package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.oldwood.crop.Stems;

/** Laws of the winter cut over random bushes and every bundled way of renewal. */
class StoolRenewalLawsTest {
    /** Schools that keep every age to a number; with these a bush comes to rest. */
    private static final List<RenewalSchool> AIMING = Schools.renewals().stream()
            .filter(s -> s.keep().isPresent() && s.spentAge().isPresent()).toList();

    @Provide
    Arbitrary<RenewalSchool> schools() { return Arbitraries.of(Schools.renewals()); }

    @Provide
    Arbitrary<RenewalSchool> aiming() { return Arbitraries.of(AIMING); }

    @Provide
    Arbitrary<Stems> stems() {
        Arbitrary<int[]> counts = Arbitraries.integers().between(0, 14).array(int[].class).ofMinSize(1).ofMaxSize(10);
        return counts.flatMap(of -> Arbitraries.of(true, false).map(o -> o ? Stems.ofOpen(of) : Stems.of(of)));
    }

    @Provide
    Arbitrary<Bush> bushes() {
        return stems()
                .flatMap(stems -> Arbitraries.integers().between(-1, 12).flatMap(season -> faulty(stems, season)));
    }

    private static Arbitrary<Bush> faulty(Stems stems, int season) {
        return Arbitraries.integers().between(0, 3).array(int[].class).ofSize(2 * stems.oldest()).map(faults -> {
            int[] sick = new int[stems.oldest()];
            int[] weak = new int[stems.oldest()];
            for (int i = 0; i < sick.length; i++) {
                sick[i] = Math.min(faults[i], stems.at(i + 1));
                weak[i] = Math.min(faults[sick.length + i], stems.at(i + 1) - sick[i]);
            }
            Bush bush = Bush.of(stems).withFaults(Stems.of(sick), Stems.of(weak));
            return season < 0 ? bush : Bushes.after(season, bush);
        });
    }

    @Property
    void no_more_is_taken_than_there_is_and_the_rest_stays(@ForAll("schools") RenewalSchool school,
            @ForAll("bushes") Bush bush) {
        Cut cut = school.winter(bush);

        for (int age = 1; age <= bush.stems().oldest(); age++) {
            assertThat(cut.of(age)).isBetween(0, bush.stems().at(age));
            assertThat(cut.after().at(age)).isEqualTo(bush.stems().at(age) - cut.of(age));
        }
        assertThat(cut.taken()).allSatisfy(taken -> assertThat(taken.number()).isPositive());
    }

    @Property
    void no_bush_is_cut_below_its_printed_total_while_sound_bearing_wood_is_there(
            @ForAll("aiming") RenewalSchool school, @ForAll("bushes") Bush bush) {
        Cut cut = school.winter(bush);

        // an open class below the spent age may be spent in part
        int bearingTo = (bush.stems().isOpen() ? Math.min(school.spent(), bush.stems().oldest()) : school.spent()) - 1;
        int sound = bush.stems().between(2, bearingTo) - bush.sick().between(2, bearingTo)
                - bush.weak().between(2, bearingTo);
        int total = school.keep(bush).orElseThrow().totalLeast();
        assertThat(cut.after().total()).isGreaterThanOrEqualTo(Math.min(sound, total));
        assertThat(cut.number() + cut.after().total()).isEqualTo(bush.stems().total());
    }

    @Property
    void sick_and_damaged_stems_go_first_and_all_but_the_last_of_them(@ForAll("schools") RenewalSchool school,
            @ForAll("bushes") Bush bush) {
        Assume.that(!school.cutsDown() && bush.seasons().orElse(1) > 0);

        Cut cut = school.winter(bush);

        int faulty = cut.of(Why.SICK) + cut.of(Why.WEAK);
        assertThat(faulty).isGreaterThanOrEqualTo(bush.sick().total() + bush.weak().total() - 2);
        assertThat(cut.taken()).extracting(Cut.Taken::why).isSorted();
    }

    @Property
    void the_limit_of_a_season_holds_for_sound_older_wood(@ForAll("schools") RenewalSchool school,
            @ForAll("bushes") Bush bush) {
        Assume.that(!school.hard() && !school.cutsDown());

        Cut cut = school.winter(bush);

        int living = bush.stems().total() - bush.sick().total();
        int usual = school.limit().of(living);
        int bringingBack = school.renovation().map(it -> it.limit(living)).orElse(0);
        boolean named = cut.life() == StageOfLife.NEGLECTED;
        if (cut.staged().isPresent()) {
            StagedRenovation.Part part = cut.staged().get();
            assertThat(named).isTrue();
            assertThat(part.due()).isGreaterThan(usual);
            // half of what is due in the first winter (tribune-blueberry-2017), or the fifth
            int most = Math.max(Math.max(usual, bringingBack), (part.due() + 1) / 2);
            assertThat(soundOlder(cut)).isLessThanOrEqualTo(most);
            return;
        }
        assertThat(soundOlder(cut)).isLessThanOrEqualTo(named ? Math.max(usual, bringingBack) : usual);
        double share = school.limit().share();
        assertThat((double) soundOlder(cut)).isLessThanOrEqualTo(Math.max(1, share * living + 1e-9));
    }

    private static int soundOlder(Cut cut) {
        return cut.taken().stream()
                .filter(taken -> taken.age() >= 2 && taken.why() != Why.SICK && taken.why() != Why.WEAK)
                .mapToInt(Cut.Taken::number).sum();
    }

    @Property
    void the_last_sound_older_stem_and_the_last_sound_shoot_stay(@ForAll("schools") RenewalSchool school,
            @ForAll("bushes") Bush bush) {
        Assume.that(!school.cutsDown() && school.bearsFrom() > 1);

        Cut cut = school.winter(bush);

        if (bush.stems().from(2) - bush.sick().from(2) > 0) { assertThat(cut.after().from(2)).isPositive(); }
        if (bush.stems().at(1) - bush.sick().at(1) > 0) { assertThat(cut.after().at(1)).isPositive(); }
    }

    @Property
    void a_bush_at_target_loses_only_its_spent_class(@ForAll("aiming") RenewalSchool school,
            @ForAll @IntRange(min = 0, max = 12) int spent) {
        Keep keep = school.keep().orElseThrow();
        int classes = school.spent();
        int[] counts = new int[classes];
        for (int age = 1; age < classes; age++) {
            counts[age - 1] = keep.of(age);
        }
        counts[classes - 1] = spent;

        Cut cut = school.winter(Bush.of(Stems.of(counts)));

        assertThat(cut.taken()).allSatisfy(t -> assertThat(t.why()).isEqualTo(Why.SPENT));
        assertThat(cut.of(classes)).isEqualTo(cut.number()).isLessThanOrEqualTo(spent);
        int mayGo = school.limit().of(Stems.of(counts).total());
        if (spent <= mayGo && spent <= keep.between(2, classes - 1)) { assertThat(cut.number()).isEqualTo(spent); }
    }

    @Property
    void more_old_wood_never_means_fewer_old_stems_cut(@ForAll("schools") RenewalSchool school,
            @ForAll("stems") Stems stems, @ForAll @IntRange(min = 1, max = 6) int more,
            @ForAll @IntRange(min = 1, max = 4) int winter) {
        Assume.that(school.spentAge().isPresent());
        int spentAge = school.spent();
        Stems fewer = withSpent(stems, spentAge, 0);
        Stems many = withSpent(stems, spentAge, more);

        int cutOfFewer = school.winter(Bush.of(fewer).inRenovationWinter(winter)).of(Why.SPENT);
        int cutOfMany = school.winter(Bush.of(many).inRenovationWinter(winter)).of(Why.SPENT);

        assertThat(cutOfMany).isGreaterThanOrEqualTo(cutOfFewer);
    }

    private static Stems withSpent(Stems stems, int spentAge, int more) {
        int[] counts = new int[Math.max(spentAge, stems.oldest())];
        for (int age = 1; age <= counts.length; age++) {
            counts[age - 1] = stems.at(age) + (age == spentAge ? more : 0);
        }
        return Stems.of(counts);
    }

    @Property
    void the_oldest_go_first(@ForAll("schools") RenewalSchool school, @ForAll("stems") Stems stems) {
        Cut cut = school.winter(Bush.of(stems));

        for (int age = 2; age < stems.oldest(); age++) {
            boolean taken = spentOrOldest(cut, age);
            boolean olderLeft = cut.after().from(age + 1) > 0;
            assertThat(taken && olderLeft).as("age %s before an older stem", age).isFalse();
        }
    }

    private static boolean spentOrOldest(Cut cut, int age) {
        return cut.taken().stream().anyMatch(t -> t.age() == age && (t.why() == Why.SPENT || t.why() == Why.OLDEST));
    }
}
