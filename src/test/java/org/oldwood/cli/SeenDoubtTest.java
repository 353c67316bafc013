package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** Stages noted as seen on a day that cannot be. */
class SeenDoubtTest {
    @TempDir
    Path folder;

    private void garden(double latitude, String climate) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": %s, "longitude": 0, "zone": "UTC"}, "climate": "%s",
                 "beds": [{"id": "a", "areaM2": 9, "texture": "loam"}]}
                """.formatted(latitude, climate));
        Files.writeString(folder.resolve("journal.jsonl"),
                """
                        {"id":"e1","date":"2021-05-20","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a","bushes":3}
                        """);
    }

    @ParameterizedTest
    @CsvSource({"52.2, cambridge, 2027-01-15, 2027-04-29, 2027-04-20",
            "-43.5, christchurch, 2026-07-05, 2026-10-16, 2026-10-04"})
    void is_asked_about_told_by_check_and_moves_no_date(double latitude, String climate, String early, String flower,
            String full) throws IOException {
        garden(latitude, climate);
        String before = dates(flower);

        Cli.Result asked = seen("first-flower", early);
        assertThat(asked.exit()).isEqualTo(1);
        assertThat(asked.err().replaceAll("\\s+", " ")).contains("Is it the right day", "say it again with --yes");
        assertThat(Cli.in(folder).run("journal").out()).doesNotContain("first-flower");

        Cli.Result note = seen("first-flower", early, "--yes");
        assertThat(note.exit()).isZero();
        assertThat(note.err().replaceAll("\\s+", " "))
                .contains("first flower of blackcurrants cannot well be seen on " + early, "Is it the right day");
        assertThat(Cli.in(folder).run("check", "--today", flower).err().replaceAll("\\s+", " "))
                .contains("cannot well be seen on " + early);
        assertThat(dates(flower)).isEqualTo(before);
    }

    /** A day that cannot be is no plant's middle day: the right one noted after it counts. */
    @ParameterizedTest
    @CsvSource({"52.2, cambridge, 2027-01-15, 2027-04-22", "-43.5, christchurch, 2026-07-05, 2026-10-08"})
    void leaves_a_second_sighting_of_the_stage_its_place(double latitude, String climate, String early, String flower)
            throws IOException {
        garden(latitude, climate);

        seen("first-flower", early, "--yes");
        Cli.Result right = seen("first-flower", flower);

        assertThat(right.err()).doesNotContain("right day and stage");
        assertThat(dates(flower)).contains("first flower seen in the garden on " + flower);
        assertThat(Cli.in(folder).run("check", "--today", flower).err().replaceAll("\\s+", " "))
                .contains("cannot well be seen on " + early);
    }

    @ParameterizedTest
    @CsvSource({"52.2, cambridge, 2027-05-05, 2027-04-20", "-43.5, christchurch, 2026-10-26, 2026-10-08"})
    void a_first_flower_after_the_full_one_is_asked_about(double latitude, String climate, String first, String full)
            throws IOException {
        garden(latitude, climate);

        Cli.Result one = seen("full-flower", full);
        Cli.Result two = seen("first-flower", first);

        assertThat(one.err()).doesNotContain("right day and stage");
        assertThat(two.err().replaceAll("\\s+", " ")).contains("cannot well be seen on", "Is it the right day");
    }

    /** Two more plants whose day cannot go with the full flower take nothing from the first one's. */
    @Test
    void of_several_days_those_stand_that_go_with_the_other_stages() throws IOException {
        garden(52.2, "cambridge");
        seen("first-flower", "2027-04-20");
        seen("full-flower", "2027-04-29");

        seen("first-flower", "2027-05-03", "--yes");
        String asked = seen("first-flower", "2027-05-08", "--yes").err().replaceAll("\\s+", " ");

        assertThat(asked).contains("cannot well be seen on 2027-05-03", "cannot well be seen on 2027-05-08");
        assertThat(dates("2027-05-08")).contains("first flower seen in the garden on 2027-04-20");
    }

    @Test
    void tables_and_corrections_ask_before_they_keep_it() throws IOException {
        garden(52.2, "cambridge");
        Path table = Files.writeString(folder.resolve("notes.csv"),
                "date,entry,crop,stage\n2027-01-15,seen,blackcurrant,first-flower\n");

        assertThat(Cli.in(folder).run("note", "--csv", table.toString(), "--today", "2027-05-01").exit()).isEqualTo(1);
        String id = seen("full-flower", "2027-04-29").out().split(" ")[0];
        assertThat(Cli.in(folder).run("correct", id, "date=2027-01-15", "--today", "2027-05-01").exit()).isEqualTo(1);

        assertThat(Files.readString(folder.resolve("journal.jsonl"))).doesNotContain("2027-01-15");
        assertThat(Cli.in(folder).run("note", "--csv", table.toString(), "--yes", "--today", "2027-05-01").exit())
                .isZero();
        assertThat(Cli.in(folder).run("correct", id, "date=2027-01-15", "--yes", "--today", "2027-05-01").exit())
                .isZero();
    }

    private Cli.Result seen(String stage, String day, String... more) {
        List<String> words = new ArrayList<>(List.of("note", "seen", "blackcurrant", "--stage", stage, "--today", day));
        words.addAll(List.of(more));
        return Cli.in(folder).run(words.toArray(String[]::new));
    }

    private String dates(String today) {
        return Cli.in(folder).run("stages", "blackcurrant", "--json", "--today", today).out();
    }
}
