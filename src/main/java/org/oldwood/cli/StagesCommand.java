package org.oldwood.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Season;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.StageDate;
import org.oldwood.season.Stages;
import org.oldwood.store.JsonWriter;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/**
 * Shows the stage dates of the garden's crops in the season of the day, or of one crop or plant.
 */
@Command(
        name = "stages",
        description = {
            "show when each crop reaches each stage of growth this season",
            "",
            "A ± is one standard deviation. Note a stage with oldwood note seen; it moves the later",
            "ones of this season, and a little the next season's."
        },
        footer = {
            "",
            "Example:",
            "  oldwood stages blackcurrant --garden demo-data/terrace-school"
        })
final class StagesCommand extends GardenCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "CROP|PLANT",
            description = "one crop, or the crop of one plant; all crops of the garden otherwise")
    Optional<String> which = Optional.empty();

    @Override
    int run() throws IOException {
        GardenState state = state();
        GardenFolder folder = folder();
        Stages stages = Planning.stages(folder, state);
        stopOnProblems(folder);
        List<Crop> crops = crops(folder, state).stream().map(folder.crops()::get).toList();
        if (json) {
            out().json(writer -> write(writer, crops, state.season(), stages));
        } else {
            Optional<GardenClimate> climate = Planning.climate(folder, state);
            for (Crop crop : crops) {
                tellOf(crop, state.season(), stages);
                climate.map(at -> FrostLines.of(at, crop, state.season(), stages))
                        .ifPresent(lines -> lines.forEach(line -> out().hanging("  ", 4, line)));
                out().line();
            }
        }
        return 0;
    }

    private List<String> crops(GardenFolder folder, GardenState state) {
        List<String> grown =
                state.standing().stream()
                        .map(each -> each.plant().crop())
                        .distinct()
                        .sorted()
                        .toList();
        if (which.isEmpty()) {
            return grown;
        }
        String wanted = which.get();
        Optional<String> plants = state.plant(wanted).map(each -> each.plant().crop());
        if (plants.isPresent()) {
            return List.of(plants.get());
        }
        if (folder.crops().ids().contains(wanted)) {
            return List.of(wanted);
        }
        List<String> known = new ArrayList<>(folder.crops().ids());
        known.addAll(state.plants().keySet());
        throw usage("there is no crop or plant \"" + wanted + "\". " + Nearest.hint(wanted, known));
    }

    private void tellOf(Crop crop, Season season, Stages stages) {
        out().line(crop.name() + ", season " + season.label());
        List<List<String>> rows = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            StageDate date = stages.date(crop, season, stage);
            rows.add(
                    List.of(
                            stage.bbch(),
                            date.date().toString(),
                            date.plusMinusDays() == 0 ? "" : "± " + date.plusMinusDays() + " d",
                            date.basis().words(),
                            date.words()));
        }
        out().columns(2, rows);
    }

    private static void write(JsonWriter json, List<Crop> crops, Season season, Stages stages) {
        json.object().put("season", season.label()).array("crops");
        for (Crop crop : crops) {
            json.object().put("crop", crop.id()).array("stages");
            for (Stage stage : Stage.values()) {
                StageDate date = stages.date(crop, season, stage);
                json.object()
                        .put("stage", stage.key())
                        .put("bbch", stage.bbch())
                        .put("date", date.date().toString())
                        .put("plusMinusDays", (long) date.plusMinusDays())
                        .put("basis", date.basis().words())
                        .put("words", date.words())
                        .put("sources", date.sources())
                        .endObject();
            }
            json.endArray().endObject();
        }
        json.endArray().endObject();
    }
}
