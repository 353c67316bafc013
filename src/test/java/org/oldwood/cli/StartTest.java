package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

class StartTest {
    @TempDir
    Path folder;

    @Test
    void the_example_in_the_help_runs() throws IOException {
        String help = Cli.in(folder).run("start", "--help").out();
        assertThat(help).contains("--plants blackcurrant=4,gooseberry=2 --planted 2021");

        Cli.Result result = Cli.in(folder).run("start", "our-garden", "--name", "Our garden", "--at", "52.1,-2.3",
                "--plants", "blackcurrant=4,gooseberry=2", "--planted", "2021");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.out()).isEqualTo("blackcurrant-bed: 4 blackcurrant\ngooseberry-bed: 2 gooseberry\n");
        assertThat(result.err()).contains("Next: oldwood calendar --garden ");
        assertThat(Files.readString(folder.resolve("our-garden/garden.json")))
                .containsPattern("\"id\": \"[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}\"");
        assertThat(Cli.in(folder).run("check", "--garden", "our-garden").exit()).isZero();
    }

    @Test
    void a_southern_garden_is_planted_at_the_end_of_its_own_winter() throws IOException {
        Cli.Result result = Cli.in(folder).run("start", "south", "--name", "South", "--at", "-41.3,174.8", "--plants",
                "blackcurrant=1", "--planted", "2021", "--today", "2026-11-25", "--zone", "Pacific/Auckland");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(Files.readString(folder.resolve("south/journal.jsonl"))).contains("\"date\":\"2021-09-01\"");
        assertThat(result.err().replaceAll("\\s+", " "))
                .contains("A year alone is taken as the end of its planting season, 1 Sep 2021;");
        assertThat(Cli.in(folder).run("stock", "--garden=south").out()).contains("stool  2021").doesNotContain("2021-");
    }

    @Test
    void planted_this_year_is_never_after_today() throws IOException {
        Cli.in(folder).run("start", "new", "--name", "New", "--at", "52,-2", "--plants", "blueberry=1", "--planted",
                "2026", "--today", "2026-01-20", "--zone", "Europe/London");

        assertThat(Files.readString(folder.resolve("new/journal.jsonl"))).contains("\"date\":\"2026-01-20\"");
    }

    @Test
    void a_stock_list_names_beds_varieties_and_forms() throws IOException {
        Files.writeString(folder.resolve("stock.csv"),
                "crop,number,bed,cultivar,form\nredcurrant,2,wall,Unknown red,cordon\nblueberry,3,tubs,,\nwhitecurrant,1,wall,,\n");

        Cli.Result result = Cli.in(folder).run("start", "new", "--name", "New", "--at", "52,-2", "--stock", "stock.csv",
                "--planted", "2019", "--bed-area", "7.5", "--zone", "Europe/London", "--quiet");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(Files.readString(folder.resolve("new/journal.jsonl")).lines()).hasSize(6).first().asString()
                .contains("\"form\":\"cordon\",\"cultivar\":\"Unknown red\"");
        assertThat(Files.readString(folder.resolve("new/garden.json")))
                .contains("\"id\": \"wall\",\n      \"areaM2\": 7.5");
    }

    @Test
    void one_cane_is_one_plant_and_soil_that_was_never_tested_is_not_said_to_be() throws IOException {
        Cli.Result result = Cli.in(folder).run("start", "new", "--name", "New", "--at", "-43.5,172.6", "--plants",
                "summer-raspberry=1,blueberry=2", "--planted", "2021", "--zone", "Pacific/Auckland");

        assertThat(result.err()).contains("one row of 0.5 m, 1 plant at 0.45 m");
        assertThat(Cli.in(folder).run("lime", "--garden", "new").out().replaceAll("\\s+", " "))
                .contains("no \"soil-test\" with \"ph\" is noted yet").doesNotContain("the soil was tested");
    }

    /** Nobody remembers the day; --planted takes a year too. */
    @Test
    void a_stock_list_may_say_the_year_alone() throws IOException {
        Files.writeString(folder.resolve("stock.csv"), "crop,planted\nredcurrant,2019\nblueberry,2021-07-03\n");

        Cli.Result result = Cli.in(folder).run("start", "new", "--name", "New", "--at", "-43.5,172.6", "--stock",
                "stock.csv", "--zone", "Pacific/Auckland");

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(Files.readString(folder.resolve("new/journal.jsonl")).lines()).satisfiesExactly(
                line -> assertThat(line).contains("\"date\":\"2019-09-01\"", "\"about\":\"year\""),
                line -> assertThat(line).contains("\"date\":\"2021-07-03\"").doesNotContain("about"));
    }

    /** Neither its name nor its units are those of the garden that is made. */
    @Test
    void the_usual_garden_has_no_part_in_a_new_one() throws IOException {
        Cli.in(folder).run("start", "usual", "--name", "Usual", "--at", "44,-90", "--units", "us", "--plants",
                "blueberry=1", "--planted", "2020", "--zone", "UTC");
        String[] plum = {"start", "new", "--name", "New", "--at", "52,-2", "--plants", "plum=1", "--planted", "2020",
                "--zone", "UTC"};

        assertThat(Cli.in(folder).run(plum).err()).contains("there is no crop \"plum\"").doesNotContain("Garden:");
        plum[7] = "blueberry=1";
        List<String> sized = new ArrayList<>(List.of(plum));
        sized.addAll(List.of("--bed-area", "8"));
        assertThat(Cli.in(folder).run(sized.toArray(String[]::new)).err()).doesNotContain("Garden:");
        assertThat(Files.readString(folder.resolve("new/garden.json"))).contains("\"areaM2\": 8");
    }

    @Test
    void a_day_in_the_table_wins_over_the_year_and_it_is_said() throws IOException {
        Files.writeString(folder.resolve("stock.csv"),
                "crop,number,bed,planted\nredcurrant,1,wall,2019-11-20\nredcurrant,1,wall,\n");

        Cli.Result result = Cli.in(folder).run("start", "new", "--name", "New", "--at", "52,-2", "--stock", "stock.csv",
                "--planted", "2021", "--zone", "Europe/London");

        assertThat(result.err().replaceAll("\\s+", " "))
                .contains("What the column planted says wins; --planted 2021 is for the lines without.");
        assertThat(Files.readString(folder.resolve("new/journal.jsonl")).lines())
                .anyMatch(line -> line.contains("2019-11-20")).anyMatch(line -> line.contains("2021-03-01"));
    }

    @Test
    void a_folder_that_cannot_be_written_leaves_nothing() throws IOException {
        Files.writeString(folder.resolve("file"), "x");

        Cli.Result result = Cli.in(folder).run("start", "file", "--name", "New", "--at", "52,-2", "--plants",
                "blueberry=1", "--planted", "2020", "--zone", "Europe/London");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("is a file, not a folder");
        assertThat(folder.resolve("file")).hasContent("x");
    }

    @Test
    void the_completion_script_knows_commands_and_entries() {
        String script = Cli.in(folder).run("completion").out();

        assertThat(script).startsWith("#!").contains("oldwood", "planted-out", "--depthCm");
        assertThat(script).doesNotContain("\r");
    }
}
