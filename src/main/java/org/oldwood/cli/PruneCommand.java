package org.oldwood.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.care.Choices;
import org.oldwood.care.PruningCase;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;
import org.oldwood.pruning.Bush;
import org.oldwood.pruning.FormPruning;
import org.oldwood.pruning.Pruning;
import org.oldwood.pruning.School;
import org.oldwood.pruning.StemClass;
import org.oldwood.pruning.Stems;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what to take out of each bush, and what becomes of it. */
@Command(
        name = "prune",
        description = "what to take out of each bush, and what becomes of it",
        footer = {
            "",
            "Example:",
            "  oldwood prune --crop blackcurrant --stems 1=5,2=4,3=4,4=3 --outlook"
        })
final class PruneCommand extends GardenCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "PLANT|BED",
            description = "only this plant, or the plants of this bed")
    Optional<String> which = Optional.empty();

    @Option(names = "--crop", paramLabel = "CROP", description = "work without a garden")
    Optional<String> crop = Optional.empty();

    @Option(names = "--form", paramLabel = "FORM", description = "how it is grown")
    Optional<String> form = Optional.empty();

    @Option(
            names = "--stems",
            paramLabel = "COUNTS",
            description = "stems by age, 1=5,2=4,4+=3; canes: 1 new, 2 fruited")
    Optional<String> stems = Optional.empty();

    @Option(names = "--sick", paramLabel = "COUNTS", description = "of these, dead or diseased")
    Optional<String> sick = Optional.empty();

    @Option(names = "--weak", paramLabel = "COUNTS", description = "of these, weak or low")
    Optional<String> weak = Optional.empty();

    @Option(
            names = "--seasons",
            paramLabel = "N",
            description = "growing seasons completed since planting")
    Optional<Integer> seasons = Optional.empty();

    @Option(names = "--metres", paramLabel = "M", description = "length of the row")
    Optional<Double> metres = Optional.empty();

    @Option(names = "--variant", paramLabel = "NAME", description = "another way of pruning")
    Optional<String> variant = Optional.empty();

    @Option(names = "--done", paramLabel = "COUNTS", description = "stems taken last time")
    Optional<String> done = Optional.empty();

    @Option(names = "--new-shoots", paramLabel = "N", description = "new stems in a year")
    Optional<Integer> newShoots = Optional.empty();

    @Option(names = "--outlook", description = "the next six seasons")
    boolean outlook;

    @Override
    int run() throws IOException {
        List<PruneSheet> sheets = crop.isPresent() ? List.of(given()) : fromGarden();
        if (json) {
            out().json(
                            writer -> {
                                writer.object().array("plants");
                                sheets.forEach(sheet -> sheet.write(writer, outlook));
                                writer.endArray().endObject();
                            });
            return 0;
        }
        for (PruneSheet sheet : sheets) {
            sheet.print(out(), outlook);
        }
        tell("Blades: gloves, and goggles when you bend into stems. Dry day, above freezing.");
        tell("Clean the blade between bushes; sick wood leaves the plot by your local rules.");
        tell("From early spring on look for a nest before you cut.");
        return 0;
    }

    private PruneSheet given() throws IOException {
        Optional<GardenFolder> folder = folderIfAny();
        Documents documents = folder.isPresent() ? folder.get().documents() : Documents.bundled();
        Crops crops = new Crops(documents);
        Crop of =
                crops.find(crop.orElse(""))
                        .orElseThrow(() -> unknown("crop", crop.orElse(""), crops.ids()));
        Pruning pruning =
                Pruning.read(of).orElseThrow(() -> usage("no pruning figures for " + of.name()));
        String asked = form.orElse(of.form());
        FormPruning grown =
                pruning.form(asked)
                        .orElseThrow(() -> unknown("form", asked, pruning.forms().keySet()));
        if (stems.isEmpty()) {
            throw usage("--stems is missing; count the stems by age, --stems 1=5,2=4,3=4,4+=3");
        }
        Bush bush = bush(of, grown);
        return new PruneSheet(
                of.name() + " as " + grown.form(),
                of,
                pruning,
                grown,
                school(grown),
                bush,
                done(),
                newShoots);
    }

    private Bush bush(Crop of, FormPruning grown) {
        double room =
                metres.orElseGet(
                        () -> of.spacing(grown.form()).map(s -> s.inRow().is()).orElse(1.0));
        if (!(room > 0 && room <= 1000) || seasons.orElse(0) < 0) {
            throw usage("--metres must be more than 0 and at most 1000, --seasons 0 or more");
        }
        OptionalInt completed = seasons.map(OptionalInt::of).orElseGet(OptionalInt::empty);
        try {
            return new Bush(counts(stems), counts(sick), counts(weak), completed, 1, room);
        } catch (IllegalArgumentException e) {
            throw usage(e.getMessage() == null ? "wrong counts" : e.getMessage());
        }
    }

    private static Stems counts(Optional<String> given) {
        return given.map(StemClass::parse).orElse(Stems.NONE);
    }

    private Optional<Stems> done() {
        try {
            return done.map(StemClass::parse);
        } catch (IllegalArgumentException e) {
            throw usage("--done: " + e.getMessage());
        }
    }

    private School school(FormPruning grown) {
        if (variant.isEmpty()) {
            return grown.school();
        }
        return grown.school(variant.get())
                .orElseThrow(() -> unknown("way", variant.get(), grown.schoolIds()));
    }

    private RuntimeException unknown(String what, String seen, Collection<String> known) {
        return usage(
                "there is no "
                        + what
                        + " \""
                        + seen
                        + "\" here; there are "
                        + String.join(", ", known)
                        + Nearest.to(seen, known)
                                .map(near -> ". Did you mean \"" + near + "\"?")
                                .orElse(""));
    }

    private List<PruneSheet> fromGarden() throws IOException {
        GardenFolder folder = folder();
        GardenState state = state();
        Season now = Season.containing(today(), state.garden().hemisphere());
        List<PruneSheet> all = new ArrayList<>();
        boolean met = false;
        for (PlantState plant : state.plants().values()) {
            if (plant.gone().isPresent() || !chosen(plant)) {
                continue;
            }
            met = true;
            Crop of = folder.crops().get(plant.plant().crop());
            Optional<PruningCase> one = PruningCase.of(plant, of, now, state);
            if (one.isEmpty() || one.get().bush().isEmpty()) {
                tell(plant.plant().id() + " was not counted; note counted with its stems by age.");
                continue;
            }
            all.add(sheet(plant, of, one.get()));
        }
        if (!met) {
            throw usage("there is no plant or bed \"" + which.orElse("") + "\" in this garden");
        }
        state.questions().forEach(question -> tell("Question: " + question));
        wrongChoices(folder, state);
        return all;
    }

    /** A choice that names nothing known leaves the default: that is not passed over in silence. */
    private void wrongChoices(GardenFolder folder, GardenState state) {
        Problems problems = new Problems();
        folder.documents()
                .read(GardenFolder.GARDEN_FILE)
                .ifPresent(json -> Choices.check(json, state, folder.crops(), problems));
        problems.list().forEach(problem -> tell(problem.inWords()));
    }

    private PruneSheet sheet(PlantState plant, Crop of, PruningCase one) {
        School school = variant.isPresent() ? school(one.form()) : one.school();
        return new PruneSheet(
                of.name() + " " + plant.plant().id(),
                of,
                one.pruning(),
                one.form(),
                school,
                one.bush().orElseThrow(),
                done(),
                newShoots);
    }

    private boolean chosen(PlantState plant) {
        return which.isEmpty()
                || plant.plant().id().equals(which.get())
                || plant.plant().bed().equals(which.get());
    }
}
