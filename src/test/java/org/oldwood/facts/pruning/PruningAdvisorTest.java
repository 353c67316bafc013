package org.oldwood.facts.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;

class PruningAdvisorTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path dir;

    private final StringBuilder journal = new StringBuilder();
    private int entries;

    @BeforeEach
    void garden() throws IOException { Files.writeString(dir.resolve("garden.json"), """
            {"format": 1, "name": "Fire station", "id": "5f1d9b8e-5a0e-4d5a-9d3c-0f4f8a2b7c11",
             "site": {"latitude": 52, "longitude": -2, "zone": "Europe/London"},
             "beds": [{"id": "north", "name": "North bed", "areaM2": 40}]}
            """); }

    private void note(String date, String kind, String rest) {
        entries++;
        journal.append("{\"id\": \"e%d\", \"date\": \"%s\", \"entry\": \"%s\", %s}\n".formatted(entries, date, kind,
                rest.replace('\'', '"')));
    }

    private Situation situation(String plant) throws IOException {
        Files.writeString(dir.resolve("journal.jsonl"), journal);
        GardenFolder folder = GardenFolder.open(dir);
        GardenState state = folder.on(TODAY);
        assertThat(folder.problems().list()).isEmpty();
        BedState bed = state.beds().get("north");
        PlantState one = bed.plants().stream().filter(p -> p.plant().id().equals(plant)).findFirst().orElseThrow();
        Crop crop = folder.crops().get(one.plant().crop());
        return new Situation(new Situation.World(state, new CalendarStages(), folder.crops(), folder.documents()),
                new Subject.OnePlant(one, crop, bed), Season.containing(TODAY, Hemisphere.NORTH), TODAY);
    }

    private static Fact fact(String name, Situation s) { return new PruningAdvisor().fact(name, Optional.empty(), s); }

    private static Amount amount(String name, Situation s) {
        return new PruningAdvisor().amount(name, s).orElseThrow();
    }

    @Test
    void a_counted_blackcurrant_gets_its_cut_list() throws IOException {
        note("2018-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        note("2026-11-20", "counted", "'plant': 'bc-1', 'stems': {'1': 9, '2': 5, '3': 3, '4+': 3}, 'weak': 2");
        Situation s = situation("bc-1");

        assertThat(fact("spent-stems", s).number()).hasValue(3);
        assertThat(fact("life-stage", s).text()).hasValue("bearing");
        assertThat(fact("past-life", s).text()).hasValue("no");
        Amount cut = amount("winter-cut", s);
        // nine become five; five of two years become three; three old ones go
        assertThat(cut.value()).isEqualTo(3 + 2 + 4);
        assertThat(cut.words()).contains("3 of age 4+ (spent)").contains("4 of age 1");
        assertThat(cut.lines()).anyMatch(line -> line.contains("2 weak, damaged or low"));
        assertThat(cut.lines()).anyMatch(line -> line.startsWith("Spent wood: Very dark"));
        assertThat(cut.sources()).contains("omafra-black-currants");
        assertThat(cut.minutes()).hasValue(6.0);
        assertThat(cut.arithmetic()).anyMatch(line -> line.startsWith("the default is half-young: The Ontario advice"))
                .contains(
                        "equal-ages would take 9: 3 of age 4+, 1 of age 2, 5 of age 1 (read: penn-state-currants-pruning)")
                .contains("late-start would take 2: 2 of age 4+"
                        + " (read: jardinfavori-currants, danish-blackcurrant, swedish-for)");
    }

    @Test
    void a_bush_without_a_sound_stem_is_told_so() throws IOException {
        note("2018-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        note("2026-11-20", "counted", "'plant': 'bc-1', 'stems': {'1': 2, '2': 5}, 'dead': {'1': 2, '2': 5}");
        Situation s = situation("bc-1");

        assertThat(fact("all-sick", s).text()).hasValue("yes");
        Amount cut = amount("winter-cut", s);
        assertThat(cut.value()).isEqualTo(7);
        assertThat(cut.lines()).anyMatch(line -> line.startsWith("No stem is sound"));
    }

    @Test
    void branches_that_come_out_of_a_frame_in_order_are_told_to_the_plan() throws IOException {
        note("2016-11-20", "planted", "'plant': 'rc-1', 'crop': 'redcurrant', 'bed': 'north', 'form': 'leg'");
        note("2026-11-20", "counted", "'plant': 'rc-1', 'stems': {'1': 2, '2': 3, '3': 3, '6': 2}");
        Situation s = situation("rc-1");

        assertThat(fact("life-stage", s).text()).hasValue("bearing");
        assertThat(fact("stems-out", s).number()).hasValue(2);
        assertThat(fact("stems-out", s).words()).contains("2 of age 6 (spent)");
        assertThat(fact("all-sick", s).text()).hasValue("no");
        assertThat(fact("spent-stems", s).words()).contains("2 spent branches");
    }

    @Test
    void a_way_of_pruning_is_chosen_for_a_plant_a_crop_or_the_garden() throws IOException {
        note("2018-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        note("2026-11-20", "counted", "'plant': 'bc-1', 'stems': {'1': 6, '2': 5, '3': 4, '4+': 0}");
        choose("'renewal': 'equal-ages'");
        assertThat(amount("winter-cut", situation("bc-1")).arithmetic().get(0))
                .startsWith("way of pruning: equal-ages");
        choose("'renewal': 'equal-ages', 'renewal.bc-1': 'two-year-wood'");
        Amount hard = amount("winter-cut", situation("bc-1"));
        assertThat(hard.words()).contains("4 of age 3 (spent)");
        choose("'renewal': 'no-such-way'");
        assertThat(amount("winter-cut", situation("bc-1")).arithmetic().get(0))
                .startsWith("way of pruning: half-young");
    }

    private void choose(String choices) throws IOException {
        Path file = dir.resolve("garden.json");
        String garden = Files.readString(file).replaceAll(", \"choices\": \\{[^}]*}", "");
        Files.writeString(file,
                garden.replace("\"format\": 1", "\"format\": 1, \"choices\": {" + choices.replace('\'', '"') + "}"));
    }

    @Test
    void the_growers_own_minutes_replace_the_figure() throws IOException {
        note("2018-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        note("2025-12-01", "pruned", "'plant': 'bc-1', 'cut': 'winter', 'minutes': 14");

        assertThat(amount("winter-cut", situation("bc-1")).minutes()).hasValue(14.0);
    }

    @Test
    void a_neglected_bush_gets_this_winters_part_and_the_later_ones() throws IOException {
        note("2016-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        note("2026-11-20", "counted", "'plant': 'bc-1', 'stems': {'1': 3, '2': 0, '3': 0, '4+': 10}");
        Situation s = situation("bc-1");

        assertThat(fact("life-stage", s).text()).hasValue("neglected");
        Amount cut = amount("renovation-cut", s);
        assertThat(cut.words()).contains("4 of age 4+");
        assertThat(cut.lines()).anyMatch(line -> line.contains("4, then 3, then 3"));
    }

    @Test
    void the_second_winter_of_a_renovation_goes_on_in_equal_parts() throws IOException {
        note("2014-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        note("2025-11-25", "pruned", "'plant': 'bc-1', 'cut': 'renovation', 'minutes': 20");
        note("2026-11-20", "counted", "'plant': 'bc-1', 'stems': {'1': 8, '2': 5, '3': 0, '4+': 6}");

        assertThat(amount("renovation-cut", situation("bc-1")).words()).contains("3 of age 4+ (spent)");
    }

    @Test
    void an_uncounted_bush_is_told_what_to_leave_and_to_count() throws IOException {
        note("2018-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        Situation s = situation("bc-1");

        assertThat(fact("spent-stems", s).known()).isFalse();
        assertThat(fact("spent-stems", s).words()).contains("note counted");
        assertThat(fact("life-stage", s).known()).isFalse();
        Amount cut = amount("winter-cut", s);
        assertThat(cut.value()).isEqualTo(11);
        assertThat(cut.words()).contains("leave 11").contains("5 of last summer's and 3 of each age from 2 to 3");
    }

    @Test
    void a_bush_at_the_end_of_its_life_is_ageing() throws IOException {
        note("2010-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");
        Situation s = situation("bc-1");

        assertThat(fact("life-stage", s).text()).hasValue("ageing");
        assertThat(fact("past-life", s).text()).hasValue("yes");
    }

    @Test
    void a_young_bush_is_young_without_a_count() throws IOException {
        note("2024-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north'");

        assertThat(fact("life-stage", situation("bc-1")).text()).hasValue("young");
    }

    @Test
    void a_row_of_raspberries_is_thinned_by_its_length() throws IOException {
        note("2020-11-20", "planted", "'plant': 'rs-1', 'crop': 'summer-raspberry', 'bed': 'north', 'lengthM': 3");
        note("2026-11-20", "canes", "'plant': 'rs-1', 'fresh': 40, 'fruited': 25");
        Situation s = situation("rs-1");

        assertThat(fact("surplus-canes", s).number()).hasValue(16);
        assertThat(amount("canes-thin", s).words()).contains("16 of age 1");
        assertThat(amount("canes-kept", s).value()).isEqualTo(24);
        assertThat(amount("canes-out", s).value()).isEqualTo(25);
        assertThat(amount("canes-out", s).minutes()).hasValue(18.0);
    }

    @Test
    void an_old_count_of_canes_says_nothing_of_this_winter() throws IOException {
        note("2020-11-20", "planted", "'plant': 'rs-1', 'crop': 'summer-raspberry', 'bed': 'north', 'lengthM': 3");
        note("2025-11-20", "canes", "'plant': 'rs-1', 'fresh': 40");

        assertThat(fact("surplus-canes", situation("rs-1")).known()).isFalse();
    }

    @Test
    void a_trained_bush_gets_its_buds_and_leaves() throws IOException {
        note("2018-11-20", "planted", "'plant': 'gb-1', 'crop': 'gooseberry', 'bed': 'north', 'form': 'leg'");
        Situation s = situation("gb-1");

        assertThat(amount("spur-cut-winter", s).lines()).contains("Cut side shoots to 2 buds (1 to 3).");
        assertThat(amount("spur-cut-summer", s).lines()).anyMatch(line -> line.contains("to 5 leaves"));
        assertThat(amount("spur-cut-summer", s).minutes()).hasValue(3.0);
    }

    @Test
    void all_canes_go_or_they_are_thinned_as_the_way_has_it() throws IOException {
        note("2020-11-20", "planted", "'plant': 'ra-1', 'crop': 'autumn-raspberry', 'bed': 'north', 'lengthM': 2");
        PruningAdvisor advisor = new PruningAdvisor();

        assertThat(amount("canes-down", situation("ra-1")).words()).isEqualTo("cut all canes to the ground");
        assertThat(advisor.amount("canes-thin", situation("ra-1"))).isEmpty();
        assertThat(advisor.amount("canes-out", situation("ra-1"))).isEmpty();
        choose("'renewal.ra-1': 'two-crops'");
        assertThat(new PruningAdvisor().amount("canes-down", situation("ra-1"))).isEmpty();
        assertThat(amount("canes-thin", situation("ra-1")).words()).contains("leave the 15 strongest new canes");
    }

    @Test
    void a_worn_out_stand_is_grubbed_by_the_plant_or_by_the_metre() throws IOException {
        note("2000-11-20", "planted", "'plant': 'bc-1', 'crop': 'blackcurrant', 'bed': 'north', 'bushes': 3");
        note("2000-11-20", "planted", "'plant': 'rs-1', 'crop': 'summer-raspberry', 'bed': 'north', 'lengthM': 3.5");

        assertThat(amount("grub", situation("bc-1")).words()).isEqualTo("3 plants");
        assertThat(amount("grub", situation("rs-1")).words()).isEqualTo("3.5 m of row");
        assertThat(amount("grub", situation("rs-1")).value()).isEqualTo(3.5);
    }
}
