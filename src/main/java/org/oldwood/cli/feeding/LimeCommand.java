package org.oldwood.cli.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.craft.feeding.liming.LimeCase;
import org.oldwood.craft.feeding.liming.LimePlan;
import org.oldwood.craft.feeding.liming.NeutralisingValue;
import org.oldwood.facts.feeding.BedAcidity;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.SoilStuff;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Works out lime from a pH test, for a garden's beds or without a garden. */
@Command(name = "lime")
public final class LimeCommand extends SoilCommand {
    @Option(names = "--depth", paramLabel = "CM")
    Optional<Double> depth = Optional.empty();

    @Option(names = "--stones", paramLabel = "PERCENT")
    Optional<Double> stones = Optional.empty();

    @Option(names = "--nv-cao", paramLabel = "PERCENT")
    Optional<Double> percentCaO = Optional.empty();

    @Option(names = "--nv-caco3", paramLabel = "PERCENT")
    Optional<Double> percentCaCO3 = Optional.empty();

    @Override
    String amount() { return "lime"; }

    @Override
    boolean concerns(BedAcidity soil) { return true; }

    @Override
    boolean anyOther() {
        return depth.isPresent() || stones.isPresent() || percentCaO.isPresent() || percentCaCO3.isPresent();
    }

    @Override
    LimeCase.Layer layer(FeedingBooks books) {
        return new LimeCase.Layer(depth.orElseGet(() -> books.liming().figure("tableDepth").is()), stones.orElse(0.0));
    }

    @Override
    SoilSheet told(FeedingBooks books, LimeCase asked) {
        Lime lime = lime(books);
        double aim = LimePlan.aim(books.liming(), books.tables().soils(), asked);
        List<String> facts = new ArrayList<>();
        if (aim < asked.targetPh()) {
            facts.add("On peat pH %s is enough; %s is not aimed at.".formatted(Words.amount(aim),
                    Words.amount(asked.targetPh())));
        }
        if (percentCaO.isPresent() || percentCaCO3.isPresent()) {
            // a value far from what such a lime has was probably read on the other scale
            lime.doubtAgainst(books.materials().lime(lime.id()).orElseThrow()).ifPresent(facts::add);
        }
        return told(asked, aim, facts, SoilStuff.of(lime),
                LimePlan.of(books.liming(), books.tables().soils(), asked, lime, Optional.empty()));
    }

    private Lime lime(FeedingBooks books) {
        String id = material.orElse(books.liming().usualLime());
        List<String> known = books.materials().limes().stream().map(Lime::id).toList();
        Lime lime = books.materials().lime(id).orElseThrow(() -> noSuch("lime", id, known));
        refuseIf(percentCaO.isPresent() && percentCaCO3.isPresent(),
                "give --nv-cao or --nv-caco3, whichever scale the bag uses, not both");
        return percentCaO.map(NeutralisingValue::ofCaO).or(() -> percentCaCO3.map(NeutralisingValue::new))
                .map(lime::withValue).orElse(lime);
    }

    @Override
    BedAcidity.Way way(BedAcidity soil) { return soil.lime(); }
}
