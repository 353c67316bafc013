package org.oldwood.cli.water;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.facts.water.Summers;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what the beds hold, when they run short and what to give; or sets them side by side. */
@Command(name = "water")
public final class WaterCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Option(names = "--compare")
    boolean compare;

    @Option(names = "--crop", paramLabel = "CROP")
    Optional<String> crop = Optional.empty();

    @Option(names = "--feel")
    boolean feel;

    @Override
    public int run() throws IOException {
        if (feel) { return FeelWords.all(out(), documents()); }
        if (compare && bed.isPresent()) { throw usage("--compare sets all beds side by side: leave out " + bed.get()); }
        refuseIf(crop.isPresent() && !compare, "--crop goes with --compare");
        GardenFolder folder = folder();
        GardenState state = state();
        mustKnow("bed", bed, state.beds().keySet());
        GardenWater water = Planning.water(folder, state);
        stopOnProblems(folder);
        List<BedState> beds = state.beds().values().stream()
                .filter(one -> bed.isEmpty() || one.bed().id().equals(bed.get())).toList();
        if (compare && water.lacking().isEmpty()) { return compare(folder, water); }
        return answer(() -> WaterJson.of(state, water, beds), () -> tell(beds, new WaterWords(out(), state, water)));
    }

    private void tell(List<BedState> beds, WaterWords words) {
        GardenWater water = words.water();
        if (water.lacking().isPresent()) {
            words.cannotSay(beds);
        } else {
            water.weatherLacks().forEach(lack -> out().paragraph(0, "Note: %s.".formatted(lack)));
            beds.forEach(words::bed);
            bed.flatMap(words.state()::bed).ifPresent(words::views);
        }
    }

    private int compare(GardenFolder folder, GardenWater water) {
        String id = crop.orElseGet(() -> commonest(water.state()));
        Summers summers = Summers.of(water, Planning.crop(id, folder.crops(), this))
                .orElseThrow(() -> usage("nothing is known of how " + id + " draws water; name another with --crop"));
        WaterCompare table = new WaterCompare(summers, summers.beds());
        stopOnProblems(folder);
        return answer(table::answer, () -> table.print(out()));
    }

    /** The crop of which most bushes, or metres of row, stand; of several the first planted. */
    private String commonest(GardenState state) {
        Map<String, Double> plants = new LinkedHashMap<>();
        for (PlantState each : state.standing()) {
            plants.merge(each.plant().crop(), each.plant().lengthM().orElse(each.plant().bushes()), Double::sum);
        }
        return plants.entrySet().stream().reduce((most, each) -> each.getValue() > most.getValue() ? each : most)
                .map(Map.Entry::getKey)
                .orElseThrow(() -> usage("no plant stands in the garden: name a crop, --crop blackcurrant"));
    }
}
