package org.oldwood.facts.feeding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.Doubts;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Figure;
import org.oldwood.facts.KeepApart;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Season;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import org.oldwood.words.Words;

/**
 * What to say at once when somebody notes that something was given: that it came too soon after what it must be kept
 * apart from, that a crop in the bed does not bear it, that cuttings came from a bush in doubtful health, that the
 * amount looks like kilograms written as grams, or that the material is not known. The entry is recorded all the same.
 */
public record NoteWarnings(GardenState before, Crops crops, Documents documents, FeedingBooks books) {
    private static final List<EntryKind> GIVING = List.of(EntryKind.FED, EntryKind.LIMED, EntryKind.ACIDIFIED,
            EntryKind.MULCHED);

    private static final List<EntryKind> OTHER = List.of(EntryKind.SOIL_TEST, EntryKind.STRUCK, EntryKind.PLANTED);

    /** @param before the garden without the new entries */
    public NoteWarnings(GardenState before, Crops crops, Documents documents) {
        this(before, crops, documents, new FeedingBooks(documents));
    }

    /** True where an entry of this kind can be warned about; asking costs little. */
    public static boolean concerns(Entry entry) {
        return GIVING.contains(entry.kind()) || OTHER.contains(entry.kind());
    }

    /** The warnings about one entry; none where all is well. */
    public List<String> about(Entry entry) {
        if (entry.kind() == EntryKind.STRUCK) { return parent(entry); }
        Optional<BedState> bed = entry.text("bed")
                .or(() -> entry.text("plant").flatMap(before::plant).map(plant -> plant.plant().bed()))
                .flatMap(before::bed);
        Optional<String> material = entry.text("material");
        if (bed.isPresent() && entry.kind() == EntryKind.SOIL_TEST) {
            return Stream.of(unmeasured(entry), tooSoon(entry, bed.get())).flatMap(Optional::stream).toList();
        }
        if (bed.isPresent() && entry.kind() == EntryKind.PLANTED) { return planted(entry, bed.get()); }
        if (!concerns(entry) || bed.isEmpty() || material.isEmpty()) { return List.of(); }
        String given = material.get();
        Stream<String> warnings = Stream.of(tooClose(entry, bed.get()), late(entry, given, bed.get()),
                beforeWinter(entry, given, bed.get()), notBorne(given, bed.get()), doubt(entry, given, bed.get()),
                unknown(entry, given), rich(entry, given, bed.get())).flatMap(Optional::stream);
        Stream<String> wants = books.mulches().mulch(given).stream()
                .flatMap(mulch -> Together.about(books.together(), Set.copyOf(mulch.tags())).stream());
        return Stream.concat(warnings, wants).toList();
    }

    /** What speaks against the bush that cuttings came from; its health asks for no dates. */
    private List<String> parent(Entry entry) {
        LotBook book = new LotBook(before, crops, new CalendarStages());
        return entry.text("parent").flatMap(before::plant).flatMap(plant -> book.healthOn(plant, entry.date())).stream()
                .flatMap(health -> health.warnings().stream())
                .map(warning -> entry.needed("parent") + ": " + warning.words()).toList();
    }

    /** A crop that cannot share the bed, or has no hope in it. */
    private List<String> planted(Entry entry, BedState bed) {
        List<Crop> crop = entry.text("crop").flatMap(crops::find).stream().toList();
        List<Crop> all = Stream.concat(SharedBed.crops(bed, crops).stream(), crop.stream()).distinct().toList();
        return Stream.of(SharedBed.clash(books, all), SharedBed.hopeless(books, bed, crop)).flatMap(Optional::stream)
                .map(words -> "%s: %s It is noted all the same.".formatted(bed.bed().name(), words)).toList();
    }

    /** A soil test that says nothing of what was measured, and is the newest all the same. */
    private static Optional<String> unmeasured(Entry entry) {
        return entry.kind().fields().stream()
                .anyMatch(field -> field.most() > 0 && entry.values().containsKey(field.key())) ? Optional.empty()
                        : Optional.of(
                                "Neither a pH nor another figure is noted with this test, so it tells nothing and no other is asked for. oldwood undo takes it back; then note it with --ph.");
    }

    /** A soil test that lime, sulphur, feed or manure still falsifies. */
    private Optional<String> tooSoon(Entry entry, BedState bed) {
        Figure after = books.tables().limits().retestAfter();
        return SoilRecord.falsified(books, bed, entry.date()).map(
                last -> "%s was %s on %s: a test reads wrong within %s of lime, sulphur, feed or manure. It is noted all the same; test again from %s."
                        .formatted(bed.bed().name(), last.kind().key(), last.date(), after.inWords(),
                                last.date().plusDays((long) after.is())));
    }

    private Optional<String> tooClose(Entry entry, BedState bed) {
        return KeepApart.read(documents, List.of(bed)).clash(bed.bed().id(), entry).map(
                clash -> "Too close on %s to \"%s\": keep %s between. %s It is noted all the same. If it is not yet done, wait until %s."
                        .formatted(bed.bed().name(), clash.other(), clash.pair().days().inWords(),
                                clash.pair().reason(), clash.from()));
    }

    /** Nitrogen after the last good day of all crops that got it. */
    private Optional<String> late(Entry entry, String material, BedState bed) {
        Optional<Feed> feed = books.materials().feed(material).filter(it -> it.gives(1).n() > 0);
        if (entry.kind() != EntryKind.FED || feed.isEmpty()) { return Optional.empty(); }
        Season season = Season.containing(entry.date(), before.garden().hemisphere());
        return books.profiles(bed, crops).stream().map(profile -> books.tables().timing(profile.timing()))
                .map(timing -> feed.get().slow() ? timing.latestSlow() : timing.latestQuick()).map(season::day)
                .max(Comparator.naturalOrder()).filter(latest -> entry.date().isAfter(latest))
                .map(latest -> "Late: the last good day for the nitrogen of %s here is %s. Later nitrogen makes soft shoots that winter harms, or rain takes it. It is noted all the same."
                        .formatted(feed.get().name(), latest));
    }

    /** Quick nitrogen that rain will wash out before there are roots to take it up. */
    private Optional<String> beforeWinter(Entry entry, String material, BedState bed) {
        Applications applications = new Applications(books, before.garden().hemisphere());
        String words = "Early: by spring rain takes about %s %% of the nitrogen of %s given now (our figure, for mild wet"
                + " winters); the ledger counts the rest. It is noted all the same.";
        return books.materials().feed(material)
                .filter(feed -> entry.kind() == EntryKind.FED && applications.keeps(feed, entry.date(), bed) < 1)
                .map(feed -> words.formatted(Words.whole(100 * (1 - applications.keeps(feed, entry.date(), bed))),
                        feed.name()));
    }

    private Optional<String> notBorne(String material, BedState bed) {
        List<String> tags = new ArrayList<>(books.materials().tags(material));
        books.mulches().mulch(material).ifPresent(mulch -> tags.addAll(mulch.tags()));
        return SharedBed
                .crops(bed, crops).stream().flatMap(crop -> books.profile(crop)
                        .flatMap(profile -> profile.excludes(tags)).map(excluded -> "%s stand in %s. %s"
                                .formatted(Words.capital(crop.plural()), bed.bed().name(), excluded.reason()))
                        .stream())
                .findFirst();
    }

    private Optional<String> doubt(Entry entry, String material, BedState bed) {
        double grams = entry.number("grams").orElse(0);
        if (grams <= 0) { return Optional.empty(); }
        Doubts doubts = books.tables().doubts();
        double areaM2 = entry.text("plant").flatMap(before::plant)
                .map(plant -> Grounds.of(bed, List.of(plant), crops).areaM2()).orElse(bed.bed().areaM2());
        Optional<String> doubt = entry.kind() == EntryKind.LIMED
                ? books.materials().lime(material).flatMap(it -> doubts.about(it, grams, areaM2))
                : books.materials().feed(material).flatMap(it -> doubts.about(it, grams, areaM2));
        return doubt.map(words -> "%s If so: oldwood correct %s grams=…".formatted(words, entry.id()));
    }

    private Optional<String> rich(Entry entry, String material, BedState bed) {
        double depth = entry.number("depthCm").orElse(0);
        return books.mulches().mulch(material).filter(any -> entry.kind() == EntryKind.MULCHED)
                .flatMap(mulch -> RichMulch.about(books, crops, bed, mulch, depth)
                        .map(words -> "Rich: %s. %s Poorer, so better, are %s. It is noted and counts.".formatted(
                                mulch.name(), words, Words.list(RichMulch.poorer(books, books.profiles(bed, crops))))));
    }

    private Optional<String> unknown(Entry entry, String material) {
        List<String> known = switch (entry.kind()) {
            case LIMED -> books.materials().limes().stream().map(it -> it.id()).toList();
            case ACIDIFIED -> books.materials().acidifiers().stream().map(it -> it.id()).toList();
            case MULCHED -> books.mulches().mulches().stream().map(it -> it.id()).toList();
            default -> books.materials().feeds().stream().map(it -> it.id()).toList();
        };
        return known.contains(material) ? Optional.empty()
                : Optional.of("\"%s\" is not a material that is known, so it does not count in the reckoning. %s"
                        .formatted(material,
                                Nearest.to(material, known).map(near -> "Did you mean \"" + near + "\"?")
                                        .orElse("Known: %s. You may add your own in materials/mine.json."
                                                .formatted(String.join(", ", known)))));
    }
}
