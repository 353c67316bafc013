package org.oldwood.facts.cuttings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.PastLot;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LotState;
import org.oldwood.season.CalendarStages;

class LotBookTest {
    private static final String GARDEN = """
            {"format": 1, "name": "Test", "id": "5f0c9f0e-6b1d-4c55-9d11-0a4f7c3f2a10",
             "site": {"latitude": 52, "longitude": -2, "heightM": 60, "zone": "Europe/London"},
             "beds": [{"id": "n", "name": "nursery", "areaM2": 20, "texture": "loam"}]}
            """;
    private static final String PLANTED = """
            {"id": "e1", "date": "2015-11-20", "entry": "planted", "plant": "bc-1", "crop": "blackcurrant", "bed": "n"}
            """;

    @TempDir
    Path folder;

    private LotBook book(String day, String... lines) throws IOException {
        Files.writeString(folder.resolve("garden.json"), GARDEN);
        StringBuilder journal = new StringBuilder(PLANTED);
        int id = 2;
        for (String line : lines) {
            journal.append("{\"id\": \"e").append(id++).append("\", ").append(line).append("}\n");
        }
        Files.writeString(folder.resolve("journal.jsonl"), journal);
        GardenFolder garden = GardenFolder.open(folder);
        state = garden.on(LocalDate.parse(day));
        assertThat(garden.problems().list()).isEmpty();
        return new LotBook(state, garden.crops(), new CalendarStages());
    }

    private GardenState state;

    private LotState lot(String id) { return state.lots().get(id); }

    private static String struck(String lot, String on, int number) {
        return "\"date\": \"%s\", \"entry\": \"struck\", \"lot\": \"%s\", \"parent\": \"bc-1\", \"method\": \"hardwood\", \"number\": %d, \"bed\": \"n\""
                .formatted(on, lot, number);
    }

    @Test
    void counts_follow_the_journal() throws IOException {
        LotBook book = book("2028-01-01", struck("a", "2026-11-20", 12),
                "\"date\": \"2027-06-01\", \"entry\": \"checked\", \"lot\": \"a\", \"alive\": 10",
                "\"date\": \"2027-08-01\", \"entry\": \"lost\", \"lot\": \"a\", \"number\": 1, \"cause\": \"drought\"",
                "\"date\": \"2027-11-12\", \"entry\": \"lifted\", \"lot\": \"a\", \"rooted\": 9, \"good\": 8");

        LotCounts counts = book.counts(lot("a"));

        assertThat(counts.alive()).isEqualTo(8);
        assertThat(counts.liftedOn()).contains(LocalDate.parse("2027-11-12"));
        assertThat(book.forecast(lot("a")).orElseThrow().plants().mean()).isCloseTo(8 * 0.95, within(1e-9));
    }

    @Test
    void a_lot_of_the_past_teaches_the_next() throws IOException {
        String past = struck("a", "2024-11-20", 20);
        String next = struck("b", "2026-11-20", 12);
        LotBook book = book("2026-12-01", past,
                "\"date\": \"2025-06-01\", \"entry\": \"checked\", \"lot\": \"a\", \"alive\": 19",
                "\"date\": \"2025-11-12\", \"entry\": \"lifted\", \"lot\": \"a\", \"rooted\": 19, \"good\": 19", next);

        double taught = book.forecast(lot("b")).orElseThrow().plants().mean();

        assertThat(taught).isGreaterThan(12 * 0.77 * 0.9 * 0.95);
        assertThat(taught).isLessThan(12 * 0.95);
    }

    @Test
    void reversion_once_found_bars_the_bush_for_good() throws IOException {
        LotBook book = book("2026-12-01",
                "\"date\": \"2025-02-01\", \"entry\": \"inspected\", \"plant\": \"bc-1\", \"finding\": \"reversion\"",
                "\"date\": \"2026-02-01\", \"entry\": \"inspected\", \"plant\": \"bc-1\", \"finding\": \"healthy\"");

        assertThat(book.health(state.plant("bc-1").orElseThrow()).orElseThrow().fit()).isFalse();
    }

    @Test
    void an_old_bush_never_inspected_is_warned_about() throws IOException {
        LotBook book = book("2026-12-01");

        ParentHealth health = book.health(state.plant("bc-1").orElseThrow()).orElseThrow();

        assertThat(health.fit()).isTrue();
        assertThat(health.warnings().get(0).words()).contains("11 years old");
    }

    @Test
    void a_loss_noted_with_a_count_says_what_killed_the_missing() throws IOException {
        LotBook book = book("2027-06-01", struck("a", "2026-11-20", 14),
                "\"date\": \"2027-05-17\", \"entry\": \"checked\", \"lot\": \"a\", \"alive\": 7",
                "\"date\": \"2027-05-17\", \"entry\": \"lost\", \"lot\": \"a\", \"number\": 7, \"cause\": \"drought\"");

        assertThat(book.counts(lot("a")).alive()).isEqualTo(7);
    }

    @Test
    void a_loss_without_a_number_is_asked_about() throws IOException {
        LotBook book = book("2027-06-01", struck("a", "2026-11-20", 14),
                "\"date\": \"2027-05-17\", \"entry\": \"lost\", \"lot\": \"a\", \"cause\": \"frost\"");

        assertThat(book.counts(lot("a")).alive()).isEqualTo(14);
        assertThat(state.questions()).singleElement().asString().contains("How many?");
    }

    @Test
    void plants_that_stand_are_what_is_left_of_a_lot() throws IOException {
        LotBook book = book("2031-06-01", struck("a", "2026-11-20", 6),
                "\"date\": \"2027-11-20\", \"entry\": \"planted-out\", \"lot\": \"a\", \"bed\": \"n\", \"plants\": [\"x\", \"y\", \"z\"]",
                "\"date\": \"2029-07-01\", \"entry\": \"lost\", \"plant\": \"y\", \"cause\": \"voles\"",
                "\"date\": \"2029-12-01\", \"entry\": \"inspected\", \"plant\": \"x\", \"finding\": \"healthy\"");

        assertThat(book.counts(lot("a")).alive()).isEqualTo(2);
        assertThat(book.forecast(lot("a")).orElseThrow().plants().mean()).isCloseTo(2, within(1e-12));
        assertThat(state.plant("x").orElseThrow().plant().lot()).contains("a");
    }

    private static String currant(String method, String more) {
        return "\"date\": \"2026-11-20\", \"entry\": \"struck\", \"lot\": \"r\", \"crop\": \"redcurrant\", \"method\": \"%s\", \"number\": 12, \"bed\": \"n\"%s"
                .formatted(method, more);
    }

    @Test
    void buds_kept_make_a_stool_and_buds_off_a_leg() throws IOException {
        LotBook stool = book("2026-12-01", currant("hardwood", ""));
        assertThat(stool.form(lot("r"))).isEqualTo("stool");
        assertThat(stool.course(lot("r")).orElseThrow().cut().id()).isEqualTo("hard");

        LotBook leg = book("2026-12-01", currant("disbudded", ""));
        assertThat(leg.form(lot("r"))).isEqualTo("leg");
        assertThat(leg.course(lot("r")).orElseThrow().cut().id()).isEqualTo("light");

        LotBook cordon = book("2026-12-01", currant("disbudded", ", \"form\": \"cordon\""));
        assertThat(cordon.form(lot("r"))).isEqualTo("cordon");
    }

    @Test
    void the_cut_noted_at_the_strike_decides_the_first_pick() throws IOException {
        LotBook book = book("2026-12-01", currant("hardwood", ", \"cut\": \"none\""));
        int uncut = book.forecast(lot("r")).orElseThrow().line().firstPick().year();
        book = book("2026-12-01", currant("hardwood", ", \"cut\": \"hard\""));

        assertThat(book.forecast(lot("r")).orElseThrow().line().firstPick().year()).isEqualTo(uncut + 1);
    }

    @Test
    void the_plants_of_a_lot_take_its_form() throws IOException {
        book("2028-01-01", currant("hardwood", ", \"form\": \"stool\""),
                "\"date\": \"2027-11-20\", \"entry\": \"planted-out\", \"lot\": \"r\", \"bed\": \"n\", \"plants\": [\"rc-9\"]");

        assertThat(state.plant("rc-9").orElseThrow().plant().form()).isEqualTo("stool");
    }

    private PastLot past(String day) throws IOException {
        LotBook book = book(day, struck("a", "2024-11-20", 20),
                "\"date\": \"2024-12-01\", \"entry\": \"checked\", \"lot\": \"a\", \"alive\": 20",
                "\"date\": \"2025-09-20\", \"entry\": \"checked\", \"lot\": \"a\", \"alive\": 18",
                "\"date\": \"2025-10-20\", \"entry\": \"checked\", \"lot\": \"a\", \"alive\": 17",
                "\"date\": \"2025-11-12\", \"entry\": \"lifted\", \"lot\": \"a\", \"rooted\": 16, \"good\": 15",
                "\"date\": \"2025-11-20\", \"entry\": \"planted-out\", \"lot\": \"a\", \"bed\": \"n\", \"plants\": [\"x\", \"y\", \"z\"]",
                "\"date\": \"2026-05-01\", \"entry\": \"lost\", \"plant\": \"x\", \"cause\": \"voles\"",
                "\"date\": \"2027-05-01\", \"entry\": \"lost\", \"plant\": \"y\", \"cause\": \"voles\"");
        Timeline line = book.forecast(lot("a")).orElseThrow().line();
        return LotRecord.past(lot("a"), line, state);
    }

    /** The first count after rooting, the good ones lifted, those that stood for a year. */
    @Test
    void a_past_lot_is_the_first_count_of_each_phase() throws IOException {
        PastLot past = past("2027-06-01");

        assertThat(past.rooted()).hasValue(18);
        assertThat(past.lifted()).hasValue(15);
        assertThat(past.plantedOut()).hasValue(3);
        assertThat(past.established()).hasValue(2);
    }

    @Test
    void plants_are_established_after_a_year_and_not_on_its_last_day() throws IOException {
        assertThat(past("2026-11-20").plantedOut()).isEmpty();
        assertThat(past("2026-11-20").established()).isEmpty();
        assertThat(past("2026-11-21").plantedOut()).hasValue(3);
    }
}
