package org.oldwood.facts.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Fact;
import org.oldwood.facts.GardenStages;
import org.oldwood.facts.Situation;
import org.oldwood.season.CropFrost;
import org.oldwood.season.CropStages;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.StageDate;

/** What the season engine knows of frost: its mean dates, and how often it harms a crop in flower. */
public final class FrostFacts extends Advisor {
    private final Map<String, Optional<CropFrost>> frosts = new HashMap<>();

    public FrostFacts() {
        knows("bloom-frost", s -> ofCrop(s, crop -> bloom(crop, s)));
        knows("bloom-frost-ends-date", s -> ofCrop(s, crop -> ends(crop, s)));
    }

    private static Fact ofCrop(Situation s, Function<Crop, Fact> fact) {
        return s.subject().crop().map(fact)
                .orElseGet(() -> Fact.unknown("frost in flower can be told of one crop only"));
    }

    /** In how many years of 100 a night harms the flowers. */
    private Fact bloom(Crop crop, Situation situation) {
        Optional<CropFrost> frost = frost(crop, situation);
        if (frost.isEmpty()) {
            return Fact.unknown("how often frost harms %s in flower here is not known: %s%s".formatted(crop.plural(),
                    GardenStages.lackingClimate(), harm(crop)));
        }
        return frost.get().bloomRisk()
                .map(risk -> Fact.number(100 * risk, words(crop, frost.get(), risk)).from(sources(frost.get())))
                .orElseGet(() -> Fact.unknown(
                        "what cold the flowers of %s stand, or when they come, is not known; note their days, and nights that harmed them"
                                .formatted(crop.plural())));
    }

    private static String words(Crop crop, CropFrost frost, double risk) {
        return "a night that harms %s in flower comes in %s of 100 years by the climate's means%s%s".formatted(
                crop.plural(), 100 * risk < 1 ? "fewer than 1" : "about " + Math.round(100 * risk), harm(crop),
                frost.year().last()
                        .map(last -> "; half the years have their last frost of spring after %s, ± %.0f days (%s)"
                                .formatted(last, frost.year().plusMinus().is(),
                                        frost.year().plusMinus().seen().words()))
                        .orElse(""));
    }

    /** From how many degrees on, at which stage; stages that stand the same are told together. */
    private static String harm(Crop crop) {
        Map<String, List<String>> byCold = new LinkedHashMap<>();
        CropStages.of(crop).frost().forEach((stage, harm) -> {
            if (stage.compareTo(Stage.FIRST_FLOWER) >= 0) {
                byCold.computeIfAbsent("%s (%s)".formatted(harm.plain(), harm.seen().words()),
                        cold -> new ArrayList<>()).add(stage.words());
            }
        });
        List<String> all = new ArrayList<>();
        byCold.forEach((cold, names) -> all.add(cold + " at " + String.join(" and ", names)));
        return all.isEmpty() ? "" : "; harm begins at " + String.join(", ", all);
    }

    private static List<String> sources(CropFrost frost) {
        return frost.inFlower().stream().flatMap(each -> each.harm().sources().stream()).distinct().toList();
    }

    /**
     * The last day to watch for frost: as long as young fruit is tender, or until harm has become rare. Without a
     * climate the plant's time alone decides.
     */
    private Fact ends(Crop crop, Situation situation) {
        StageDate petalFall = situation.world().stages().date(crop, situation.season(), Stage.PETAL_FALL);
        long tender = tenderDays(situation.world());
        LocalDate latest = petalFall.date().plusDays(tender);
        Optional<LocalDate> rare = frost(crop, situation).flatMap(CropFrost::lastToWatch);
        if (rare.isPresent() && rare.get().isBefore(latest)) {
            return Fact.day(rare.get(), "on " + rare.get() + ", after which harm by frost is rare here");
        }
        return Fact.day(latest, tender + " days after " + crop.name() + ": " + petalFall.inWords())
                .from(petalFall.sources());
    }

    private Optional<CropFrost> frost(Crop crop, Situation situation) {
        return frosts.computeIfAbsent(crop.id() + " " + situation.season().label(),
                key -> CropFrost.of(crop, situation.season(), situation.world().stages()));
    }

    private static long tenderDays(Situation.World world) {
        return (long) world.once(SeasonMethods.class, of -> of.stages().climate().map(GardenClimate::methods)
                .orElseGet(() -> SeasonMethods.read(of.documents()))).frost().afterPetalFall().is();
    }
}
