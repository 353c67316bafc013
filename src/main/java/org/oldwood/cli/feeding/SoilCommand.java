package org.oldwood.cli.feeding;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.year.NextTask;
import org.oldwood.craft.feeding.liming.LimeCase;
import org.oldwood.craft.feeding.liming.PhPlan;
import org.oldwood.facts.Subject;
import org.oldwood.facts.feeding.BedAcidity;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.SoilStuff;
import org.oldwood.garden.Bed;
import org.oldwood.garden.GardenFolder;
import org.oldwood.words.Words;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What {@code lime} and {@code acidify} have in common: a pH, the one wanted, and the doses. */
abstract class SoilCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "BED")
    Optional<String> bed = Optional.empty();

    @Option(names = "--soil", paramLabel = "TEXTURE")
    Optional<String> soil = Optional.empty();

    @Option(names = "--ph", paramLabel = "PH", description = "the measured pH; no garden needed")
    Optional<Double> ph = Optional.empty();

    @Option(names = "--target", paramLabel = "PH")
    Optional<Double> target = Optional.empty();

    @Option(names = "--area", paramLabel = "M2")
    Optional<Double> area = Optional.empty();

    @Option(names = "--material", paramLabel = "ID", description = "what is at hand")
    Optional<String> material = Optional.empty();

    @Option(names = "--bare")
    boolean bare;

    /** The sheet of a piece of ground told on the command line. */
    abstract SoilSheet told(FeedingBooks books, LimeCase asked);

    abstract BedAcidity.Way way(BedAcidity soil);

    /** The sheet of ground told on the command line, of its material and plan. */
    static SoilSheet told(LimeCase asked, double aim, List<String> facts, SoilStuff stuff, PhPlan plan) {
        String title = "%s m², from pH %s to %s".formatted(Words.amount(asked.areaM2()),
                Words.amount(asked.measuredPh().orElse(0)), Words.amount(aim));
        return new SoilSheet(title, Optional.empty(), facts, stuff, plan, asked.areaM2(), 0, Optional.empty());
    }

    private SoilSheet ofBed(FeedingBooks books, Bed bed, BedAcidity soil, NextTask next) {
        BedAcidity.Way way = way(soil);
        String wanted = soil.profile()
                .map(profile -> "; its crops want pH %s%s".formatted(
                        Words.amount(BedAcidity.enoughPh(books, bed, profile).is()),
                        books.tables().soils().organic(bed.texture()) ? " on peat" : ""))
                .orElse("");
        List<String> facts = new ArrayList<>(List.of(soil.tested() + wanted + "."));
        facts.addAll(way.given().words());
        return new SoilSheet(GroundSheet.heading(bed), Optional.of(bed.id()), facts, way.stuff(), way.plan(),
                bed.areaM2(), way.given().sinceTest(),
                Optional.of(next.words()).filter(words -> bed.tubLitres().isEmpty()));
    }

    /** Whether a bed is shown where none was named. */
    abstract boolean concerns(BedAcidity soil);

    /** The amount that rules ask for. */
    abstract String amount();

    /** Depth of the layer to put right, cm, and its stones by volume, %. */
    abstract LimeCase.Layer layer(FeedingBooks books);

    /** Whether an option of the command itself tells of a piece of ground. */
    abstract boolean anyOther();

    @Override
    public int run() throws IOException {
        boolean alone = ph.isPresent();
        refuseIf(alone && bed.isPresent(), "name a bed of the garden, or give --ph, not both");
        refuseIf(!alone && (anyOther() || bare || area.isPresent() || target.isPresent()),
                "--ph is missing: the measured pH. Without it the garden's beds are told");
        FeedingBooks books = new FeedingBooks(documents());
        return GroundSheet.show(this, alone ? List.of(told(books, asked(books))) : ofGarden(folder(), books));
    }

    private LimeCase asked(FeedingBooks books) {
        if (target.isEmpty() || area.isEmpty()) {
            throw usage((target.isEmpty() ? "--target" : "--area") + " is missing");
        }
        mustKnow("soil", soil, books.tables().soils().textures());
        return new LimeCase(soil, OptionalDouble.of(ph.orElseThrow()), target.get(), layer(books), area.get(), !bare, 0,
                0);
    }

    private List<SoilSheet> ofGarden(GardenFolder folder, FeedingBooks books) {
        refuseIf(material.isPresent() || soil.isPresent(),
                "in a garden the soil and the material come from its record");
        mustKnow("bed", bed, state().beds().keySet());
        GardenPlan garden = GardenPlan.of(this, folder);
        List<SoilSheet> sheets = new ArrayList<>();
        for (Subject subject : garden.planner().subjects().ofKind("bed")) {
            BedAcidity found = BedAcidity.of(books, garden.situation(subject));
            if (bed.map(subject.id()::equals).orElseGet(() -> concerns(found))) {
                NextTask next = garden.next(subject, List.of(amount()));
                sheets.add(ofBed(books, subject.bed().orElseThrow().bed(), found, next));
            }
        }
        if (sheets.isEmpty()) { tell("No bed of this garden has crops that ask for it; name a bed to see it anyway."); }
        return sheets;
    }
}
