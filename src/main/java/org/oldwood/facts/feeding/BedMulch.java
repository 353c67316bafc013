package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.craft.mulching.MulchLayer;
import org.oldwood.craft.mulching.MulchPlan;
import org.oldwood.craft.mulching.Underlay;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;
import org.oldwood.facts.Situation;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;
import org.oldwood.words.Words;

/**
 * The mulch of one bed: what lies there, and what a new layer takes.
 *
 * @param layer the layer of the last note; absent where none was noted
 * @param depthNow its depth on the situation's day, cm
 * @param plan the new layer
 * @param barrowLitres what a barrow holds, l
 * @param topUpAt share of the wanted depth at which to top up
 * @param day the day for which it was reckoned
 */
public record BedMulch(Optional<MulchLayer> layer, double depthNow, MulchPlan plan, Underlay underlay,
        double barrowLitres, double topUpAt, LocalDate day, List<String> notes) {
    private static final double BARE_BELOW_CM = 1;

    public static BedMulch of(FeedingBooks books, Situation s) {
        BedState bed = s.subject().bed().orElseThrow();
        Optional<Entry> last = Entries.last(bed.entries(), EntryKind.MULCHED);
        Optional<MulchLayer> layer = last.flatMap(new Applications(books, s.season().hemisphere())::layer);
        double now = layer.map(each -> each.depthOn(s.day())).orElse(0.0);
        List<String> notes = new ArrayList<>();
        last.flatMap(Entry::unmeasured).ifPresent(words -> notes.add(Words.capital(words) + "."));
        Mulch mulch = chosen(books, s, bed, notes);
        Optional<Figure> gap = SharedBed.crops(bed, s.world().crops()).stream()
                .map(crop -> books.mulches().collarGap(crop.group())).max(Comparator.comparingDouble(Figure::is));
        int bushes = bed.plants().stream().map(PlantState::plant).filter(plant -> plant.lengthM().isEmpty())
                .mapToInt(Plant::bushes).sum();
        MulchPlan plan = MulchPlan.of(mulch,
                new MulchPlan.Asked(bed.bed().areaM2(), bushes, gap.map(Figure::is).orElse(0.0),
                        gap.map(it -> it.seen().beside()).orElse(""), now, mulch.depth().is()));
        return new BedMulch(layer, now, plan, books.mulches().underlay(books.mulches().usual("underlay")).orElseThrow(),
                books.mulches().figure("barrow").is(), books.mulches().figure("topUpAt").is(), s.day(),
                List.copyOf(notes));
    }

    /**
     * What the mulch that is still to be laid in a season will bring to the bed, g/m²; nothing where one was noted in
     * it, where enough lies there, or where its time is past.
     */
    static Nutrients brings(FeedingBooks books, Situation s) {
        BedState bed = s.subject().bed().orElseThrow();
        LocalDate last = s.world().stages().day(s.subject().crop().orElseThrow(), s.season(), Stage.BUD_BURST)
                .plusDays(Math.round(books.mulches().figure("laidUntil").is()));
        boolean laid = bed.entries().stream()
                .anyMatch(entry -> entry.kind() == EntryKind.MULCHED && s.season().contains(entry.date()));
        if (laid || last.isBefore(s.world().today()) || bed.plants().isEmpty()) { return Nutrients.NONE; }
        BedMulch mulch = of(books, new Situation(s.world(), s.subject(), s.season(), last));
        return mulch.topUpDue() ? mulch.gives(books) : Nutrients.NONE;
    }

    /** What plants can use of the new layer in its first season, g/m². */
    private Nutrients gives(FeedingBooks books) {
        double kgPerM2 = plan.kgPerM2();
        return plan.mulch().asFeed().flatMap(books.materials()::feed).map(feed -> feed.gives(kgPerM2 * 1000))
                .orElse(Nutrients.NONE);
    }

    /** What lies there is topped up with the same, where it is still kept. */
    private static List<String> lastFirst(BedState bed, List<String> kept) {
        Optional<String> last = Entries.last(bed.entries(), EntryKind.MULCHED).flatMap(entry -> entry.text("material"))
                .filter(kept::contains);
        return Stream.concat(last.stream(), kept.stream()).distinct().toList();
    }

    /** The first mulch kept that no crop forbids and that is not too rich; else the first allowed; else the usual one. */
    private static Mulch chosen(FeedingBooks books, Situation s, BedState bed, List<String> notes) {
        List<FeedingProfile> profiles = books.profiles(bed, s.world().crops());
        boolean acid = profiles.stream().anyMatch(FeedingProfile::acidSoil);
        List<String> kept = lastFirst(bed, s.world().state().garden().materials());
        Optional<Mulch> rich = Optional.empty();
        for (Mulch mulch : FeedingBooks.kept(kept, books.mulches()::mulch)) {
            Optional<String> why = excluded(profiles, mulch);
            Optional<String> tooRich = RichMulch.about(books, s.world().crops(), bed, mulch, mulch.depth().is());
            if (why.isEmpty() && tooRich.isEmpty()) {
                mulch.warning().filter(words -> acid)
                        .ifPresent(words -> notes.add(mulch.name() + ": pH " + words + "."));
                return mulch;
            }
            notes.add("Not %s: %s".formatted(mulch.name(), why.or(() -> tooRich).orElse("")));
            rich = why.isEmpty() ? rich.or(() -> Optional.of(mulch)) : rich;
        }
        notes.add(rich.isPresent()
                ? "Poorer, so better, are %s; one of them is reckoned with."
                        .formatted(Words.list(RichMulch.poorer(books, profiles)))
                : "No mulch that fits is named under \"materials\"; a usual one is taken.");
        return books.mulches().mulch(books.mulches().usual(acid ? "acidSoilMulch" : "mulch")).orElseThrow();
    }

    static Optional<String> excluded(List<FeedingProfile> profiles, Mulch mulch) {
        return profiles.stream().map(profile -> profile.excludes(mulch.tags())).flatMap(Optional::stream)
                .map(FeedingProfile.Excluded::reason).findFirst();
    }

    /** Sheets of paper under the new layer; none where mulch still lies there. */
    public long sheets() {
        return depthNow >= BARE_BELOW_CM ? 0 : plan.sheets(underlay);
    }

    /** True where the layer has shrunk so far that it should be topped up. */
    public boolean topUpDue() {
        return depthNow <= plan.depthWantedCm() * topUpAt;
    }

    /** About when the new layer will want topping up. */
    public Optional<LocalDate> nextTopUp() {
        double laid = plan.depthWantedCm() * plan.mulch().layFactor().is();
        return new MulchLayer(plan.mulch(), laid, day).reaches(plan.depthWantedCm() * topUpAt);
    }

    /** Source keys. */
    public List<String> sources() { return plan.mulch().depth().sources(); }
}
