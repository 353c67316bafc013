package org.oldwood.plan.settle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.SmallGarden;
import org.oldwood.store.Documents;

/** How much of a job its entries did. */
class SettlingTest {
    private static final Crops CROPS = new Crops(Documents.bundled());
    private static final Optional<DoneBy.Measure> KG = Optional.of(new DoneBy.Measure(Optional.of("kg"), 50));
    private static final Optional<DoneBy.Measure> ASKED = Optional.of(new DoneBy.Measure(Optional.empty(), 80));

    private final SmallGarden garden = SmallGarden.north()
            .note("2020-11-15", "'planted','plant':'b-1','crop':'blackcurrant','bed':'a','bushes':3")
            .note("2020-11-15", "'planted','plant':'b-2','crop':'blackcurrant','bed':'a'")
            .note("2020-11-15", "'planted','plant':'g-1','crop':'gooseberry','bed':'a'")
            .note("2020-11-15", "'planted','plant':'row','crop':'summer-raspberry','bed':'a','lengthM':10");

    private final Map<EntryKind, Double> before = new EnumMap<>(EntryKind.class);
    private double now;
    private double toFollow;
    private int asked;

    private Subject subject(String kind, String id) {
        GardenState state = garden.on("2027-12-31");
        return new Subjects(state, CROPS).find(id, kind).orElseThrow();
    }

    private Subject stand() { return subject("stand", "a.blackcurrant.stool"); }

    private Settling.Job job(DoneBy by, boolean over, Entry... named) {
        return new Settling.Job(by, entry -> entry.date().getYear() == 2027, List.of(named), over,
                new Settling.Amounts() {
                    @Override
                    public Settling.Wanted now(Subject part) {
                        asked++;
                        return new Settling.Wanted(now, now + toFollow);
                    }

                    @Override
                    public Settling.Wanted after(Subject part, List<Entry> work) { return now(part); }

                    @Override
                    public Settling.Wanted before(Subject part, Entry entry) {
                        double planned = before.getOrDefault(entry.kind(), 0.0);
                        return new Settling.Wanted(planned, planned + toFollow);
                    }
                });
    }

    private static DoneBy by(EntryKind kind, Optional<DoneBy.Measure> measure) {
        return new DoneBy(List.of(kind), Map.of(), false, 0, measure);
    }

    private static DoneBy together(EntryKind kind, Optional<DoneBy.Measure> measure) {
        return new DoneBy(List.of(kind), Map.of(), true, 0, measure);
    }

    private Settled settled(Subject subject, DoneBy by) { return new Settling().of(subject, job(by, false)); }

    private List<Double> done(Subject subject, DoneBy by) {
        return settled(subject, by).shares().stream().map(Share::done).toList();
    }

    @Test
    void of_nothing_noted_every_share_is_untouched_and_made_once() {
        Settling settling = new Settling();
        Subject stand = stand();
        Settled first = settling.of(stand, job(by(EntryKind.PRUNED, Optional.empty()), false));

        assertThat(first.shares()).containsExactly(Share.untouched("b-1", 3), Share.untouched("b-2", 1));
        assertThat(first.open()).isTrue();
        assertThat(first.skipped()).isFalse();
        assertThat(first.partly()).isFalse();
        assertThat(first.lastDay()).isEmpty();
        assertThat(settling.of(stand, job(by(EntryKind.PRUNED, Optional.empty()), false)).shares())
                .isSameAs(first.shares());
        assertThat(settling.of(stand, job(together(EntryKind.STRUCK, Optional.empty()), false)).shares())
                .containsExactly(Share.untouched(stand.id(), 4));
    }

    @Test
    void an_entry_does_the_share_of_its_plant() {
        garden.note("2027-02-01", "'pruned','plant':'b-2','tips':3");

        Settled settled = settled(stand(), by(EntryKind.PRUNED, Optional.empty()));

        assertThat(settled.shares()).extracting(Share::done).containsExactly(0.0, 1.0);
        assertThat(settled.left()).extracting(Share::id).containsExactly("b-1");
        assertThat(settled.partly()).isTrue();
        assertThat(settled.lastDay()).contains(LocalDate.of(2027, 2, 1));
    }

    @Test
    void an_entry_that_could_not_have_been_it_does_nothing() {
        garden.note("2026-02-01", "'pruned','plant':'b-2','tips':3");

        assertThat(settled(stand(), by(EntryKind.PRUNED, Optional.empty())).partly()).isFalse();
        assertThat(new Settling().first(stand(), job(by(EntryKind.PRUNED, Optional.empty()), false))).isEmpty();
    }

    @Test
    void the_first_entry_is_the_oldest_of_plant_and_bed() {
        garden.note("2027-03-05", "'fed','plant':'b-2','material':'dried-blood','grams':5").note("2027-03-02",
                "'fed','bed':'a','material':'dried-blood','grams':5");

        DoneBy fed = by(EntryKind.FED, Optional.empty());
        assertThat(new Settling().first(subject("plant", "b-2"), job(fed, false)).map(Entry::date))
                .contains(LocalDate.of(2027, 3, 2));
        assertThat(new Settling().first(stand(), job(fed, false)).map(Entry::date)).contains(LocalDate.of(2027, 3, 2));
    }

    @Test
    void what_the_whole_bed_got_is_every_plants() {
        garden.note("2027-03-02", "'fed','bed':'a','material':'dried-blood','grams':5");

        assertThat(settled(stand(), by(EntryKind.FED, Optional.empty())).open()).isFalse();
        assertThat(settled(subject("plant", "b-1"), by(EntryKind.FED, Optional.empty())).open()).isFalse();
        assertThat(settled(subject("bed", "a"), by(EntryKind.FED, Optional.empty())).open()).isFalse();
    }

    @Test
    void what_another_crop_of_the_bed_gave_is_not() {
        garden.note("2027-07-02", "'picked','bed':'a','crop':'gooseberry','kg':5");

        assertThat(settled(stand(), by(EntryKind.PICKED, Optional.empty())).partly()).isFalse();
        assertThat(settled(subject("stand", "a.gooseberry.leg"), by(EntryKind.PICKED, Optional.empty())).open())
                .isFalse();
        assertThat(settled(subject("plant", "b-1"), by(EntryKind.PICKED, Optional.empty())).open()).isTrue();
        assertThat(settled(subject("bed", "a"), by(EntryKind.PICKED, Optional.empty())).open()).isFalse();
    }

    /** Of 8 kg planned half is enough. */
    @ParameterizedTest(name = "{0} kg: {1}")
    @CsvSource({"1, 0.25", "3.7, 0.925", "3.8, 1", "4, 1", "9, 1"})
    void a_weight_is_set_against_what_was_expected(String kg, double done) {
        before.put(EntryKind.PICKED, 8.0);
        garden.note("2027-07-02", "'picked','plant':'b-2','kg':" + kg);

        assertThat(done(subject("plant", "b-2"), by(EntryKind.PICKED, KG)).get(0)).isCloseTo(done, within(1e-9));
    }

    @Test
    void weights_add_up() {
        before.put(EntryKind.PICKED, 8.0);
        garden.note("2027-07-02", "'picked','plant':'b-2','kg':1").note("2027-07-05", "'picked','plant':'b-2','kg':1");

        assertThat(settled(subject("plant", "b-2"), by(EntryKind.PICKED, KG)).shares().get(0))
                .satisfies(share -> assertThat(share.done()).isCloseTo(0.5, within(1e-9)))
                .satisfies(share -> assertThat(share.by()).hasSize(2));
    }

    /** Four bushes of the crop, three of them in one entry: 8 kg are 6 and 2. */
    @Test
    void a_weight_of_the_whole_bed_is_spread_over_its_bushes() {
        before.put(EntryKind.PICKED, 16.0);
        garden.note("2027-07-02", "'picked','bed':'a','crop':'blackcurrant','kg':8");

        assertThat(done(stand(), by(EntryKind.PICKED, KG))).containsExactly(0.75, 0.25);
        assertThat(done(stand(), together(EntryKind.PICKED, KG))).containsExactly(1.0);
    }

    /** Without a crop it is all that stands there: six bushes, the row counted as one. */
    @Test
    void a_weight_of_no_crop_is_spread_over_all() {
        before.put(EntryKind.PICKED, 12.0);
        garden.note("2027-07-02", "'picked','bed':'a','kg':6");

        assertThat(done(stand(), by(EntryKind.PICKED, KG))).satisfiesExactly(three -> assertThat(three).isEqualTo(0.5),
                one -> assertThat(one).isCloseTo(1.0 / 6, within(1e-9)));
    }

    @Test
    void where_nothing_was_expected_any_weight_is_enough() {
        garden.note("2027-07-02", "'picked','plant':'b-2','kg':0.1");
        assertThat(settled(subject("plant", "b-2"), by(EntryKind.PICKED, KG)).open()).isFalse();

        before.put(EntryKind.PICKED, 0.0);
        assertThat(settled(subject("plant", "b-2"), by(EntryKind.PICKED, KG)).open()).isFalse();
    }

    @Test
    void once_its_time_is_past_whatever_was_done_was_all_and_the_rest_is_open() {
        before.put(EntryKind.PICKED, 8.0);
        garden.note("2027-07-02", "'picked','plant':'b-2','kg':0.1");

        assertThat(new Settling().of(stand(), job(by(EntryKind.PICKED, KG), true)).shares()).extracting(Share::done)
                .containsExactly(0.0, 1.0);
    }

    @ParameterizedTest(name = "{0} m: {1}")
    @CsvSource({"2.5, 0.25", "9.4, 0.94", "9.5, 1", "10, 1"})
    void a_row_counts_by_metres(String metres, double done) {
        garden.note("2027-08-02", "'pruned','plant':'row','metres':" + metres);

        assertThat(done(subject("plant", "row"), by(EntryKind.PRUNED, Optional.empty())).get(0)).isCloseTo(done,
                within(1e-9));
    }

    @Test
    void an_entry_without_metres_is_of_the_whole_row() {
        garden.note("2027-08-02", "'pruned','plant':'row'");

        assertThat(settled(subject("plant", "row"), by(EntryKind.PRUNED, Optional.empty())).open()).isFalse();
    }

    @Test
    void canes_are_counted_where_they_are_noted_and_metres_where_not() {
        before.put(EntryKind.PRUNED, 40.0);
        Optional<DoneBy.Measure> canes = Optional.of(new DoneBy.Measure(Optional.of("stems"), 80));
        garden.note("2027-08-02", "'pruned','plant':'row','stems':{'2':8}");
        assertThat(done(subject("plant", "row"), by(EntryKind.PRUNED, canes)).get(0)).isCloseTo(0.25, within(1e-9));

        garden.note("2027-08-03", "'pruned','plant':'row','metres':4");
        assertThat(done(subject("plant", "row"), by(EntryKind.PRUNED, canes)).get(0)).isEqualTo(1);
    }

    /** Asked: 10 to give before, so many left; done where a fifth or less is left. */
    @ParameterizedTest(name = "{0} left: {1}")
    @CsvSource({"10, 0", "6, 0.5", "2.4, 0.95", "2, 1", "0, 1", "12, 0"})
    void the_craft_says_what_is_left(double left, double done) {
        before.put(EntryKind.FED, 10.0);
        now = left;
        garden.note("2027-03-02", "'fed','bed':'a','material':'dried-blood','grams':5");

        assertThat(done(stand(), by(EntryKind.FED, ASKED)))
                .allSatisfy(each -> assertThat(each).isCloseTo(done >= 0.95 ? 1 : done, within(1e-9)));
    }

    /** Of 17 due 10 were planned now, 7 for later: when 7 are due still, all of it is done. */
    @ParameterizedTest(name = "{0} left: {1}")
    @CsvSource({"10, 0", "5, 0.555", "0, 1"})
    void what_is_to_follow_is_no_rest(double left, double done) {
        before.put(EntryKind.FED, 10.0);
        now = left;
        toFollow = 7;
        garden.note("2027-03-02", "'fed','bed':'a','material':'dried-blood','grams':5");

        assertThat(done(stand(), by(EntryKind.FED, Optional.of(new DoneBy.Measure(Optional.empty(), 90)))))
                .allSatisfy(each -> assertThat(each).isCloseTo(done, within(0.001)));
    }

    /** Asking takes long: what the whole bed got is asked for all plants at once. */
    @Test
    void the_craft_is_asked_once_for_all_that_got_the_same() {
        before.put(EntryKind.FED, 10.0);
        now = 5;
        garden.note("2027-03-02", "'fed','bed':'a','material':'dried-blood','grams':5");
        settled(stand(), by(EntryKind.FED, ASKED));
        assertThat(asked).isEqualTo(1);

        garden.note("2027-03-03", "'fed','plant':'b-1','material':'dried-blood','grams':5");
        settled(stand(), by(EntryKind.FED, ASKED));
        assertThat(asked).isEqualTo(3);
    }

    @Test
    void no_craft_is_asked_what_is_left_where_the_entries_are_added_up() {
        before.put(EntryKind.PICKED, 8.0);
        garden.note("2027-07-02", "'picked','bed':'a','crop':'blackcurrant','kg':1");
        settled(stand(), by(EntryKind.PICKED, KG));
        settled(stand(), by(EntryKind.PICKED, Optional.empty()));

        assertThat(asked).isZero();
    }

    @Test
    void the_first_entry_of_a_plant_may_be_before_that_of_its_bed() {
        garden.note("2027-03-01", "'fed','plant':'b-2','material':'dried-blood','grams':5").note("2027-03-02",
                "'fed','bed':'a','material':'dried-blood','grams':5");

        assertThat(new Settling().first(subject("plant", "b-2"), job(by(EntryKind.FED, Optional.empty()), false))
                .map(Entry::date)).contains(LocalDate.of(2027, 3, 1));
    }

    @Test
    void another_crops_picking_is_not_the_first_of_this_one() {
        garden.note("2027-07-02", "'picked','bed':'a','crop':'gooseberry','kg':5");
        DoneBy picked = together(EntryKind.PICKED, Optional.empty());

        assertThat(new Settling().first(stand(), job(picked, false))).isEmpty();
        assertThat(settled(stand(), picked).partly()).isFalse();
    }

    @Test
    void where_nothing_was_to_be_given_before_it_does_nothing() {
        now = 3;
        garden.note("2027-03-02", "'fed','plant':'b-1','material':'dried-blood','grams':5");

        assertThat(done(stand(), by(EntryKind.FED, ASKED))).containsExactly(0.0, 0.0);
    }

    private Entry named(String rest) {
        String at = "2027-06-0" + (1 + garden.on("2027-12-31").finished().getOrDefault("t@a@2027", List.of()).size());
        garden.note(at, rest);
        List<Entry> all = garden.on("2027-12-31").finished().get("t@a@2027");
        return all.get(all.size() - 1);
    }

    @Test
    void a_note_by_name_counts_before_all_others_for_the_plants_that_it_names() {
        garden.note("2027-02-01", "'pruned','plant':'b-2','tips':3");
        Entry done = named("'done','task':'t@a@2027','only':['b-1']");
        Entry skipped = named("'skipped','task':'t@a@2027','only':['b-2']");

        Settled settled = new Settling().of(stand(), job(by(EntryKind.PRUNED, Optional.empty()), false, done, skipped));

        assertThat(settled.shares()).containsExactly(new Share("b-1", 3, 1, false, List.of(done)),
                new Share("b-2", 1, 0, true, List.of(skipped)));
        assertThat(settled.open()).isFalse();
        assertThat(settled.skipped()).isFalse();
        assertThat(settled.lastDay()).contains(skipped.date());
    }

    @Test
    void the_last_note_by_name_counts() {
        Entry skipped = named("'skipped','task':'t@a@2027'");
        Entry done = named("'done','task':'t@a@2027'");
        DoneBy pruned = by(EntryKind.PRUNED, Optional.empty());

        assertThat(new Settling().of(stand(), job(pruned, false, skipped)).skipped()).isTrue();
        Settled settled = new Settling().of(stand(), job(pruned, false, skipped, done));
        assertThat(settled.skipped()).isFalse();
        assertThat(settled.open()).isFalse();
    }

    @Test
    void a_stand_is_done_plant_by_plant_and_all_else_as_one() {
        assertThat(Settling.parts(stand(), false)).extracting(Subject::id).containsExactly("b-1", "b-2");
        assertThat(Settling.parts(stand(), true)).containsExactly(stand());
        assertThat(Settling.parts(subject("bed", "a"), false)).extracting(Subject::id).containsExactly("a");
    }
}
