package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.garden.Entry;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.settle.Settled;
import org.oldwood.plan.settle.Share;
import org.oldwood.season.CalendarStages;
import org.oldwood.store.Documents;

/** What is left of a task, for the craft and in words. */
class LeftTest {
    private final SmallGarden garden = SmallGarden.north()
            .note("2020-11-15", "'planted','plant':'b-1','crop':'blackcurrant','bed':'a','bushes':3")
            .note("2020-11-15", "'planted','plant':'b-2','crop':'blackcurrant','bed':'a'")
            .note("2027-02-01", "'pruned','plant':'b-2','tips':3")
            .note("2027-02-02", "'fed','bed':'a','material':'dried-blood','grams':5,'planned':true");

    private final GardenState state = garden.on("2027-12-31");
    private final Entry cut = state.entries().get(2);
    private final Entry fed = state.entries().get(3);

    private Situation stand() {
        Crops crops = new Crops(Documents.bundled());
        Subject stand = new Subjects(state, crops).find("a.blackcurrant.stool", "stand").orElseThrow();
        Situation.World world = new Situation.World(state, new CalendarStages(), crops, Documents.bundled());
        return new Situation(world, stand, state.season(), world.today());
    }

    private static Share done(String id, int bushes, double part, Entry... by) {
        return new Share(id, bushes, part, false, List.of(by));
    }

    private static List<String> plants(Situation situation) {
        return situation.subject().plants().stream().map(PlantState::plant).map(plant -> plant.id()).toList();
    }

    @Test
    void the_craft_is_asked_of_the_plants_that_still_wait() {
        Situation all = stand();
        Share rest = Share.untouched("b-1", 3);

        Situation left = Left.of(all, new Settled(List.of(rest, done("b-2", 1, 1, cut))));

        assertThat(plants(left)).containsExactly("b-1");
        assertThat(left.subject().entries()).isEqualTo(all.subject().entries());
        assertThat(left.day()).isEqualTo(all.day());
        assertThat(Left.of(all, new Settled(List.of(rest, Share.untouched("b-2", 1))))).isSameAs(all);
        assertThat(Left.of(all, new Settled(List.of(done("b-1", 3, 1, fed), done("b-2", 1, 1, cut))))).isSameAs(all);
        assertThat(Left.of(all, new Settled(List.of(done("a.blackcurrant.stool", 4, 0.5, fed))))).isSameAs(all);
    }

    @Test
    void of_some_bushes_it_tells_how_many_are_left() {
        assertThat(Left.inWords(new Settled(List.of(Share.untouched("b-1", 3), done("b-2", 1, 1, cut)))))
                .isEqualTo("3 of 4 bushes left");
    }

    /** A fifth of three bushes and half of one are 1.1 of 4. */
    @Test
    void of_all_bushes_it_tells_the_part_that_is_done() {
        assertThat(Left.inWords(new Settled(List.of(done("b-1", 3, 0.2, fed), done("b-2", 1, 0.5, cut)))))
                .isEqualTo("about 28 % done");
    }

    @Test
    void it_tells_what_was_noted_so_far_once_each() {
        Reason sofar = Left.sofar(new Settled(List.of(done("b-1", 3, 0.2, fed), done("b-2", 1, 0.5, fed, cut))));

        assertThat(sofar.holds()).isTrue();
        assertThat(sofar.words()).isEqualTo("noted so far: a fed on 2027-02-02 as planned, b-2 pruned on 2027-02-01");
    }

    @Test
    void of_more_than_six_entries_it_tells_how_many_more() {
        IntStream.range(0, 8)
                .forEach(i -> garden.note("2027-03-0" + (i + 1), "'fed','bed':'a','material':'dried-blood','grams':5"));
        List<Entry> entries = garden.on("2027-12-31").entries();
        Settled eight = new Settled(List.of(new Share("a", 4, 0.5, false, entries.subList(4, 12))));
        Settled six = new Settled(List.of(new Share("a", 4, 0.5, false, entries.subList(4, 10))));

        assertThat(Left.sofar(eight).words()).endsWith("a fed on 2027-03-06 and 2 more");
        assertThat(Left.sofar(six).words()).endsWith("a fed on 2027-03-06");
    }

    @Test
    void a_task_ticked_off_in_part_names_no_bed() {
        garden.note("2027-03-01", "'done','task':'feed@garden@2027'");
        Entry done = garden.on("2027-12-31").finished().get("feed@garden@2027").get(0);

        assertThat(Left.sofar(new Settled(List.of(done("garden", 1, 0.5, done)))).words())
                .isEqualTo("noted so far: done on 2027-03-01");
    }
}
