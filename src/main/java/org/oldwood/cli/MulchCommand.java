package org.oldwood.cli;

import org.oldwood.feeding.Words;
import org.oldwood.mulching.Mulch;
import org.oldwood.mulching.MulchPlan;
import org.oldwood.mulching.MulchTables;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Works out mulch for a piece of ground. Needs no garden. */
@Command(
        name = "mulch",
        description = "work out how much mulch a piece of ground takes",
        footer = {"", "Example:", "  oldwood mulch --area 10 --depth 7.5 --bushes 4"})
final class MulchCommand extends GardenCommand {
    @Option(names = "--area", paramLabel = "M2", required = true, description = "area, m²")
    double area;

    @Option(
            names = "--depth",
            paramLabel = "CM",
            required = true,
            description = "depth wanted once settled, cm")
    double depth;

    @Option(names = "--now", paramLabel = "CM", description = "depth that lies there, cm")
    double now;

    @Option(names = "--bushes", paramLabel = "N", description = "bushes that stand there")
    int bushes;

    @Option(names = "--gap", paramLabel = "CM", description = "bare ring, cm; 10 otherwise")
    double gap = 10;

    @Option(names = "--material", paramLabel = "ID", description = "garden-compost otherwise")
    String material = "garden-compost";

    @Override
    int run() {
        MulchTables tables = MulchTables.read(Documents.bundled());
        Mulch mulch =
                tables.mulch(material)
                        .orElseThrow(
                                () ->
                                        usage(
                                                "there is no mulch \""
                                                        + material
                                                        + "\". "
                                                        + Nearest.hint(
                                                                material,
                                                                tables.mulches().stream()
                                                                        .map(Mulch::id)
                                                                        .toList())));
        MulchPlan plan = MulchPlan.of(mulch, new MulchPlan.Asked(area, bushes, gap, now, depth));
        double barrows = plan.loads(tables.figure("barrow").is());
        if (json) {
            out().json(
                            writer ->
                                    writer.object()
                                            .put("material", mulch.id())
                                            .put("coveredM2", plan.coveredM2())
                                            .put("litres", plan.litres())
                                            .put("kg", plan.kg())
                                            .put("barrows", barrows)
                                            .put("arithmetic", plan.lines())
                                            .endObject());
            return 0;
        }
        out().paragraph(
                        0,
                        plan.volumeWords()
                                + " of "
                                + mulch.name()
                                + ": "
                                + Words.amount(barrows)
                                + " barrows of "
                                + tables.figure("barrow").inWords()
                                + ", about "
                                + Words.amount(plan.kg())
                                + " kg.");
        plan.lines().forEach(line -> out().hanging("  - ", 4, line));
        return 0;
    }
}
