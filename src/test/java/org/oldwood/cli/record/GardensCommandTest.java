package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** A garden is found without being named each time; nothing is written but in the folder for settings. */
class GardensCommandTest {
    private static final String DAY = "--today=2026-11-28";

    @TempDir
    Path home;

    private Path elsewhere = Path.of("");

    @BeforeEach
    void elsewhere() throws IOException { elsewhere = Files.createDirectories(home.resolve("elsewhere")); }

    private Cli.Result run(String... args) { return Cli.in(elsewhere).with("HOME", home.toString()).run(args); }

    private Cli.Result ok(String... args) {
        Cli.Result result = run(args);
        assertThat(result.exit()).as(result.err()).isZero();
        return result;
    }

    private Cli.Result start(String name) {
        return ok("start", home.resolve(name).toString(), "--name=" + name, "--at=52,-2,50", "--plants=gooseberry=1",
                "--planted=2021", "--zone=UTC", DAY);
    }

    @Test
    void the_first_garden_is_found_from_anywhere_and_said() {
        assertThat(start("allotment").err()).contains("usual garden", "allotment",
                "Next: oldwood, and oldwood calendar");

        Cli.Result stock = ok("stock", DAY);

        assertThat(stock.out()).contains("gooseberry-1");
        assertThat(stock.err()).contains("Garden: " + home.resolve("allotment"));
        assertThat(home.resolve(".config/oldwood/gardens.json")).isRegularFile();
    }

    @Test
    void the_current_folder_and_a_named_garden_come_first() {
        start("allotment");
        start("school");
        ok("note", "planted", "gooseberry-2", "--crop=gooseberry", "--bed=gooseberry-bed", "--garden",
                home.resolve("school").toString(), DAY);

        Cli.Result here = Cli.in(home.resolve("school")).with("HOME", home.toString()).run("stock", DAY);
        assertThat(here.out()).contains("gooseberry-2");
        assertThat(ok("gardens", "--name=school", "--folder", home.resolve("school").toString()).out())
                .contains("school", "allotment  usual");
        assertThat(ok("stock", "--garden=school", DAY).out()).contains("gooseberry-2");
        assertThat(ok("stock", DAY).out()).doesNotContain("gooseberry-2");
        ok("gardens", "--usual=school");
        assertThat(ok("stock", DAY).out()).contains("gooseberry-2");
    }

    @Test
    void forgetting_a_name_leaves_the_garden() {
        start("allotment");

        ok("gardens", "--forget=allotment");

        assertThat(run("stock", DAY).exit()).isEqualTo(1);
        assertThat(home.resolve("allotment/garden.json")).isRegularFile();
    }

    @Test
    void wrong_names_and_damaged_settings_are_told() throws IOException {
        start("allotment");

        assertThat(run("gardens", "--usual=alotment").err()).contains("Did you mean \"allotment\"?");
        assertThat(run("gardens", "--name=Mine").exit()).isEqualTo(2);
        assertThat(run("gardens", "--name=mine").err().replaceAll("\\s+", " ")).contains("is no garden");
        Files.writeString(home.resolve(".config/oldwood/gardens.json"), "{\"usual\": 3}");
        Cli.Result damaged = run("stock", DAY);
        assertThat(damaged.exit()).isEqualTo(1);
        assertThat(damaged.err()).contains("gardens.json", "usual");
    }

    @Test
    void a_folder_for_settings_may_be_given() {
        Path settings = home.resolve("settings");
        Cli.Result result = Cli.in(elsewhere).with("XDG_CONFIG_HOME", settings.toString()).run("start", "g", "--name=G",
                "--at=-42,147,20", "--plants=gooseberry=1", "--planted=2021", "--zone=UTC", DAY);

        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(settings.resolve("oldwood/gardens.json")).isRegularFile();
    }
}
