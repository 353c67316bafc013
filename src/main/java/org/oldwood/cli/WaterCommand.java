package org.oldwood.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Stages;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import org.oldwood.water.BedAccount;
import org.oldwood.water.GardenWater;
import org.oldwood.water.Soils;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what the beds hold, when they run short and what to give; or sets them side by side. */
@Command(
        name = "water",
        description = {
            "tell how much water the beds hold, when they run short and how much to give",
            "",
            "Past days come from weather.csv in the garden's folder where it has them, all others"
                    + " from the climate's means. Moisture notes correct the account."
        },
        footer = {"", "Example:", "  oldwood water --feel"})
final class WaterCommand extends GardenCommand {

    @Parameters(arity = "0..1", paramLabel = "BED", description = "one bed; all otherwise")
    Optional<String> bed = Optional.empty();

    @Option(names = "--compare", description = "set the beds side by side in a mean season")
    boolean compare;

    @Option(names = "--feel", description = "show how moist soil feels in the hand, by texture")
    boolean feel;

    @Override
    int run() throws IOException {
        if (feel) {
            return feel(folderIfAny());
        }
        GardenFolder folder = folder();
        GardenState state = state();
        bed.ifPresent(id -> known(id, state));
        GardenWater water = water(folder, state);
        stopOnProblems(folder);
        List<BedState> beds =
                state.beds().values().stream()
                        .filter(one -> bed.isEmpty() || one.bed().id().equals(bed.get()))
                        .toList();
        WaterWords words = new WaterWords(out(), state, water);
        if (json) {
            out().json(writer -> WaterJson.write(writer, state, water, beds));
        } else if (water.lacking().isPresent()) {
            words.cannotSay(beds);
        } else if (compare) {
            WaterCompare.print(out(), state, accounts(water, beds));
        } else {
            beds.forEach(words::bed);
        }
        return 0;
    }

    private static List<BedAccount> accounts(GardenWater water, List<BedState> beds) {
        return beds.stream().map(water::account).flatMap(Optional::stream).toList();
    }

    private void known(String id, GardenState state) {
        if (state.bed(id).isEmpty()) {
            throw usage(
                    "there is no bed \""
                            + id
                            + "\". "
                            + Nearest.hint(id, List.copyOf(state.beds().keySet())));
        }
    }

    private GardenWater water(GardenFolder folder, GardenState state) throws IOException {
        Stages stages = Planning.stages(folder, state);
        return new GardenWater(
                state,
                stages.climate().map(GardenClimate::climate),
                Planning.weather(folder, today()),
                stages,
                folder.crops(),
                folder.documents());
    }

    private int feel(Optional<GardenFolder> folder) {
        Soils soils = Soils.read(folder.map(GardenFolder::documents).orElseGet(Documents::bundled));
        out().paragraph(
                        0,
                        "Take soil from the depth of the roots at three places or more, squeeze it"
                                + " in the hand, and note the class: oldwood note moisture BED"
                                + " --feel moist");
        for (Soils.FeelGuide guide : soils.guides()) {
            out().line();
            out().line("On " + guide.soils() + ":");
            guide.classes()
                    .forEach(
                            one ->
                                    out().hanging(
                                                    "  "
                                                            + one.word()
                                                            + " ("
                                                            + WaterWords.range(one)
                                                            + "): ",
                                                    4,
                                                    one.text()
                                                            + (one.seen().equals("memory")
                                                                    ? " (remembered, not read)"
                                                                    : "")));
        }
        out().line();
        out().line("Source: nrcs-feel (oldwood sources nrcs-feel)");
        return 0;
    }
}
