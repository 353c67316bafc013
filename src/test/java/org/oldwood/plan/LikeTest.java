package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;
import org.oldwood.store.Documents;

/**
 * A crop of one's own that is like a bundled one is its profile and no more: all figures and all rules come with it.
 */
class LikeTest {
    private static final Crops BUNDLED = new Crops(Documents.bundled());
    private static final String PROFILE = """
            {"format": 1, "name": "%s", "plural": "%s", "latin": "%s", "group": "%s", "like": "%s",
             "forms": ["%s"], "counted": "%s"}
            """;
    private static final String GARDEN = """
            {"format": 1, "name": "Like", "id": "6f1c1c58-3d0a-4b0e-9a49-0d7f4e6a2b12",
             "site": {"latitude": %d, "longitude": 0, "zone": "UTC"},
             "beds": [{"id": "a", "name": "Bed A", "areaM2": 6, "texture": "sandy-loam"}]}
            """;
    private static final String JOURNAL = """
            {"id": "e-1", "date": "2020-11-20", "entry": "planted", "plant": "p-1", "crop": "%1$s", "bed": "a", "form": "%2$s", "lengthM": 3}
            {"id": "e-2", "date": "2025-11-20", "entry": "struck", "lot": "l-1", "parent": "p-1", "method": "hardwood", "number": 9, "bed": "a"}
            {"id": "e-3", "date": "2026-01-20", "entry": "planted", "plant": "p-2", "crop": "%1$s", "bed": "a", "form": "%2$s", "lengthM": 3}
            """;

    @TempDir
    Path folder;

    static List<String> crops() { return BUNDLED.ids(); }

    @ParameterizedTest(name = "like {0}")
    @MethodSource("crops")
    void has_the_same_tasks_in_both_hemispheres(String id) throws IOException {
        for (int latitude : new int[]{52, -42}) {
            for (String form : BUNDLED.get(id).forms()) {
                List<String> bundled = tasks(id, form, latitude);

                assertThat(bundled).as("%s as %s at %d", id, form, latitude).hasSizeGreaterThan(10);
                assertThat(tasks("our-" + id, form, latitude)).isEqualTo(bundled);
            }
        }
    }

    private List<String> tasks(String crop, String form, int latitude) throws IOException {
        Path path = Files.createDirectories(folder.resolve(crop + form + latitude));
        for (Crop like : crops().stream().map(BUNDLED::get).toList()) {
            Path own = Files.createDirectories(path.resolve("crops/our-" + like.id()));
            Files.writeString(own.resolve("crop.json"), PROFILE.formatted(like.name(), like.plural(), like.latin(),
                    like.group(), like.id(), String.join("\", \"", like.forms()), like.counted()));
        }
        Files.writeString(path.resolve("garden.json"), GARDEN.formatted(latitude));
        Files.writeString(path.resolve("journal.jsonl"), JOURNAL.formatted(crop, form));
        GardenFolder garden = GardenFolder.open(path);
        GardenState state = garden.on(LocalDate.of(2026, 1, 25));
        assertThat(garden.problems().list()).isEmpty();
        Plan plan = new Planner(state, new CalendarStages(), garden.crops(), garden.documents(), new AllCrafts())
                .plan();
        return plan.tasks().stream().flatMap(LikeTest::told).toList();
    }

    private static Stream<String> told(Task task) {
        return Stream.of(task.id().replace("our-", ""), task.title(),
                task.window().first() + " to " + task.window().last(), task.day().toString(),
                task.cautions().toString(), task.sources().toString());
    }
}
