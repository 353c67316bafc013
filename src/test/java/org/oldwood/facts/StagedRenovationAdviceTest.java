package org.oldwood.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.facts.pruning.PruningAdvisor;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Season;

/** A crowded blueberry that is brought back over some winters, as the journal tells of it. */
class StagedRenovationAdviceTest {
    @TempDir
    Path dir;

    private final StringBuilder journal = new StringBuilder();
    private int entries;

    private void note(String date, String kind, String rest) {
        entries++;
        journal.append("{\"id\": \"e%d\", \"date\": \"%s\", \"entry\": \"%s\", 'plant': 'bb-1', %s}\n"
                .formatted(entries, date, kind, rest).replace('\'', '"'));
    }

    private void planted() { note("2005-11-20", "planted", "'crop': 'blueberry', 'bed': 'acid'"); }

    private Amount cut(String today, double latitude) throws IOException {
        return new PruningAdvisor().amount("renovation-cut", situation(today, latitude)).orElseThrow();
    }

    private Situation situation(String today, double latitude) throws IOException {
        Files.writeString(dir.resolve("garden.json"), """
                {"format": 1, "name": "Moor end", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c12",
                 "site": {"latitude": %s, "longitude": 147, "zone": "Etc/UTC"},
                 "beds": [{"id": "acid", "name": "Acid bed", "areaM2": 40}]}
                """.formatted(latitude));
        Files.writeString(dir.resolve("journal.jsonl"), journal);
        LocalDate day = LocalDate.parse(today);
        GardenFolder folder = GardenFolder.open(dir);
        GardenState state = folder.on(day);
        assertThat(folder.problems().list()).isEmpty();
        BedState bed = state.beds().get("acid");
        return new Situation(new Situation.World(state, new CalendarStages(), folder.crops(), folder.documents()),
                new Subject.OnePlant(bed.plants().get(0), folder.crops().get("blueberry"), bed),
                Season.containing(day, state.garden().hemisphere()), day);
    }

    @Test
    void its_first_winter_is_named_with_its_part_and_the_way_to_go_slower() throws IOException {
        planted();
        note("2025-12-10", "counted", "'stems': {'1': 3, '2': 0, '3': 0, '4': 0, '5': 0, '6': 0, '7+': 45}");
        Situation s = situation("2025-12-20", 52);

        assertThat(new PruningAdvisor().fact("life-stage", Optional.empty(), s).text()).hasValue("neglected");
        assertThat(new PruningAdvisor().fact("life-stage", Optional.empty(), s).words())
                .isEqualTo("45 canes are too many or too old: winter 1 of 4 of the renovation half-first");
        Amount cut = cut("2025-12-20", 52);
        assertThat(cut.words()).startsWith("take out 23 of 48 stems: 23 of age 7+ (spent)");
        assertThat(cut.lines()).anyMatch(line -> line.startsWith("Winter 1 of 4: 45 canes are too many"))
                .anyMatch(line -> line.contains("the way balance, which takes a fifth"))
                .noneMatch(line -> line.startsWith("Over the winters"));
        assertThat(cut.sources()).contains("tribune-blueberry-2017");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"52, 2026-02-20, 2026-12-01, 2027-02-20, 2027-12-01, 2028-02-18, 2028-12-01",
            "-42, 2025-08-20, 2026-06-01, 2026-08-20, 2027-06-01, 2027-08-18, 2028-06-01"})
    void it_goes_on_winter_by_winter_in_both_hemispheres(double latitude, String first, String count2, String second,
            String count3, String third, String count4) throws IOException {
        planted();
        note(first, "counted", "'stems': {'1': 0, '2': 0, '3': 0, '4': 0, '7+': 45}");
        note(first, "pruned", "'cut': 'renovation', 'stems': {'7+': 23}");
        note(count2, "counted", "'stems': {'1': 3}");
        assertThat(cut(count2, latitude).words()).contains("8 of age 8+ (spent)");

        note(second, "pruned", "'cut': 'renovation', 'stems': {'8+': 8, '1': 1}");
        note(count3, "counted", "'stems': {'1': 3}");
        assertThat(cut(count3, latitude).words()).contains("7 of age 9+ (spent)");

        note(third, "pruned", "'cut': 'renovation', 'stems': {'9+': 7, '1': 1}");
        note(count4, "counted", "'stems': {'1': 3}");
        Amount last = cut(count4, latitude);
        assertThat(last.words()).contains("7 of age 10+ (spent)");
        assertThat(last.lines()).anyMatch(line -> line.contains("and then it is done"));
    }

    @Test
    void a_renovation_that_began_with_a_fifth_goes_on_with_a_fifth() throws IOException {
        planted();
        note("2026-02-20", "counted", "'stems': {'1': 0, '2': 2, '3': 2, '7+': 19}");
        note("2026-02-20", "pruned", "'cut': 'renovation', 'stems': {'7+': 5}");
        note("2026-12-01", "counted", "'stems': {'1': 3}");

        // a fifth of 21 canes: fruit-handbook-blueberry
        assertThat(cut("2026-12-01", 52).words()).contains("4 of age 8+ (spent)");
    }

    @Test
    void after_a_winter_without_it_the_renovation_begins_anew() throws IOException {
        planted();
        note("2025-02-20", "counted", "'stems': {'1': 0, '2': 0, '7+': 60}");
        note("2025-02-20", "pruned", "'cut': 'renovation', 'stems': {'7+': 20}");
        note("2026-12-01", "counted", "'stems': {'1': 3, '2': 3}");

        // three of two years where two are wanted: the third stands in, since the sound wood is short of the printed
        // total
        assertThat(cut("2026-12-01", 52).lines()).anyMatch(line -> line.startsWith("Winter 1 of 4: 40 canes"));
    }
}
