package org.oldwood.cli.cuttings;

import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.PlantingOut;
import org.oldwood.craft.cuttings.Propagation;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Option;

/** Which crop is raised, and how. */
final class CuttingsChoice {
    @Option(names = "--crop", paramLabel = "CROP")
    Optional<String> cropId = Optional.empty();

    @Option(names = "--form", paramLabel = "FORM")
    Optional<String> form = Optional.empty();

    @Option(names = "--method", paramLabel = "METHOD")
    Optional<String> method = Optional.empty();

    @Option(names = "--cut", paramLabel = "CUT")
    Optional<String> cut = Optional.empty();

    Crop crop(Crops crops, GardenCommand command) {
        return Planning.crop(cropId.orElseThrow(() -> command.usage("Say which crop: --crop blackcurrant")), crops,
                command);
    }

    /** The course chosen, with the form's defaults where nothing was said. */
    Course course(Crop crop, GardenCommand command) {
        Propagation all = Propagation.of(crop)
                .orElseThrow(() -> command.usage("Nothing is known of raising " + crop.plural() + " from cuttings"));
        check("method", method, all.methods().stream().map(it -> it.id()).toList(), command);
        check("form", form, crop.forms(), command);
        String grown = form.orElseGet(() -> grown(crop, all));
        List<String> cuts = all.plantingOut().cutsFor(grown).stream().map(PlantingOut.Cut::id).toList();
        check("cut", cut, cuts, command);
        return Course.of(crop, grown, method, cut).orElseThrow(
                () -> command.usage("No yields or no cut at planting are known of %s grown as %s. Forms: %s"
                        .formatted(crop.plural(), grown, String.join(", ", crop.forms()))));
    }

    /** The crop's usual form, or the one that the method makes. */
    private String grown(Crop crop, Propagation all) {
        List<String> made = method.map(all::formsOf).orElse(List.of());
        return made.isEmpty() || made.contains(crop.form()) ? crop.form() : made.get(0);
    }

    private static void check(String option, Optional<String> said, List<String> known, GardenCommand command) {
        if (said.isPresent() && !known.contains(said.get())) {
            throw command.usage("--%s is not known here: \"%s\". %s".formatted(option, said.get(),
                    Nearest.hint(said.get(), known.stream().distinct().toList())));
        }
    }
}
