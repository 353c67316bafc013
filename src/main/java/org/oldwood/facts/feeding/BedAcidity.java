package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
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
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/**
 * Lime and sulphur of one bed. The target is that of the crop that wants the most acid soil; where a crop of acid soils
 * stands in the bed its own guard holds for all of it.
 *
 * @param profile what that crop asks for; absent in an empty bed
 * @param tested when its pH was tested and how old that is, in words
 * @param lime how its pH is raised
 * @param sulphur how it is lowered
 */
public record BedAcidity(Optional<FeedingProfile> profile, String tested, Way lime, Way sulphur) {
    /**
     * One way to change the pH.
     *
     * @param stuff what the grower keeps for it, or the usual
     * @param plan what to give
     * @param given what was given and not shown by the test
     */
    public record Way(SoilStuff stuff, PhPlan plan, NotShown given) {}

    /**
     * What the last test does not show yet.
     *
     * @param sinceTest what was given after it, or too soon before it, g/m² of ground limestone or sulphur
     * @param working what of the rest had not worked yet, in proportion to its time, g/m² of the same
     * @param tooSoon why the test misleads, and must be taken again
     * @param words what to tell of the amounts
     */
    public record NotShown(double sinceTest, double working, Optional<String> tooSoon, List<String> words) {}

    private static final double NEUTRAL_ENOUGH = 6.5;
    private static final double DAYS_A_MONTH = 365.25 / 12;

    public static BedAcidity of(FeedingBooks books, Situation s) {
        BedState bed = s.subject().bed().orElseThrow();
        Optional<FeedingProfile> profile = mostAcid(books, s, bed);
        List<String> kept = s.world().state().garden().materials();
        Lime lime = FeedingBooks.kept(kept, books.materials()::lime).stream().filter(each -> !each.is("ash"))
                .findFirst().orElseGet(() -> books.materials().lime(books.liming().usualLime()).orElseThrow());
        Acidifier acidifier = FeedingBooks.kept(kept, books.materials()::acidifier).stream().findFirst()
                .orElseGet(() -> books.materials().acidifier(books.liming().usualAcidifier()).orElseThrow());
        Optional<SoilRecord.Ph> ph = SoilRecord.ph(bed);
        NotShown limed = notShown(books, bed, EntryKind.LIMED);
        NotShown soured = notShown(books, bed, EntryKind.ACIDIFIED);
        LimeCase forLime = asked(books, bed, profile, ph, limed);
        PhPlan limePlan = LimePlan.of(books.liming(), books.tables().soils(), forLime, lime, profile);
        PhPlan sulphurPlan = SulphurPlan.of(books.sulphur(), books.tables().soils(),
                asked(books, bed, profile, ph, soured), acidifier, ph.map(SoilRecord.Ph::freeLime).orElse(false));
        Optional<String> tub = bed.bed().tubLitres().isPresent()
                ? Optional.of("The mix of a tub is neither limed nor acidified: renew it.")
                : Optional.empty();
        Optional<String> not = tub.or(() -> SharedBed.clash(books, SharedBed.crops(bed, s.world().crops())))
                .or(() -> ph.flatMap(test -> SoilRecord.tooOld(books, test.date(), s.day()))).or(limed::tooSoon)
                .or(soured::tooSoon);
        return new BedAcidity(profile,
                ph.map(test -> "pH %s, tested on %s, %s".formatted(Words.amount(test.ph()), test.date(),
                        SoilRecord.age(test.date(), s.day()))).orElse("pH never tested"),
                new Way(SoilStuff.of(lime), unless(not, limePlan), limed),
                new Way(SoilStuff.of(acidifier), unless(not, sulphurPlan), soured));
    }

    private static PhPlan unless(Optional<String> not, PhPlan plan) {
        return not.filter(why -> !plan.nothingToDo() || plan.refused().isPresent())
                .map(why -> PhPlan.refused(why, plan.sources())).orElse(plan);
    }

    public static Optional<FeedingProfile> mostAcid(FeedingBooks books, Situation s, BedState bed) {
        return books.profiles(bed, s.world().crops()).stream()
                .min((a, b) -> Double.compare(a.targetPh().is(), b.targetPh().is()));
    }

    /** The pH that is enough for a crop in a bed; peat need not be as sweet as mineral soil. */
    public static Figure enoughPh(FeedingBooks books, Bed bed, FeedingProfile profile) {
        Figure peat = books.liming().figure("peatTarget");
        return books.tables().soils().organic(bed.texture()) && peat.is() < profile.targetPh().is() ? peat
                : profile.targetPh();
    }

    private static LimeCase asked(FeedingBooks books, BedState bed, Optional<FeedingProfile> profile,
            Optional<SoilRecord.Ph> ph, NotShown given) {
        return new LimeCase(bed.bed().texture().filter(each -> books.tables().soils().of(each).isPresent()),
                ph.map(each -> OptionalDouble.of(each.ph())).orElse(OptionalDouble.empty()),
                profile.map(each -> each.targetPh().is()).orElse(NEUTRAL_ENOUGH),
                new LimeCase.Layer(books.liming().figure("tableDepth").is(), bed.bed().stonesPercent()),
                bed.bed().areaM2(), !bed.plants().isEmpty(), given.sinceTest, given.working);
    }

    /** The lime, or the sulphur, that the bed's last test does not show. */
    static NotShown notShown(FeedingBooks books, BedState bed, EntryKind kind) {
        boolean lime = kind == EntryKind.LIMED;
        String name = lime ? "lime" : "sulphur";
        String as = lime ? "ground limestone" : name;
        ToDoubleBiFunction<String, Double> reckon = lime ? books::asLimestone : books::asSulphur;
        Figure worksOver = lime ? books.liming().figure("worksOver") : books.sulphur().figure("leadMonths");
        Optional<LocalDate> test = SoilRecord.ph(bed).map(SoilRecord.Ph::date);
        Figure tooSoon = books.tables().limits().retestAfter();
        double since = 0;
        double working = 0;
        Optional<String> misleads = Optional.empty();
        List<String> words = new ArrayList<>();
        for (Entry entry : Entries.all(bed.entries(), kind)) {
            double gPerM2 = reckon.applyAsDouble(entry.text("material").orElse(""),
                    entry.number("grams").orElse(0) / bed.bed().areaM2());
            long days = test.map(day -> ChronoUnit.DAYS.between(entry.date(), day)).orElse(0L);
            if (days >= tooSoon.is()) {
                working += gPerM2 * Math.max(0, 1 - days / (worksOver.is() * DAYS_A_MONTH));
                continue;
            }
            since += gPerM2;
            misleads = days <= 0 ? misleads
                    : Optional.of("The test of %s came %s days after %s; within %s it reads wrong: test again first."
                            .formatted(test.get(), days, name, tooSoon.inWords()));
        }
        if (since > 0) { words.add("Given and not tested since, as %s: %s g/m².".formatted(as, Words.amount(since))); }
        if (Math.round(working) > 0) {
            words.add("Still working when tested, as %s: %s g/m²; %s is taken to work over %s, in proportion."
                    .formatted(as, Words.amount(working), name, worksOver.inWords()));
        }
        return new NotShown(since, working, misleads, words);
    }
}
