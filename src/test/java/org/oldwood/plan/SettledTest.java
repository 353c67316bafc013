package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.facts.Amount;
import org.oldwood.plan.settle.Share;

/** What a note settles in a garden with the bundled rules: the right plants, the right work, the right season. */
class SettledTest {
    private static Optional<Task> find(SmallGarden garden, String today, String id) {
        return garden.plan(today).find(id);
    }

    private static Task task(SmallGarden garden, String today, String id) {
        return find(garden, today, id).orElseThrow(() -> new AssertionError("no task " + id));
    }

    /** A garden told of by northern days and seasons; in the southern half each is half a year before. */
    private record Half(SmallGarden garden, boolean south) {
        static Half of(boolean south) { return new Half(south ? SmallGarden.south() : SmallGarden.north(), south); }

        LocalDate day(String northern) { return LocalDate.parse(northern).minusMonths(south ? 6 : 0); }

        Half note(String day, String entry) {
            garden.note(day(day).toString(), here(entry));
            return this;
        }

        Optional<Task> find(String today, String id) {
            return SettledTest.find(garden, day(today).toString(), here(id));
        }

        Task task(String today, String id) { return SettledTest.task(garden, day(today).toString(), here(id)); }

        private String here(String text) {
            return south ? text.replace("@2027", "@2026-27").replace("@2028", "@2027-28") : text;
        }
    }

    private static Half planted(boolean south, String crop, int bushes) {
        Half garden = Half.of(south);
        for (int i = 1; i <= bushes; i++) {
            garden.note("2018-11-15", "'planted','plant':'%s-%d','crop':'%s','bed':'a'".formatted(crop, i, crop));
        }
        return garden;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_cut_of_one_of_two_gooseberries_leaves_the_other_to_cut(boolean south) {
        Half garden = planted(south, "gooseberry", 2).note("2027-02-20", "'pruned','plant':'gooseberry-1','tips':9");

        Task cut = garden.task("2027-02-25", "spur-cut-winter-gooseberry@a.gooseberry.leg@2027");

        assertThat(cut.state()).isEqualTo(Task.State.OPEN);
        assertThat(cut.title()).endsWith(": 1 of 2 bushes left");
        assertThat(cut.shares()).extracting(Share::id, Share::open).containsExactly(tuple("gooseberry-1", false),
                tuple("gooseberry-2", true));
        assertThat(cut.amount().map(Amount::words)).contains("1 plant");

        garden.note("2027-02-26", "'pruned','plant':'gooseberry-2','tips':9");
        Task both = garden.task("2027-02-27", "spur-cut-winter-gooseberry@a.gooseberry.leg@2027");
        assertThat(both.state()).isEqualTo(Task.State.DONE);
        assertThat(both.finished()).contains(garden.day("2027-02-26"));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_cut_in_november_that_does_not_say_which_is_not_next_summers(boolean south) {
        Half garden = planted(south, "redcurrant", 1).note("2026-11-20", "'pruned','plant':'redcurrant-1','tips':9");

        assertThat(garden.task("2026-11-25", "spur-cut-winter@a.redcurrant.leg@2027").state())
                .isEqualTo(Task.State.DONE);
        assertThat(garden.task("2026-11-25", "spur-cut-summer@a.redcurrant.leg@2027").state())
                .isEqualTo(Task.State.OPEN);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_cut_in_summer_that_does_not_say_which_is_not_next_winters(boolean south) {
        Half garden = planted(south, "redcurrant", 1).note("2027-07-10", "'pruned','plant':'redcurrant-1','tips':9");

        assertThat(garden.task("2027-07-20", "spur-cut-summer@a.redcurrant.leg@2027").state())
                .isEqualTo(Task.State.DONE);
        assertThat(garden.task("2027-12-01", "spur-cut-winter@a.redcurrant.leg@2028").state())
                .isEqualTo(Task.State.OPEN);
    }

    /** Once its only old stem is out, nothing is spent: but the cut was that of the old stem, not the other. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_cut_does_work_that_was_due_before_it_and_no_other(boolean south) {
        Half garden = planted(south, "blackcurrant", 1)
                .note("2026-11-20", "'counted','plant':'blackcurrant-1','stems':{'1':6,'2':4,'3':3,'5':1}")
                .note("2027-01-20", "'pruned','plant':'blackcurrant-1','stems':{'1':2,'5':1},'cut':'winter'");

        assertThat(garden.task("2027-01-21", "winter-cut@blackcurrant-1@2027").state()).isEqualTo(Task.State.DONE);
        assertThat(garden.find("2027-01-21", "winter-thin@blackcurrant-1@2027")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_first_picking_of_a_stand_leaves_the_rest_to_pick(boolean south) {
        Half garden = planted(south, "blackcurrant", 6).note("2027-07-05",
                "'picked','plant':'blackcurrant-1','kg':1.2");

        Task pick = garden.task("2027-07-06", "pick-currants@a.blackcurrant.stool@2027");

        assertThat(pick.state()).isEqualTo(Task.State.OPEN);
        // 1.2 kg of 75 % of 6 x 3.5 kg
        assertThat(pick.title()).endsWith("about 8 % done");
        assertThat(pick.shares().get(0).done()).isGreaterThan(0);
        assertThat(pick.shares().stream().skip(1)).allMatch(share -> share.done() == 0);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_expected_crop_picked_together_is_all_of_it(boolean south) {
        Half garden = planted(south, "blackcurrant", 6).note("2027-07-05",
                "'picked','bed':'a','crop':'blackcurrant','kg':21");

        Task pick = garden.task("2027-07-06", "pick-currants@a.blackcurrant.stool@2027");

        assertThat(pick.state()).isEqualTo(Task.State.DONE);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void what_was_picked_of_another_crop_in_the_bed_does_not_count(boolean south) {
        Half garden = planted(south, "blackcurrant", 2)
                .note("2018-11-15", "'planted','plant':'g-1','crop':'gooseberry','bed':'a'")
                .note("2027-07-05", "'picked','bed':'a','crop':'gooseberry','kg':40");

        assertThat(garden.task("2027-07-06", "pick-currants@a.blackcurrant.stool@2027").shares()).allMatch(Share::open);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_picking_in_november_is_not_next_julys(boolean south) {
        Half garden = planted(south, "blackcurrant", 1).note("2026-11-27", "'picked','plant':'blackcurrant-1','kg':30");

        assertThat(garden.task("2026-12-01", "pick-currants@a.blackcurrant.stool@2027").state())
                .isEqualTo(Task.State.OPEN);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '~',
            value = {"false | 2027-02-10 | 'bed':'a','material':'sulphate-of-potash','grams':240",
                    "false | 2026-11-10 | 'bed':'a','material':'bone-meal','grams':500",
                    "false | 2027-03-10 | 'plant':'blackcurrant-1','material':'ammonium-sulphate','grams':20",
                    "true | 2027-02-10 | 'bed':'a','material':'sulphate-of-potash','grams':240",
                    "true | 2026-11-10 | 'bed':'a','material':'bone-meal','grams':500",
                    "true | 2027-03-10 | 'plant':'blackcurrant-1','material':'ammonium-sulphate','grams':20"})
    void another_nutrient_or_another_bushs_feed_leaves_the_first_dressing(boolean south, String day, String fed) {
        Half garden = planted(south, "blackcurrant", 4).note(day, "'fed'," + fed);

        Task feed = garden.task("2027-03-12", "feed-first@a.blackcurrant.stool@2027");

        assertThat(feed.state()).isEqualTo(Task.State.OPEN);
        assertThat(feed.amount().orElseThrow().value()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void the_first_dressing_as_planned_is_done_when_all_its_materials_are_given(boolean south) {
        Half garden = planted(south, "blackcurrant", 4);
        Task planned = garden.task("2027-03-12", "feed-first@a.blackcurrant.stool@2027");
        planned.amount().orElseThrow().buys().forEach(buy -> garden.note("2027-03-13",
                "'fed','bed':'a','material':'%s','grams':%s".formatted(buy.material(), buy.amount())));

        assertThat(garden.find("2027-03-14", planned.id()).map(Task::state)).contains(Task.State.DONE);
    }

    @ParameterizedTest
    @CsvSource({"false, 2020-11-15, 2026-11-20, 2027-02-20, 2027", "true, 2020-05-15, 2026-05-20, 2026-08-20, 2026-27"})
    void a_row_counts_by_its_canes(boolean south, String planted, String counted, String day, String season) {
        SmallGarden garden = (south ? SmallGarden.south() : SmallGarden.north())
                .note(planted, "'planted','plant':'row','crop':'summer-raspberry','bed':'a','lengthM':4")
                .note(counted, "'canes','plant':'row','fresh':80,'fruited':0");
        String id = "canes-thin@row@" + season;
        double planned = task(garden, day, id).amount().orElseThrow().value();
        assertThat(planned).isGreaterThan(20);

        garden.note(day, "'pruned','plant':'row','cut':'winter','stems':{'1':10}");
        Task rest = task(garden, day, id);
        assertThat(rest.state()).isEqualTo(Task.State.OPEN);
        assertThat(rest.title()).endsWith("% done");
        assertThat(rest.amount().orElseThrow().value()).isEqualTo(planned - 10);

        garden.note(day, "'pruned','plant':'row','cut':'winter','stems':{'1':%d}".formatted((int) planned - 10));
        assertThat(find(garden, day, id).map(Task::state).orElse(Task.State.DONE)).isEqualTo(Task.State.DONE);
    }

    @ParameterizedTest
    @CsvSource({"false, 2027-03-20, 2027-05-20, 2027", "true, 2026-09-20, 2026-11-20, 2026-27"})
    void the_first_dressing_is_no_part_of_the_second(boolean south, String march, String may, String season) {
        SmallGarden garden = currants(south);
        Booking.of(task(garden, march, "feed-first@a.blackcurrant.stool@" + season))
                .forEach(fed -> garden.note(march, GrowersYearTest.line(fed)));

        Task second = task(garden, may, "feed-second@a.blackcurrant.stool@" + season);

        assertThat(second.state()).isEqualTo(Task.State.OPEN);
        assertThat(second.title()).doesNotContain("done");
        assertThat(garden.plan(may).missed()).extracting(Missed::task).noneMatch(id -> id.startsWith("feed-"));
    }

    @ParameterizedTest
    @CsvSource({"false, 2027-02-22, 2027-05-10, 2027", "true, 2026-08-22, 2026-11-10, 2026-27"})
    void a_first_dressing_of_potash_alone_is_told_as_missed(boolean south, String feb, String may, String season) {
        SmallGarden garden = currants(south).note(feb, "'fed','bed':'a','material':'sulphate-of-potash','grams':240");

        assertThat(garden.plan(may).missed())
                .filteredOn(missed -> missed.task().equals("feed-first@a.blackcurrant.stool@" + season)).singleElement()
                .extracting(Missed::title).asString().endsWith("% done");
    }

    /** What is left of the year's food goes with the second dressing, and is not a rest of the first. */
    @ParameterizedTest
    @CsvSource({"false, 2027-03-20, 2027-03-21, 2027", "true, 2026-09-20, 2026-09-21, 2026-27"})
    void of_quick_materials_the_first_dressing_is_done_when_it_is_given(boolean south, String given, String after,
            String season) {
        SmallGarden garden = currants(south, ",'materials':['ammonium-sulphate','sulphate-of-potash']");
        String first = "feed-first@a.blackcurrant.stool@" + season;
        Booking.of(task(garden, given, first)).forEach(fed -> garden.note(given, GrowersYearTest.line(fed)));

        assertThat(find(garden, after, first).map(Task::state)).contains(Task.State.DONE);
        assertThat(task(garden, after, first.replace("first", "second")).state()).isEqualTo(Task.State.OPEN);
    }

    /** After a first that was not given the second holds as much as one dressing may; the year wants still more. */
    @ParameterizedTest
    @CsvSource({"false, 2027-06-04, 2027-06-05, 2027", "true, 2026-12-04, 2026-12-05, 2026-27"})
    void a_full_second_dressing_is_done_though_the_first_was_missed(boolean south, String given, String after,
            String season) {
        SmallGarden garden = currants(south, ",'materials':['ammonium-sulphate','sulphate-of-potash']");
        String second = "feed-second@a.blackcurrant.stool@" + season;
        Booking.of(task(garden, given, second)).forEach(fed -> garden.note(given, GrowersYearTest.line(fed)));

        assertThat(find(garden, after, second).map(Task::state)).contains(Task.State.DONE);
    }

    private static SmallGarden currants(boolean south) { return currants(south, ""); }

    private static SmallGarden currants(boolean south, String more) {
        SmallGarden garden = south ? SmallGarden.south(more) : SmallGarden.north(more);
        for (int i = 1; i <= 4; i++) {
            garden.note("2018-05-15", "'planted','plant':'bc-%d','crop':'blackcurrant','bed':'a'".formatted(i));
        }
        return garden;
    }

    private static double grams(SmallGarden garden, boolean south) {
        String id = "feed-first@a.blackcurrant.stool@" + (south ? "2026-27" : "2027");
        return task(garden, south ? "2026-09-12" : "2027-03-12", id).amount().orElseThrow().value();
    }

    @ParameterizedTest
    @CsvSource({"false, 2026-10-31, 2026-11-01, 2027-03-01", "true, 2026-05-02, 2026-05-03, 2026-09-01"})
    void manure_counts_alike_on_both_sides_of_the_first_of_november(boolean south, String before, String after,
            String spring) {
        String manure = "'fed','bed':'a','material':'cattle-manure','grams':30000";

        double without = grams(currants(south), south);
        double with = grams(currants(south).note(spring, manure), south);

        assertThat(with).isBetween(1.0, 0.95 * without);
        assertThat(grams(currants(south).note(before, manure), south)).isEqualTo(with);
        assertThat(grams(currants(south).note(after, manure), south)).isEqualTo(with);
    }

    @ParameterizedTest
    @CsvSource({"false, 2026-12-05, 2027-03-10", "true, 2026-06-05, 2026-09-10"})
    void ammonium_of_early_winter_leaves_more_to_feed_in_spring(boolean south, String winter, String spring) {
        String ammonium = "'fed','bed':'a','material':'ammonium-sulphate','grams':250";

        double inSpring = grams(currants(south).note(spring, ammonium), south);

        assertThat(grams(currants(south).note(winter, ammonium), south)).isBetween(inSpring + 50,
                grams(currants(south), south) - 50);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_row_counts_by_its_metres(boolean south) {
        Half garden = Half.of(south)
                .note("2020-11-15", "'planted','plant':'row','crop':'summer-raspberry','bed':'a','lengthM':8")
                .note("2027-08-20", "'pruned','plant':'row','cut':'canes','metres':3");

        assertThat(garden.task("2027-08-21", "canes-out@row@2027").state()).isEqualTo(Task.State.OPEN);
        garden.note("2027-08-22", "'pruned','plant':'row','cut':'canes','metres':5");
        assertThat(garden.task("2027-08-23", "canes-out@row@2027").state()).isEqualTo(Task.State.DONE);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_row_counts_by_its_fruited_canes(boolean south) {
        Half garden = Half.of(south)
                .note("2020-11-15", "'planted','plant':'row','crop':'summer-raspberry','bed':'a','lengthM':8")
                .note("2027-08-10", "'canes','plant':'row','fresh':60,'fruited':40")
                .note("2027-08-20", "'pruned','plant':'row','cut':'canes','stems':{'2':15}");

        Task out = garden.task("2027-08-21", "canes-out@row@2027");
        assertThat(out.state()).isEqualTo(Task.State.OPEN);
        garden.note("2027-08-22", "'pruned','plant':'row','cut':'canes','stems':{'2':25}");
        assertThat(garden.task("2027-08-23", "canes-out@row@2027").state()).isEqualTo(Task.State.DONE);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void done_for_some_plants_leaves_the_others(boolean south) {
        Half garden = planted(south, "gooseberry", 3)
                .note("2027-02-20",
                        "'done','task':'spur-cut-winter-gooseberry@a.gooseberry.leg@2027','only':['gooseberry-2']")
                .note("2027-02-21",
                        "'skipped','task':'spur-cut-winter-gooseberry@a.gooseberry.leg@2027','only':['gooseberry-3']");

        Task cut = garden.task("2027-02-25", "spur-cut-winter-gooseberry@a.gooseberry.leg@2027");

        assertThat(cut.state()).isEqualTo(Task.State.OPEN);
        assertThat(cut.settled().left()).extracting(Share::id).containsExactly("gooseberry-1");
    }
}
