package org.oldwood.facts.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Purchase;
import org.oldwood.facts.Situation;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/**
 * Tells the rules whether a bed's mulch is to be topped up and how much a new layer takes. Fact: {@code mulch-due} (yes
 * where the layer, by the last note less settling and decay, has shrunk enough). Amount: {@code mulch}.
 */
public final class MulchAdvisor extends Advisor {

    public MulchAdvisor() {
        knows("mulch-due", MulchAdvisor::due);
        measures("mulch", this::amount);
    }

    private static Fact due(Situation s) {
        if (s.subject().bed().isEmpty()) { return Fact.unknown("it lies in no bed"); }
        BedMulch mulch = BedMulch.of(FeedingBooks.of(s), s);
        if (mulch.layer().isEmpty()) { return Fact.unknown("no mulch was noted; note mulched with its depth"); }
        String words = "about %s cm of mulch by %s (%s, %s cm on %s)".formatted(Words.fixed(mulch.depthNow(), 1),
                s.day(), mulch.layer().get().mulch().name(), Words.amount(mulch.layer().get().laidCm()),
                mulch.layer().get().laid());
        return Fact.yes(mulch.topUpDue(), words);
    }

    private Optional<Amount> amount(Situation s) {
        if (s.subject().bed().isEmpty()) { return Optional.empty(); }
        BedMulch mulch = BedMulch.of(FeedingBooks.of(s), s);
        if (mulch.plan().cubicMetres() <= 0) { return Optional.empty(); }
        List<String> lines = new ArrayList<>();
        lines.add(loads(mulch));
        if (mulch.sheets() > 0) { lines.add("Under it %s.".formatted(mulch.underlay().inWords(mulch.sheets()))); }
        mulch.nextTopUp()
                .ifPresent(day -> lines.add("By about " + day + " it will have shrunk to two thirds; look then."));
        lines.addAll(mulch.notes());
        Mulch material = mulch.plan().mulch();
        lines.addAll(FeedingBooks.of(s).mulches().remarks(mulch.plan()));
        material.notRead().forEach(mark -> lines.add(material.name() + " " + mark + "."));
        return Optional.of(Amount.of(mulch.plan().litres(), "l", words(mulch), mulch.plan().lines(), mulch.sources())
                .withLines(lines).withMaterial(cautions(mulch), material.tags(), buys(FeedingBooks.of(s), mulch))
                .withNoted(List.of(noted(mulch))));
    }

    /** As deep as it lies once laid: what is there, and the new layer as it settles. */
    private static Amount.Noted noted(BedMulch mulch) {
        return new Amount.Noted(EntryKind.MULCHED,
                Map.of("material", mulch.plan().mulch().id(), "depthCm", Words.amount(mulch.plan().depthWantedCm())));
    }

    private static List<String> cautions(BedMulch mulch) {
        List<String> all = new ArrayList<>(mulch.plan().mulch().cautions());
        if (mulch.sheets() > 0) { all.addAll(mulch.underlay().cautions()); }
        return all;
    }

    private static String words(BedMulch mulch) {
        return "%s of %s, laid %s cm deep on %s m²".formatted(mulch.plan().volumeWords(), mulch.plan().mulch().name(),
                Words.fixed(mulch.plan().layCm(), 0), Words.amount(mulch.plan().coveredM2()));
    }

    private String loads(BedMulch mulch) {
        Optional<Long> bales = mulch.plan().wholeBales();
        if (bales.isPresent()) {
            return "About %s of %s, %s kg.".formatted(Words.count(bales.get(), "bale", "bales"),
                    mulch.plan().mulch().bale().orElseThrow().kg().inWords(), Words.amount(mulch.plan().kg()));
        }
        double litres = mulch.barrowLitres();
        return "About %s of %s l, %s kg.".formatted(Words.count(mulch.plan().wholeLoads(litres), "barrow", "barrows"),
                Words.amount(litres), Words.amount(mulch.plan().kg()));
    }

    /** What a new layer takes, with the paper under it. */
    private static List<Purchase> buys(FeedingBooks books, BedMulch mulch) {
        Mulch material = mulch.plan().mulch();
        List<Purchase> all = new ArrayList<>();
        all.add(new Purchase(material.id(), material.name(), mulch.plan().litres(), "l",
                Optional.of(pack(books, mulch)), material.notRead()));
        if (mulch.sheets() > 0) {
            all.add(new Purchase(mulch.underlay().id(), mulch.underlay().name(), mulch.sheets(), "sheets",
                    Optional.empty(), List.of()));
        }
        return all;
    }

    /** A bale, told by the room that its straw takes once loosened; else a bag. */
    private static Purchase.Pack pack(FeedingBooks books, BedMulch mulch) {
        Figure bag = books.mulches().figure("bag");
        return mulch.plan().bales()
                .map(bales -> new Purchase.Pack(mulch.plan().litres() / bales, "bale", "bales",
                        mulch.plan().mulch().bale().orElseThrow().kg()))
                .orElseGet(() -> new Purchase.Pack(bag.is(), "bag", "bags", bag));
    }
}
