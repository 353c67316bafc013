package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** What {@code note} says at once about feed and lime; it records all the same. */
class NoteFeedTest {
    @TempDir
    Path folder;

    private Cli.Result note(String line) {
        return Cli.in(folder).run(("note " + line + " --today 2027-03-20").split(" "));
    }

    private static String flat(Cli.Result result) { return result.err().replaceAll("\\s+", " "); }

    @Test
    void feed_soon_after_lime_is_warned_about_and_recorded() throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Fire station", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c11",
                 "site": {"latitude": 52, "longitude": -2, "zone": "Europe/London"},
                 "beds": [{"id": "north", "name": "North bed", "areaM2": 10}]}
                """);
        assertThat(note("limed --bed north --material ground-limestone --grams 3000 --date 2027-03-10").exit())
                .isZero();

        Cli.Result fed = note("fed --bed north --material ammonium-sulphate --grams 300");

        assertThat(fed.exit()).isZero();
        assertThat(flat(fed)).contains("Too close on North bed").contains("keep 90 days between").contains("ammonia")
                .contains("noted all the same").contains("wait until 2027-06-08");
        assertThat(Files.readString(folder.resolve("journal.jsonl"))).contains("\"ammonium-sulphate\"");

        Cli.Result much = note("fed --bed north --material dried-blood --grams 300000");
        assertThat(much.exit()).isZero();
        assertThat(flat(much)).contains("Was it 300 g?");
    }
}
