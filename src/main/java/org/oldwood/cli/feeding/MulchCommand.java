package org.oldwood.cli.feeding;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.year.NextTask;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.craft.mulching.MulchPlan;
import org.oldwood.craft.mulching.MulchTables;
import org.oldwood.craft.mulching.Underlay;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.BedMulch;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.garden.GardenFolder;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Works out mulch, for a garden's beds or without a garden. */
@Command(name = "mulch")
public final class MulchCommand extends GardenCommand {
    private static final String NOTHING = "nothing";

    @Parameters(arity = "0..1", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Option(names = "--area", paramLabel = "M2")
    Optional<Double> area = Optional.empty();

    @Option(names = "--depth", paramLabel = "CM")
    Optional<Double> depth = Optional.empty();

    @Option(names = "--now", paramLabel = "CM")
    Optional<Double> now = Optional.empty();

    @Option(names = "--bushes", paramLabel = "N")
    Optional<Integer> bushes = Optional.empty();

    @Option(names = "--gap", paramLabel = "CM")
    Optional<Double> gap = Optional.empty();

    @Option(names = "--material", paramLabel = "ID")
    Optional<String> material = Optional.empty();

    @Option(names = "--under", paramLabel = "WHAT")
    Optional<String> under = Optional.empty();

    @Override
    public int run() throws IOException {
        boolean alone = area.isPresent();
        refuseIf(alone && bed.isPresent(), "name a bed of the garden, or give --area, not both");
        refuseIf(!alone && (depth.or(() -> now).or(() -> gap).isPresent() || bushes.isPresent()),
                "--area is missing: how many square metres. Without it the beds are told");
        FeedingBooks books = new FeedingBooks(documents());
        return GroundSheet.show(this, alone ? List.of(told(books.mulches())) : ofGarden(folder(), books));
    }

    private MulchSheet told(MulchTables tables) {
        Mulch mulch = mulch(tables);
        double ground = area.orElseThrow();
        Figure ours = tables.collarGap("otherwise");
        MulchPlan plan = MulchPlan.of(mulch,
                new MulchPlan.Asked(ground, bushes.orElse(0), gap.orElse(ours.is()),
                        gap.isPresent() ? "" : ours.seen().beside(), now.orElse(0.0),
                        depth.orElseGet(() -> mulch.depth().is())));
        return new MulchSheet(tables, Words.amount(ground) + " m²", Optional.empty(), List.of(), plan,
                underlay(tables, plan.depthNowCm() > 0), tables.remarks(plan), Optional.empty());
    }

    private Mulch mulch(MulchTables tables) {
        String id = material.orElseGet(() -> tables.usual("mulch"));
        return tables.mulch(id)
                .orElseThrow(() -> noSuch("mulch", id, tables.mulches().stream().map(Mulch::id).toList()));
    }

    private Optional<Underlay> underlay(MulchTables tables, boolean covered) {
        if (under.filter(NOTHING::equals).isPresent() || (under.isEmpty() && covered)) { return Optional.empty(); }
        String id = under.orElseGet(() -> tables.usual("underlay"));
        return Optional.of(
                tables.underlay(id).orElseThrow(() -> usage("--under is paper, card or nothing, not \"" + id + "\"")));
    }

    private List<MulchSheet> ofGarden(GardenFolder folder, FeedingBooks books) {
        refuseIf(material.isPresent() || under.isPresent(),
                "in a garden the material comes from \"materials\" in garden.json");
        mustKnow("bed", bed, state().beds().keySet());
        GardenPlan garden = GardenPlan.of(this, folder);
        return garden.planner().subjects().ofKind("bed").stream()
                .filter(in -> bed.map(in.id()::equals).orElse(in.bed().orElseThrow().bed().tubLitres().isEmpty()))
                .map(in -> sheet(in, BedMulch.of(books, garden.situation(in)), books.mulches(),
                        garden.next(in, List.of("mulch"))))
                .toList();
    }

    private static MulchSheet sheet(Subject subject, BedMulch mulch, MulchTables tables, NextTask next) {
        String there = mulch.layer()
                .map(layer -> "About %s cm of %s lies there, laid %s cm deep on %s.".formatted(
                        Words.fixed(mulch.depthNow(), 1), layer.mulch().name(), Words.amount(layer.laidCm()),
                        Dates.shortDay(layer.laid())))
                .orElse("No mulch was noted here.");
        List<String> notes = new ArrayList<>(mulch.notes());
        notes.addAll(tables.remarks(mulch.plan()));
        mulch.nextTopUp()
                .ifPresent(day -> notes.add("A layer laid now wants topping up about " + Dates.shortDay(day) + "."));
        return new MulchSheet(tables, GroundSheet.heading(subject.bed().orElseThrow().bed()), Optional.of(subject.id()),
                List.of(there), mulch.plan(), mulch.sheets() > 0 ? Optional.of(mulch.underlay()) : Optional.empty(),
                notes, Optional.of(next.words()));
    }
}
