package org.oldwood.cli.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

class PruneCommandTest {
    @TempDir
    Path folder;

    private Cli.Result prune(String... args) {
        String[] all = new String[args.length + 1];
        all[0] = "prune";
        System.arraycopy(args, 0, all, 1, args.length);
        return Cli.in(folder).run(all);
    }

    @Test
    void without_a_garden_it_says_what_goes_and_what_stays() {
        Cli.Result result = prune("--crop", "blackcurrant", "--form", "stool", "--stems", "1=9,2=4,3=4,4+=3");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("way: half-young").contains("3 of age 4+ (spent)")
                .contains("  4+  3 -> 0      xxx").contains("Spent wood: Very dark");
        assertThat(result.err()).contains("Look for a nest").contains("goggles");
        assertThat(result.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
    }

    @Test
    void another_way_gives_another_cut() {
        Cli.Result result = prune("--crop", "blackcurrant", "--stems", "1=5,2=5,3=5", "--variant", "two-year-wood");

        assertThat(result.out()).contains("5 of age 3 (spent)");
    }

    @Test
    void the_outlook_shows_six_seasons_for_each_habit() {
        Cli.Result result = prune("--crop", "gooseberry", "--form", "stool", "--stems", "1=8,2=4,3=3,4+=3", "--outlook",
                "--done", "4+=1", "--new-shoots", "6");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("With the plan, stems left by age; how many bear well:")
                .contains("Without pruning, stems left by age; how many bear well:")
                .contains("As you did, stems left by age; how many bear well:");
        assertThat(result.out().lines().filter(line -> line.startsWith("    winter 6"))).hasSize(3);
        assertThat(result.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
    }

    @Test
    void json_names_what_goes_by_age() {
        Cli.Result result = prune("--crop", "blackcurrant", "--stems", "1=5,2=3,3=3,4=3", "--json");

        assertThat(result.out().replaceAll("\\s", ""))
                .contains("\"takeOut\":[{\"age\":\"4\",\"number\":3,\"why\":\"spent\"}]")
                .contains("\"after\":\"1=5,2=3,3=3,4=0\"");
    }

    @Test
    void wrong_facts_get_a_message_that_helps() {
        assertThat(prune("--crop", "blackcurant", "--stems", "1=5").err()).contains("there is no crop \"blackcurant\"");
        assertThat(prune("--crop", "blackcurrant", "--stems", "five").err()).contains("example 1=5,2=4,3=4,4+=3");
        assertThat(prune("--crop", "blackcurrant", "--stems", "1=5", "--metres", "0").err())
                .contains("--metres must be more than 0");
        assertThat(prune("--crop", "blackcurrant").err()).contains("--stems is missing");
        assertThat(prune("--crop", "blackcurrant", "--form", "cordon", "--stems", "1=5").err())
                .contains("no form \"cordon\". Known here: stool");
        assertThat(prune("--crop", "blackcurrant", "--stems", "1=5", "--variant", "soft").err()).contains("half-young",
                "equal-ages");
        assertThat(prune("--crop", "blackcurrant", "--stems", "1=5", "--sick", "1=6").exit()).isEqualTo(2);
    }

    @Test
    void in_a_garden_it_shows_the_counted_plants_and_asks_about_odd_counts() throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "Fire station", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c11",
                 "site": {"latitude": 52, "longitude": -2, "zone": "Europe/London"},
                 "beds": [{"id": "north", "name": "North bed", "areaM2": 40}]}
                """);
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id": "e1", "date": "2018-11-20", "entry": "planted", "plant": "bc-1", "crop": "blackcurrant", "bed": "north"}
                        {"id": "e2", "date": "2018-11-20", "entry": "planted", "plant": "bc-2", "crop": "blackcurrant", "bed": "north"}
                        {"id": "e3", "date": "2025-11-20", "entry": "counted", "plant": "bc-1", "stems": {"1": 5, "2": 2, "3": 3}}
                        {"id": "e4", "date": "2026-11-20", "entry": "counted", "plant": "bc-1", "stems": {"1": 8, "2": 5, "3": 4, "4": 3}}
                        """);

        Cli.Result result = prune("--today", "2026-11-25");

        assertThat(result.exit()).isZero();
        assertThat(result.out()).contains("blackcurrant bc-1").contains("3 of age 4 (spent)");
        assertThat(result.out())
                .contains("Leave 11 (5 of last summer's and 3 of each age from 2 to 3), oldest out first.");
        assertThat(result.err()).contains("Question:").contains("bc-1 has 4");
        assertThat(prune("--today", "2026-11-25", "south").exit()).isEqualTo(2);
    }
}
