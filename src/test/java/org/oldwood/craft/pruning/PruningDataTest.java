package org.oldwood.craft.pruning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Sources;
import org.oldwood.crop.Stems;
import org.oldwood.store.Documents;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;

/** Laws over the bundled pruning data, and what is said of wrong data of a garden's own. */
class PruningDataTest {
    @Test
    void every_form_of_every_crop_has_its_schools_with_sources_and_labour() {
        Sources sources = Sources.read(Schools.DOCUMENTS);
        for (String id : Schools.CROPS.ids()) {
            Crop crop = Schools.CROPS.get(id);
            Pruning pruning = Pruning.read(crop).orElseThrow();
            assertThat(pruning.forms().keySet()).as(id).isEqualTo(java.util.Set.copyOf(crop.forms()));
            for (FormPruning form : pruning.forms().values()) {
                assertThat(form.schoolIds()).doesNotHaveDuplicates().isNotEmpty();
                assertThat(form.labour().orElseThrow().of("winter")).as(id).isPresent();
                for (School school : form.schools()) {
                    assertThat(school.teaching().words()).endsWith(".");
                    assertThat(school.teaching().sources())
                            .allSatisfy(key -> assertThat(sources.find(key)).isPresent());
                }
            }
        }
        assertThat(Schools.DOCUMENTS.problems().list()).isEmpty();
    }

    @Test
    void every_step_reads_as_a_sentence_with_its_measure() {
        for (String id : Schools.CROPS.ids()) {
            for (FormPruning form : Pruning.read(Schools.CROPS.get(id)).orElseThrow().forms().values()) {
                for (School school : form.schools()) {
                    for (String time : List.of("planting", "winter", "summer", "canes", "renovation")) {
                        for (Step step : form.steps(school, time, StageOfLife.BEARING)) {
                            assertThat(step.inWords()).endsWith(".").doesNotContain("{}");
                        }
                    }
                }
            }
        }
    }

    @Test
    void measures_are_said_with_their_range() {
        FormPruning leg = Schools.form("redcurrant", "leg");

        assertThat(leg.steps(leg.school(), "winter", StageOfLife.BEARING).get(0).inWords())
                .isEqualTo("Cut side shoots to 2 buds (1 to 3).");
        assertThat(leg.steps(leg.school(), "winter", StageOfLife.BEARING).get(1).inWords())
                .startsWith("Shorten the leader of each branch by a quarter of");
        assertThat(leg.steps(leg.school(), "summer", StageOfLife.YOUNG).get(0).inWords())
                .isEqualTo("Cut new side shoots to 5 leaves; leave the leaders.");
    }

    @Test
    void a_step_for_one_stage_of_life_is_not_told_in_another() {
        FormPruning cordon = Schools.form("redcurrant", "cordon");

        assertThat(cordon.steps(cordon.school(), "winter", StageOfLife.YOUNG)).extracting(Step::inWords)
                .anyMatch(words -> words.startsWith("Until it has its full height"))
                .noneMatch(words -> words.startsWith("At full height"));
        assertThat(cordon.steps(cordon.school(), "winter", StageOfLife.BEARING)).extracting(Step::inWords)
                .anyMatch(words -> words.startsWith("At full height"));
    }

    @Test
    void labour_is_by_bush_or_by_metre() {
        Figure bush = Schools.form("redcurrant", "leg").labour().orElseThrow().of("winter").orElseThrow();
        Figure row = Schools.form("summer-raspberry", "cane-row").labour().orElseThrow().of("canes").orElseThrow();
        Figure summer = Schools.form("redcurrant", "leg").labour().orElseThrow().of("summer").orElseThrow();

        assertThat(FormPruning.Labour.minutes(bush, 3)).isEqualTo(bush.is());
        assertThat(FormPruning.Labour.minutes(row, 3)).isEqualTo(3 * row.is());
        // languedoc-small-fruit: 52 hours a year for 350 bushes, all work but picking
        assertThat(bush.is() + summer.is()).isEqualTo(Math.round(52 * 60 / 350.0));
        assertThat(Schools.form("blackcurrant", "stool").labour().orElseThrow().of("summer")).isEmpty();
    }

    @Test
    void a_new_crop_is_only_data(@TempDir Path folder) throws IOException {
        write(folder.resolve("crops/worcesterberry/crop.json"),
                "{'format': 1, 'name': 'worcesterberry', 'plural': 'worcesterberries',"
                        + " 'latin': 'Ribes divaricatum', 'group': 'ribes', 'like': 'gooseberry',"
                        + " 'forms': ['stool'], 'counted': 'bush'}");
        Problems problems = new Problems();
        Crop crop = new Crops(Documents.with(folder, problems)).get("worcesterberry");

        Cut cut = Pruning.read(crop).orElseThrow().form("stool").orElseThrow().school()
                .winter(Bush.of(Stems.of(8, 4, 3, 3)));

        assertThat(cut.of(4)).isEqualTo(3);
        assertThat(crop.spacing("stool")).isPresent();
        assertThat(problems.list()).isEmpty();
    }

    @Test
    void wrong_data_is_told_with_its_place(@TempDir Path folder) throws IOException {
        write(folder.resolve("crops/blackcurrant/pruning.json"),
                "{'format': 1, 'forms': {'stool': {'craft': 'renewal', 'why': 'mine', 'schools': ["
                        + " {'id': 'mine', 'words': 'Mine.', 'source': 'oldwood', 'seen': 'assumed',"
                        + " 'keep': {'stems': [5, 3], 'least': [6, 3], 'source': 'oldwood', 'seen':"
                        + " 'assumed'}, 'oldestShares': [{'is': 0.2, 'unit': 'share', 'source':"
                        + " 'oldwood', 'seen': 'assumed'}], 'steps': [{'at': 'winter', 'words': 'To {}.',"
                        + " 'source': 'oldwood', 'seen': 'assumed'}], 'spentage': 4}]}}}");
        Problems problems = new Problems();
        Pruning.read(new Crops(Documents.with(folder, problems)).get("blackcurrant"));

        assertThat(problems.list()).extracting(Problem::name).containsExactlyInAnyOrder("stems-outside-range",
                "share-of-what", "step-without-figure", "missing-key", "unknown-key");
        assertThat(problems.list())
                .allSatisfy(problem -> assertThat(problem.inWords()).startsWith("crops/blackcurrant/pruning.json:"));
    }

    private static void write(Path file, String json) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, json.replace('\'', '"'));
    }
}
