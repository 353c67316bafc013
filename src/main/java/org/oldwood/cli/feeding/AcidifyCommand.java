package org.oldwood.cli.feeding;

import java.util.List;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.liming.Acidifier;
import org.oldwood.craft.feeding.liming.LimeCase;
import org.oldwood.craft.feeding.liming.SulphurPlan;
import org.oldwood.facts.feeding.BedAcidity;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.SoilStuff;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Works out sulphur for crops of acid soils, for a garden's beds or without a garden. */
@Command(name = "acidify")
public final class AcidifyCommand extends SoilCommand {
    @Option(names = "--free-lime")
    boolean freeLime;

    @Override
    String amount() { return "acidify"; }

    @Override
    boolean concerns(BedAcidity soil) { return soil.profile().map(FeedingProfile::acidSoil).orElse(false); }

    @Override
    boolean anyOther() { return freeLime; }

    @Override
    LimeCase.Layer layer(FeedingBooks books) { return new LimeCase.Layer(books.liming().figure("tableDepth").is(), 0); }

    @Override
    SoilSheet told(FeedingBooks books, LimeCase asked) {
        String id = material.orElse(books.liming().usualAcidifier());
        List<String> known = books.materials().acidifiers().stream().map(Acidifier::id).toList();
        Acidifier acidifier = books.materials().acidifier(id).orElseThrow(() -> noSuch("acidifier", id, known));
        return told(asked, asked.targetPh(), List.of(), SoilStuff.of(acidifier),
                SulphurPlan.of(books.sulphur(), books.tables().soils(), asked, acidifier, freeLime));
    }

    @Override
    BedAcidity.Way way(BedAcidity soil) { return soil.sulphur(); }
}
