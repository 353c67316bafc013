package org.oldwood.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.feeding.FeedingTables;
import org.oldwood.feeding.Lime;
import org.oldwood.feeding.LimeCase;
import org.oldwood.feeding.LimePlan;
import org.oldwood.feeding.Liming;
import org.oldwood.feeding.Materials;
import org.oldwood.feeding.PhPlan;
import org.oldwood.feeding.Words;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Works out lime from a pH test. Needs no garden. */
@Command(
        name = "lime",
        description = "work out how much lime raises the pH of a piece of ground",
        footer = {
            "",
            "Example:",
            "  oldwood lime --soil sandy-loam --ph 5.5 --target 6.5 --area 10"
        })
final class LimeCommand extends GardenCommand {
    @Option(names = "--soil", paramLabel = "TEXTURE", description = "sandy-loam for example")
    Optional<String> soil = Optional.empty();

    @Option(names = "--ph", paramLabel = "PH", required = true, description = "the measured pH")
    double ph;

    @Option(names = "--target", paramLabel = "PH", required = true, description = "the pH wanted")
    double target;

    @Option(names = "--area", paramLabel = "M2", required = true, description = "area, m²")
    double area;

    @Option(names = "--material", paramLabel = "ID", description = "ground-limestone otherwise")
    String material = "ground-limestone";

    @Option(names = "--depth", paramLabel = "CM", description = "how deep, cm; 20 otherwise")
    double depth = 20;

    @Option(names = "--stones", paramLabel = "PERCENT", description = "stones by volume, %%")
    double stones;

    @Option(names = "--bare", description = "no bushes stand there: it can be dug in")
    boolean bare;

    @Override
    int run() {
        Documents documents = Documents.bundled();
        Materials materials = Materials.read(documents);
        Lime lime =
                materials
                        .lime(material)
                        .orElseThrow(
                                () ->
                                        usage(
                                                "there is no lime \""
                                                        + material
                                                        + "\". "
                                                        + Nearest.hint(
                                                                material,
                                                                materials.limes().stream()
                                                                        .map(Lime::id)
                                                                        .toList())));
        LimeCase asked =
                new LimeCase(
                        soil,
                        OptionalDouble.of(ph),
                        target,
                        new LimeCase.Layer(depth, stones),
                        area,
                        !bare,
                        0);
        PhPlan plan =
                LimePlan.of(
                        Liming.read(documents), FeedingTables.read(documents).soils(), asked, lime);
        print(plan, lime);
        return 0;
    }

    private void print(PhPlan plan, Lime lime) {
        if (json) {
            out().json(
                            writer ->
                                    writer.object()
                                            .put("material", plan.material())
                                            .put("refused", plan.refused().orElse(""))
                                            .put("gPerM2", plan.gPerM2())
                                            .put("totalGrams", plan.totalGrams())
                                            .put("doses", (long) plan.dosesGrams().size())
                                            .put("arithmetic", plan.lines())
                                            .put("notes", plan.notes())
                                            .put("sources", plan.sources())
                                            .endObject());
            return;
        }
        out().paragraph(
                        0,
                        plan.refused()
                                .orElse(
                                        Words.weight(plan.totalGrams())
                                                + " of "
                                                + lime.name()
                                                + " in all, in "
                                                + Words.count(
                                                        plan.dosesGrams().size(), "dose", "doses")
                                                + "."));
        plan.lines().forEach(line -> out().hanging("  - ", 4, line));
        plan.notes().forEach(line -> out().paragraph(2, line));
        out().paragraph(2, "Goggles, gloves, mask; the label and local rules come first.");
    }
}
