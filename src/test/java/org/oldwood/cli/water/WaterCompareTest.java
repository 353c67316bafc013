package org.oldwood.cli.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;
import org.oldwood.craft.water.ManyBeds;
import org.oldwood.craft.water.PlainAccount;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

/**
 * The comparison of beds over thirty past summers against a program that shares no class with it. That one has the same
 * days for the stages in every year, the means of the modelled ones; what the years shift them by leaves a day of the
 * mean days short.
 */
class WaterCompareTest {
    @TempDir
    Path folder;

    @Test
    void a_plain_loop_comes_to_the_same_summers() throws IOException {
        ManyBeds.write(folder, 24, 30);
        Map<String, double[]> plain = new HashMap<>();
        for (String line : PlainAccount.of(folder).split("\n")) {
            String[] words = line.split(" ");
            plain.put(words[0], new double[]{Double.parseDouble(words[1]), Double.parseDouble(words[3])});
        }

        Cli.Result run = Cli.in(folder).run("water", "--compare", "--crop", "blackcurrant", "--json", "--today",
                "2026-01-15");

        assertThat(run.exit()).isZero();
        Json.Obj answer = (Json.Obj) JsonReader.readLine(oneLine(run.out()), "out", 1, new Problems()).orElseThrow();
        Json.Arr beds = (Json.Arr) answer.members().get("beds");
        assertThat(beds.items()).hasSize(24);
        for (Json bed : beds.items()) {
            Map<String, Json> one = ((Json.Obj) bed).members();
            double[] expected = plain.get(((Json.Text) one.get("bed")).value());
            assertThat(number(one, "meanDaysShort")).isCloseTo(expected[0], within(1.5));
            assertThat(number(one, "meanHeldShare")).isCloseTo(expected[1], within(0.01));
        }
    }

    private static String oneLine(String json) { return json.replaceAll("\\s*\n\\s*", " "); }

    private static double number(Map<String, Json> members, String key) {
        return Double.parseDouble(members.get(key).shown());
    }
}
