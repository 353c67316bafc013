package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.liming.Acidifier;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.craft.feeding.liming.LimeCase;
import org.oldwood.craft.feeding.liming.LimePlan;
import org.oldwood.craft.feeding.liming.PhPlan;
import org.oldwood.craft.feeding.liming.SulphurPlan;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Situation;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;

/**
 * Lime and sulphur of one bed. The target is that of the crop that wants the most acid soil; where a crop of acid soils
 * stands in the bed its own guard holds for all of it.
 *
 * @param profile what that crop asks for; absent in an empty bed
 * @param tested the day of the last test of its pH; absent where there was none
 * @param testAge how old that test is, in words
 * @param asked the bed as the plan for lime sees it, with what was given since the test
 * @param acidified sulphur given since the test, g/m²
 * @param material the lime that the grower keeps, or the usual one
 * @param acidifier the acidifier that the grower keeps, or the usual one
 * @param lime the plan for lime
 * @param sulphur the plan for the acidifier
 */
public record BedAcidity(
        Optional<FeedingProfile> profile,
        Optional<LocalDate> tested,
        Optional<String> testAge,
        LimeCase asked,
        double acidified,
        SoilStuff material,
        SoilStuff acidifier,
        PhPlan lime,
        PhPlan sulphur) {
    private static final double NEUTRAL_ENOUGH = 6.5;

    public static BedAcidity of(FeedingBooks books, Situation s) {
        BedState bed = s.subject().bed().orElseThrow();
        Optional<FeedingProfile> profile = mostAcid(books, s, bed);
        List<String> kept = s.world().state().garden().materials();
        Lime lime = FeedingBooks.kept(kept, books.materials()::lime).materials().stream()
                .filter(each -> !each.is("ash"))
                .findFirst()
                .orElseGet(
                        () -> books.materials().lime(books.liming().usualLime()).orElseThrow());
        Acidifier acidifier = FeedingBooks.kept(kept, books.materials()::acidifier).materials().stream()
                .findFirst()
                .orElseGet(() -> books.materials()
                        .acidifier(books.liming().usualAcidifier())
                        .orElseThrow());
        Optional<SoilRecord.Ph> ph = SoilRecord.ph(bed);
        LimeCase forLime = asked(books, bed, profile, ph, limeSince(books, bed, ph));
        LimeCase forSulphur = asked(books, bed, profile, ph, sulphurSince(books, bed, ph));
        PhPlan limePlan = profile.map(
                        each -> LimePlan.of(books.liming(), books.tables().soils(), forLime, lime, each))
                .orElseGet(() -> LimePlan.of(books.liming(), books.tables().soils(), forLime, lime));
        PhPlan sulphurPlan = SulphurPlan.of(
                books.sulphur(),
                books.tables().soils(),
                forSulphur,
                acidifier,
                ph.map(SoilRecord.Ph::freeLime).orElse(false));
        Optional<String> tub = bed.bed().tubLitres().isPresent()
                ? Optional.of("The mix of a tub is neither limed nor acidified: renew it.")
                : Optional.empty();
        Optional<String> not = tub.or(() ->
                        SharedBed.clash(books, SharedBed.crops(bed, s.world().crops())))
                .or(() -> ph.flatMap(test -> SoilRecord.tooOld(books, test.date(), s.day())));
        return new BedAcidity(
                profile,
                ph.map(SoilRecord.Ph::date),
                ph.map(test -> SoilRecord.age(test.date(), s.day())),
                forLime,
                forSulphur.givenSinceTest(),
                SoilStuff.of(lime),
                SoilStuff.of(acidifier),
                unless(not, limePlan, lime.id()),
                unless(not, sulphurPlan, acidifier.id()));
    }

    private static PhPlan unless(Optional<String> not, PhPlan plan, String material) {
        return not.filter(why -> !plan.nothingToDo() || plan.refused().isPresent())
                .map(why -> PhPlan.refused(material, why, plan.sources()))
                .orElse(plan);
    }

    public static Optional<FeedingProfile> mostAcid(FeedingBooks books, Situation s, BedState bed) {
        return books.profiles(bed, s.world().crops()).stream()
                .min((a, b) -> Double.compare(a.targetPh().is(), b.targetPh().is()));
    }

    /** The pH that is enough for a crop in a bed; peat need not be as sweet as mineral soil. */
    public static Figure enoughPh(FeedingBooks books, Bed bed, FeedingProfile profile) {
        Figure peat = books.liming().figure("peatTarget");
        return books.tables().soils().organic(bed.texture())
                        && peat.is() < profile.targetPh().is()
                ? peat
                : profile.targetPh();
    }

    private static LimeCase asked(
            FeedingBooks books,
            BedState bed,
            Optional<FeedingProfile> profile,
            Optional<SoilRecord.Ph> ph,
            double given) {
        return new LimeCase(
                bed.bed()
                        .texture()
                        .filter(each -> books.tables().soils().of(each).isPresent()),
                ph.map(each -> OptionalDouble.of(each.ph())).orElse(OptionalDouble.empty()),
                profile.map(each -> each.targetPh().is()).orElse(NEUTRAL_ENOUGH),
                new LimeCase.Layer(
                        books.liming().figure("tableDepth").is(), bed.bed().stonesPercent()),
                bed.bed().areaM2(),
                !bed.plants().isEmpty(),
                given);
    }

    /** g/m² given since the test, as ground limestone. */
    private static double limeSince(FeedingBooks books, BedState bed, Optional<SoilRecord.Ph> ph) {
        return since(bed, EntryKind.LIMED, ph).stream()
                .mapToDouble(each -> books.asLimestone(material(each), gPerM2(each, bed)))
                .sum();
    }

    /** g/m² given since the test, as elemental sulphur. */
    private static double sulphurSince(FeedingBooks books, BedState bed, Optional<SoilRecord.Ph> ph) {
        return since(bed, EntryKind.ACIDIFIED, ph).stream()
                .mapToDouble(each -> books.asSulphur(material(each), gPerM2(each, bed)))
                .sum();
    }

    private static String material(Entry entry) {
        return entry.text("material").orElse("");
    }

    private static double gPerM2(Entry entry, BedState bed) {
        return entry.number("grams").orElse(0) / bed.bed().areaM2();
    }

    private static List<Entry> since(BedState bed, EntryKind kind, Optional<SoilRecord.Ph> ph) {
        return bed.entries().stream()
                .filter(entry -> entry.kind() == kind
                        && ph.isPresent()
                        && !entry.date().isBefore(ph.get().date()))
                .toList();
    }
}
