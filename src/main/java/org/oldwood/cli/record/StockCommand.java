package org.oldwood.cli.record;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.TableOptions;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists what stands in the garden. */
@Command(name = "stock")
public final class StockCommand extends GardenCommand {
    @Mixin
    TableOptions table = new TableOptions();

    @Override
    public int run() throws IOException {
        List<Plant> plants = state().standing().stream().map(PlantState::plant).toList();
        if (table.asked()) {
            table.print(this, plants.stream().map(StockCommand::cells).toList());
            return 0;
        }
        return answer(() -> new Answer(plants),
                () -> out().columns(0, plants.stream().map(StockCommand::row).toList()));
    }

    private static Map<String, String> cells(Plant plant) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("plant", plant.id());
        cells.put("crop", plant.crop());
        cells.put("number", Integer.toString(plant.bushes()));
        cells.put("bed", plant.bed());
        cells.put("cultivar", plant.cultivar().orElse(""));
        cells.put("form", plant.form());
        cells.put("planted", plant.planted().toString());
        cells.put("lengthM", length(plant).orElse(""));
        return cells;
    }

    private static Optional<String> length(Plant plant) {
        return plant.lengthM().stream().mapToObj(NewGarden::tenths).findFirst();
    }

    private static List<String> row(Plant plant) {
        String many = plant.bushes() > 1 ? plant.bushes() + " bushes" : "";
        String day = plant.planted().toString();
        return List.of(plant.id(), plant.bed(), plant.form(), plant.about().equals("year") ? day.substring(0, 4) : day,
                length(plant).map(metres -> metres + " m").orElse(many), plant.cultivar().orElse(""));
    }

    private record Answer(List<Plant> plants) {}
}
