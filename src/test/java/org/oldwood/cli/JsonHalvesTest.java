package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** What a garden's JSON says is of its own half of the earth, as is what it prints. */
class JsonHalvesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"52, now, June", "52, tasks --each, June", "52, feed, June", "-43, tasks --each, December",
            "-43, feed, December"})
    void months_are_those_of_the_garden(String latitude, String command, String month) {
        Cli.in(folder).run("start", "own", "--name=Own", "--at=" + latitude + ",0", "--plants=blackcurrant=3",
                "--planted=2022", "--today=2026-06-01");
        Cli.Result json = Cli.in(folder).run((command + " --json --garden=own --today=2026-06-02").split(" "));

        assertThat(json.exit()).as(json.err()).isZero();
        assertThat(json.out()).doesNotContain("n the south");
        if (!command.equals("now")) { assertThat(json.out()).contains(month); }
    }
}
