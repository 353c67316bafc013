package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;
import picocli.CommandLine;

class MainTest {
    @TempDir
    Path folder;

    @Test
    void without_a_command_the_usage_stands_on_stderr_and_the_exit_code_is_2() {
        Cli.Result result = Cli.in(folder).run();

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("Usage: oldwood").contains("sources");
    }

    @Test
    void the_help_lists_every_command_with_what_it_does_in_80_columns() {
        Cli.Result result = Cli.in(folder).run("--help");

        assertThat(result.exit()).isZero();
        for (String name : Commands.names()) {
            assertThat(result.out()).containsPattern("(?m)^  " + name + "  +[a-z]");
        }
        assertThat(result.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
    }

    @Test
    void every_command_has_a_help_with_an_example() {
        for (String name : Commands.names()) {
            Cli.Result result = Cli.in(folder).run(name, "--help");

            assertThat(result.exit()).as(name).isZero();
            assertThat(result.out()).as(name).contains("Usage: oldwood " + name);
            assertThat(result.out()).as(name).contains("\nExample:\n  oldwood " + name);
            assertFits(name, result.out());
        }
    }

    @Test
    void every_help_fits_80_columns() { assertFits(Main.everything()); }

    private static void assertFits(CommandLine line) {
        assertFits(line.getCommandSpec().qualifiedName(), line.getUsageMessage());
        line.getSubcommands().values().forEach(MainTest::assertFits);
    }

    private static void assertFits(String name, String help) {
        assertThat(help.lines().mapToInt(String::length).max().orElse(0)).as(name).isLessThanOrEqualTo(80);
    }

    @Test
    void an_unknown_command_gets_a_suggestion() {
        Cli.Result result = Cli.in(folder).run("source");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err())
                .isEqualTo("oldwood: there is no command \"source\". Did you mean \"sources\"?\nTry: oldwood --help\n");
    }

    @Test
    void an_unknown_option_gets_a_suggestion_and_a_short_usage() {
        Cli.Result result = Cli.in(folder).run("sources", "--gardn", "x");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).startsWith("oldwood sources: Unknown option").contains("Did you mean --garden?")
                .contains("Usage: oldwood sources ").endsWith("Try: oldwood sources --help\n");
    }

    @Test
    void a_day_that_does_not_exist_is_refused() {
        Cli.Result result = Cli.in(folder).run("sources", "--today", "2026-02-30");

        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("must be a date that exists").contains("2026-02-30");
    }

    @Test
    void a_folder_that_is_no_garden_says_what_to_do() {
        Cli.Result result = Cli.in(folder).run("sources", "--garden", "nowhere");

        assertThat(result.exit()).isEqualTo(1);
        assertThat(result.err()).contains("is not a folder").contains("oldwood start DIR")
                .endsWith("1 problem in 1 file; nothing was written.\n");
    }

    @Test
    void sources_lists_all_and_tells_of_one() {
        assertThat(Cli.in(folder).run("sources").out()).containsPattern("(?m)^bock-2014 +[A-Z]");
        assertThat(Cli.in(folder).run("sources", "bock-2014").out()).startsWith("bock-2014\n  A. Bock");
        assertThat(Cli.in(folder).run("sources", "bock-2015").err()).contains("Did you mean \"bock-2014\"?");
        assertThat(Cli.in(folder).run("sources", "bock-2014", "--json").out())
                .startsWith("{\n  \"units\": \"SI\",\n  \"sources\": [\n    {\n      \"key\": \"bock-2014\",\n");
    }
}
