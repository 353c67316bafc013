package org.oldwood.cli.feeding;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** No number that another program reads pretends to more than the text does. */
class JsonNumbersTest {
    private static final Pattern LONG = Pattern
            .compile("\"([A-Za-z0-9]+)\": ?(-?[0-9]+\\.[0-9]{4,}|-?[0-9.]+E-?[0-9]+)");

    @ParameterizedTest
    @ValueSource(strings = {"feed --garden demo-data/terrace-school", "ledger --garden demo-data/terrace-school",
            "shopping --garden demo-data/terrace-school", "lime --garden demo-data/terrace-school",
            "acidify --garden demo-data/terrace-school", "mulch --garden demo-data/terrace-school",
            "tasks --garden demo-data/terrace-school", "tasks --garden demo-data/fire-station-hedges",
            "feed --crop summer-raspberry --area 7.77 --row 7.1 --analysis 7-7-7",
            "lime --soil loam --ph 5.43 --target 6.37 --area 7.77 --stones 3.3",
            "acidify --soil loam --ph 5.93 --target 4.8 --area 7.7",
            "mulch --area 7.77 --depth 7.3 --bushes 3 --material straw"})
    void are_rounded_as_the_text_is(String line) {
        Cli.Result result = Cli.in(Path.of(".")).run((line + " --json --today 2027-02-10").split(" "));
        Matcher found = LONG.matcher(result.out());

        assertThat(result.exit()).isZero();
        assertThat(found.find() ? found.group() : "").isEmpty();
    }
}
