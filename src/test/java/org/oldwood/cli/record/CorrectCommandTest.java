package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** What stands after an entry was set right. */
class CorrectCommandTest extends Slope {

    private String last(String kind) throws IOException {
        List<String> all = journal(kind);
        return all.get(all.size() - 1);
    }

    /** Its feed would else be given twice. */
    @ParameterizedTest
    @ValueSource(strings = {"note=with a full barrow", "date=2027-03-19"})
    void a_tick_keeps_what_it_booked(String right) throws IOException {
        ok("note", "done", FEED, MARCH);
        String fed = last("fed");
        int dressings = journal("fed").size();
        String ledger = ok("ledger", MARCH).replace("20 Mar", "19 Mar");
        ok("correct", id(last("done")), right, MARCH);

        assertThat(journal("fed")).hasSize(2 * dressings);
        assertThat(last("fed")).contains("\"planned\":true", fed.replaceFirst(".*(\"grams\":[0-9.]+).*", "$1"));
        assertThat(ok("ledger", MARCH).replace("20 Mar", "19 Mar")).isEqualTo(ledger);
        ok("undo", MARCH);
        assertThat(ok("ledger", MARCH).replace("20 Mar", "19 Mar")).isEqualTo(ledger);
    }

    @Test
    void a_tick_keeps_the_figures_that_were_set_right_before_it() throws IOException {
        ok("note", "done", FEED, MARCH);
        ok("correct", id(last("fed")), "grams=77", MARCH);
        ok("correct", id(last("done")), "note=weighed", MARCH);

        assertThat(last("fed")).contains("\"grams\":77", "\"tick\":\"" + id(last("done")) + "\"")
                .doesNotContain("planned");
    }

    @Test
    void a_tick_of_other_plants_books_for_those() throws IOException {
        ok("note", "done", FEED, MARCH);
        int dressings = journal("fed").size();
        ok("correct", id(last("done")), "only=blackcurrant-1", MARCH);

        assertThat(journal("fed").subList(dressings, journal("fed").size())).isNotEmpty()
                .allMatch(line -> line.contains("\"plant\":\"blackcurrant-1\""));
        assertThat(ok("tasks", "--each", MARCH)).contains("3 of 4 bushes left");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kg=1.5", "--kg=1.5", "--kg 1.5", "--kg 1500g", "kg=1500g --note=wet"})
    void takes_what_is_right_as_a_note_takes_it(String typed) throws IOException {
        ok("note", "picked", "blackcurrant-1", "--kg=15", "--date=2026-07-20");
        List<String> args = new ArrayList<>(List.of("correct", id(last("picked"))));
        args.addAll(List.of(typed.split(" ")));
        ok(args.toArray(String[]::new));

        assertThat(last("picked")).contains("\"kg\":1.5");
    }

    @ParameterizedTest
    @ValueSource(strings = {"kg", "--kg", "kg 3"})
    void says_how_to_write_what_is_right(String typed) throws IOException {
        ok("note", "picked", "blackcurrant-1", "--kg=15", "--date=2026-07-20");
        List<String> args = new ArrayList<>(List.of("correct", id(last("picked"))));
        args.addAll(List.of(typed.split(" ")));
        Cli.Result result = run(args.toArray(String[]::new));

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("what is \"kg\" to be? Write it as kg=VALUE");
    }

    @Test
    void a_key_that_the_entry_has_not_is_no_correction() throws IOException {
        ok("note", "picked", "blackcurrant-1", "--kg=15", "--date=2026-07-20");
        for (String typed : List.of("kgs=", "--kgs=3")) {
            Cli.Result result = run("correct", id(last("picked")), typed);
            assertThat(result.exit()).isEqualTo(2);
            assertThat(result.err().replaceAll("\\s+", " ")).contains("no key of picked \"kgs\"",
                    "Did you mean \"kg\"?");
        }
        assertThat(journal("withdrawn")).isEmpty();
    }

    @Test
    void an_undo_says_what_it_takes_back_and_how_to_undo_that() throws IOException {
        ok("note", "done", FEED, MARCH);
        int fed = journal("fed").size();
        ok("note", "picked", "blackcurrant-1", "--kg=15", "--date=2026-07-20");
        assertThat(flat(run("undo", MARCH))).contains("(2026-07-20 picked: plant blackcurrant-1, kg 15)",
                "oldwood undo " + id(last("withdrawn")) + " undoes that");
        assertThat(flat(run("undo", MARCH))).contains("done: task " + FEED + ", and " + fed + " with it)");

        String ledger = ok("ledger", MARCH);
        ok("undo", id(last("withdrawn")), MARCH);
        assertThat(ok("ledger", MARCH)).isNotEqualTo(ledger).contains("as planned");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"note picked blackcurrant-1 --kg=3,5|Write it with a point: 3.5",
            "note counted blackcurrant-1 --stems=3,4|stems must be counted by age but is \"3,4\" Write for example: 1=5",
            "note mulched blackcurrant-bed --material=straw --depth=5|Unknown option: '--depth'. Did you mean --depthCm?",
            "note picked blackcurrant-1 kg=3|'kg=3'. Did you mean --kg=3?",
            "note picked blackcurrant-1 --kg=3 note=wet|'note=wet'. Did you mean --note=wet?",
            "undo 3|--last 3 takes back the last 3",
            "note picked blackcurrant-1 --lb=3|Unknown option: '--lb'. A unit stands behind its number: 3 lb",
            "note picked blackcurrant-1 --kg=2500|Is it the right weight? If not: oldwood correct e-",
            "note picked blackcurrant-1 --kg=1 --date=2026-01-20|Picked on 2026-01-20? Blackcurrants are ripe about 2026-07",
            "note picked blackcurrant-1 --kg=1 --date=2025-12-20|If not: oldwood correct e-",
            "note picked blackcurrant-1 --kg=1 --date=2019-06-01|It is there from 2021-03-01 on.",
            "note skipped winter-cut@blackcurrant-1@2017|winter-cut@blackcurrant-1@2017 is not in the plan of"})
    void a_slip_is_told_with_what_to_type(String command, String told) {
        assertThat(flat(run(command.split(" ")))).contains(told);
    }

    @Test
    void fruit_picked_in_its_time_is_not_asked_about() throws IOException {
        for (String day : new String[]{"2026-05-28", "2026-07-20", "2026-09-30"}) {
            assertThat(flat(run("note", "picked", "blackcurrant-1", "--kg=1", "--date=" + day)))
                    .doesNotContain("Picked on");
        }
    }

    @Test
    void a_planting_with_notes_of_its_plant_is_not_taken_back() throws IOException {
        assertThat(flat(run("undo", id(journal("planted").get(0)))))
                .contains("That it came was taken back: take back what was noted of it first.", "nothing was written");
    }

    @Test
    void what_an_entry_says_already_is_no_correction() throws IOException {
        ok("note", "picked", "blackcurrant-1", "--kg=15", "--date=2026-07-20");

        assertThat(flat(run("correct", id(last("picked")), "kg=15")))
                .contains("says already: plant blackcurrant-1, kg 15");
        assertThat(journal("withdrawn")).isEmpty();
    }

    @Test
    void an_undo_says_what_the_next_one_would_take() {
        ok("note", "watered", "blackcurrant-bed", "--litres=30", MARCH);
        ok("note", "watered", "blackcurrant-bed", "--litres=40", MARCH);

        assertThat(flat(run("undo", MARCH)))
                .contains("Undo again would take back: 2027-03-20 watered: bed blackcurrant-bed, litres 30");
    }

    /** Else check would go on to ask for what was done already. */
    @ParameterizedTest
    @ValueSource(strings = {"undo", "correct"})
    void an_entry_of_a_day_to_come_that_was_mended_is_no_problem(String how) throws IOException {
        ok("note", "watered", "blackcurrant-bed", "--litres=30", "--today=2028-01-01");
        assertThat(flat(run("check", MARCH))).contains("still to come");
        String id = id(last("watered"));
        ok(how.equals("undo") ? new String[]{"undo", id, MARCH}
                : new String[]{"correct", id, "date=2027-03-19", MARCH});

        assertThat(run("check", MARCH).err()).doesNotContain("still to come");
    }

    private static String flat(Cli.Result result) { return (result.out() + result.err()).replaceAll("\\s+", " "); }
}
