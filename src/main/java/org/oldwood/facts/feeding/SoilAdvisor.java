package org.oldwood.facts.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Household;
import org.oldwood.craft.feeding.liming.PhPlan;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.record.RecordFacts;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/**
 * Tells the rules how far a bed's pH lies from what its crops want, and how much lime or sulphur the next dose takes.
 * Facts: {@code ph-gap} (target less measured), {@code soil-test-age} (days), {@code tub-litres},
 * {@code lime-needs-test}, {@code sulphur-needs-test}. Amounts: {@code lime} and {@code acidify}.
 */
public final class SoilAdvisor extends Advisor {

    public SoilAdvisor() {
        knows("tub-litres", SoilAdvisor::tub);
        knows("ph-gap", SoilAdvisor::gap);
        knows("soil-test-age", s -> RecordFacts.since(EntryKind.SOIL_TEST, s));
        knows("lime-needs-test", s -> needsTest(s, BedAcidity::lime));
        knows("sulphur-needs-test", s -> needsTest(s, BedAcidity::sulphur));
        knows("lime-due", s -> due(s, BedAcidity::lime));
        knows("sulphur-due", s -> due(s, BedAcidity::sulphur));
        measures("lime", s -> way(s, BedAcidity::lime).flatMap(way -> amount(s, way)));
        measures("acidify", s -> way(s, BedAcidity::sulphur).flatMap(way -> amount(s, way)));
    }

    private static Fact tub(Situation s) {
        double litres = s.subject().bed().map(bed -> bed.bed().tubLitres().orElse(0)).orElse(0.0);
        return Fact.number(litres, litres > 0 ? "tubs hold %s l of mix".formatted(Words.amount(litres)) : "no tub");
    }

    private static Fact gap(Situation s) {
        Optional<FeedingProfile> profile = s.subject().bed()
                .flatMap(bed -> BedAcidity.mostAcid(FeedingBooks.of(s), s, bed));
        if (profile.isEmpty()) { return Fact.unknown("the pH that these crops want is not known"); }
        Figure enough = BedAcidity.enoughPh(FeedingBooks.of(s), s.subject().bed().orElseThrow().bed(), profile.get());
        Optional<SoilRecord.Ph> ph = s.subject().bed().flatMap(SoilRecord::ph);
        if (ph.isEmpty()) { return Fact.unknown("the pH was never measured; note soil-test with its pH"); }
        double most = Math.max(enough.is(), Math.min(profile.get().targetPh().is(), ph.get().ph()));
        double gap = Math.round((most - ph.get().ph()) * 100) / 100.0;
        return Fact
                .number(gap,
                        "pH %s on %s, %s, wanted %s%s: %s%s%s".formatted(Words.amount(ph.get().ph()), ph.get().date(),
                                SoilRecord.age(ph.get().date(), s.day()), Words.amount(most), enough.seen().beside(),
                                Words.amount(Math.abs(gap)), gap >= 0 ? " too low" : " too high", notShown(s)))
                .from(enough.sources());
    }

    private static String notShown(Situation s) {
        BedAcidity.NotShown lime = BedAcidity.notShown(FeedingBooks.of(s), s.subject().bed().orElseThrow(),
                EntryKind.LIMED);
        List<String> told = Stream.concat(lime.tooSoon().stream(), lime.words().stream()).toList();
        return told.isEmpty() ? "" : ". " + String.join(" ", told);
    }

    private static Optional<BedAcidity.Way> way(Situation s, Function<BedAcidity, BedAcidity.Way> which) {
        return s.subject().bed().map(bed -> which.apply(BedAcidity.of(FeedingBooks.of(s), s)));
    }

    /** Where all doses go by one test, a new one comes after the last. */
    private static Fact needsTest(Situation s, Function<BedAcidity, BedAcidity.Way> which) {
        Optional<BedAcidity.Way> given = way(s, which).filter(way -> way.given().sinceTest() > 0);
        if (given.isEmpty()) { return Fact.yes(false, "none was given since the last test"); }
        PhPlan plan = given.get().plan();
        boolean needs = plan.retest() || plan.nothingToDo();
        return Fact.yes(needs,
                needs ? "what was given is not yet tested" : "what is left to give goes by the same test");
    }

    /** Whether some is to be given; why not. */
    private static Fact due(Situation s, Function<BedAcidity, BedAcidity.Way> which) {
        Optional<BedAcidity.Way> way = way(s, which);
        if (way.isEmpty()) { return Fact.unknown("this is no bed"); }
        PhPlan plan = way.get().plan();
        String why = plan.refused().orElseGet(() -> String.join(" ", plan.notes()));
        return plan.nothingToDo() ? Fact.yes(false, why.isEmpty() ? "nothing is to be given" : why)
                : Fact.yes(true,
                        "%s of %s in all".formatted(Words.weight(plan.totalGrams()), way.get().stuff().name()));
    }

    private Optional<Amount> amount(Situation s, BedAcidity.Way way) {
        PhPlan plan = way.plan();
        SoilStuff stuff = way.stuff();
        if (plan.nothingToDo()) { return Optional.empty(); }
        double grams = plan.portions().get(0);
        List<String> lines = new ArrayList<>();
        Household.inWords(grams, stuff.density()).ifPresent(lines::add);
        if (plan.dosesGrams().size() > 1) {
            lines.add("The first of %s doses, %s; %s in all.".formatted(plan.dosesGrams().size(), plan.apart(),
                    Words.weight(plan.totalGrams())));
        }
        lines.addAll(way.given().words());
        lines.addAll(plan.notes());
        String words = Words.weight(grams) + " of " + stuff.name() + " (" + Words.amount(grams / area(s)) + " g/m²)";
        return Optional.of(Amount.of(grams, "g", words, plan.lines(), plan.sources()).withLines(lines)
                .withMaterial(stuff.cautions(), stuff.tags(), List.of(stuff.purchase(grams)))
                .withNoted(List.of(stuff.noted(grams))));
    }

    private static double area(Situation s) { return s.subject().bed().orElseThrow().bed().areaM2(); }
}
