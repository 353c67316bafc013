package org.oldwood.cli.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** {@code ledger} and {@code shopping}. */
class LedgerCommandTest {
    @TempDir
    Path folder;

    @BeforeEach
    void garden() throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Fire station", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c11",
                 "site": {"latitude": 52, "longitude": -2, "zone": "Europe/London"},
                 "beds": [{"id": "north", "name": "North bed", "areaM2": 10, "texture": "sandy-loam"},
                          {"id": "south", "name": "South bed", "areaM2": 4}],
                 "materials": ["ammonium-sulphate", "straw"]}
                """);
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id": "e1", "date": "2018-11-20", "entry": "planted", "plant": "bc-1", "crop": "blackcurrant", "bed": "north", "bushes": 4}
                        {"id": "e2", "date": "2026-03-20", "entry": "fed", "bed": "north", "material": "dried-blood", "grams": 400}
                        {"id": "e3", "date": "2026-09-20", "entry": "soil-test", "bed": "north", "ph": 6.0}
                        """);
    }

    private Cli.Result run(String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--today";
        all[args.length + 1] = "2026-11-25";
        return Cli.in(folder).run(all);
    }

    @Test
    void the_ledger_tells_what_was_given_and_its_sums() {
        Cli.Result result = run("ledger");

        assertThat(result.exit()).isZero();
        // 40 g/m2 of 12.5 % N, of which 66 % count; 5 % of the total in the next season
        assertThat(result.out()).contains("North bed (north), 10 m²")
                .contains("20 Mar 2026  dried blood, 400 g (40 g/m²): N 3.3, P2O5 0.6, K2O 0.2 g/m²")
                .contains("Season 2027").contains("left by the season before: N 0.3 g/m²")
                .contains("South bed (south), 4 m²").contains("Nothing was noted as given");
        assertThat(run("ledger", "south").out()).doesNotContain("North bed");
    }

    /** A round ticked off is noted bush by bush. */
    @Test
    void what_bushes_got_alike_is_one_line_and_what_the_bed_got_twice_is_two() throws IOException {
        Path journal = folder.resolve("journal.jsonl");
        String fed = "{\"id\":\"f%s\",\"date\":\"2026-04-01\",\"entry\":\"fed\",%s,\"material\":\"dried-blood\",\"grams\":30}\n";
        StringBuilder more = new StringBuilder(Files.readString(journal));
        for (String id : List.of("x", "y")) {
            more.append(
                    "{\"id\":\"p%1$s\",\"date\":\"2022-01-10\",\"entry\":\"planted\",\"plant\":\"%1$s\",\"crop\":\"gooseberry\",\"bed\":\"south\"}\n"
                            .formatted(id));
            more.append(fed.formatted(id, "\"plant\":\"" + id + "\""));
            more.append(fed.formatted("b" + id, "\"bed\":\"south\""));
        }
        Files.writeString(journal, more.toString());

        assertThat(run("ledger", "south").out().lines().filter(line -> line.contains("1 Apr 2026"))).hasSize(3)
                .filteredOn(line -> line.contains("dried blood, 30 g each to x and y")).hasSize(1);
    }

    @Test
    void the_ledger_as_json_has_the_same_numbers() {
        String json = run("ledger", "north", "--json").out().replaceAll("\\s", "");

        assertThat(json).contains("\"gPerM2\":40").contains("\"gives\":{\"N\":3.3,\"P2O5\":0.6,\"K2O\":0.24,\"MgO\":0}")
                .contains("\"season\":\"2027\"").contains("\"left\":{\"N\":0.25,");
    }

    @Test
    void the_shopping_list_tells_totals_packs_and_beds() {
        Cli.Result result = run("shopping");

        assertThat(result.exit()).isZero();
        // pH 6.0 to 6.5 on sandy loam: 350 g/m2 on 10 m2
        assertThat(result.out()).contains("ground limestone: 3.5 kg, 1 pack of 5 kg (our assumption)")
                .contains("not among your materials").contains("ammonium sulphate: ").contains("- North bed")
                .contains("Take care: Keep feeds");
        assertThat(result.out().replaceAll("\\s+", " "))
                .contains("no material at hand brings phosphate, potash and magnesia");
        assertThat(run("shopping", "--uses").out()).contains("lime@north@2027");
        assertThat(result.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
    }

    @Test
    void the_shopping_list_as_json_adds_up() {
        String json = run("shopping", "--json").out().replaceAll("\\s", "");

        assertThat(json)
                .contains("\"material\":\"ground-limestone\",\"name\":\"groundlimestone\","
                        + "\"amount\":3500,\"unit\":\"g\",\"kept\":false")
                .contains("\"packs\":1,\"pack\":\"5kg\",\"packSeen\":\"assumed\"")
                .contains("\"task\":\"lime@north@2027\"");
    }

    @Test
    void an_unknown_bed_is_a_wrong_command_line() {
        Cli.Result result = run("ledger", "nort");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("there is no bed \"nort\"").contains("\"north\"");
    }

    @Test
    void without_a_garden_both_say_so() throws IOException {
        Files.delete(folder.resolve("garden.json"));

        assertThat(run("ledger").exit()).isEqualTo(1);
        assertThat(run("shopping").exit()).isEqualTo(1);
    }
}
