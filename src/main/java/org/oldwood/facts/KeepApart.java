package org.oldwood.facts;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** Pairs of materials that must lie some days apart on one bed, and what was given or is planned where. */
public final class KeepApart {
    private static final List<String> LISTS = List.of("feeds", "limes", "acidifiers", "mulches", "underlays");

    private final Known known;
    private final Map<String, List<Given>> byBed = new HashMap<>();

    /** The pairs, and the tags of each material. */
    private record Known(List<Pair> pairs, Map<String, Set<String>> tagsOfMaterial) {
        static Known read(Fields pairs, Documents documents) {
            Map<String, Set<String>> tags = new HashMap<>();
            documents.all("materials").stream()
                    .flatMap(file -> LISTS.stream().flatMap(list -> file.objects(list).stream()))
                    .forEach(material -> tags.computeIfAbsent(material.text("id"), id -> new HashSet<>())
                            .addAll(material.texts("tags")));
            return new Known(pairs.objects("apart").stream().map(pair -> RecordReader.read(pair, Pair.class)).toList(),
                    tags);
        }
    }

    private KeepApart(Known known) { this.known = known; }

    /** A pair: after {@code first}, so many days until {@code then}. */
    public record Pair(String id, String first, String then, Figure days, String reason) {}

    /** Something given, or planned, on a bed. */
    private record Given(LocalDate day, Set<String> tags, String words) {}

    /**
     * Two things that come too close.
     *
     * @param from the next day on which nothing stands in the way
     */
    public record Clash(Pair pair, String other, LocalDate from) {}

    /** What was given on some beds. */
    public static KeepApart read(Documents documents, Collection<BedState> beds) {
        // a file of one's own that cannot be read is told by whoever reads the garden's data
        KeepApart apart = new KeepApart(
                documents.made("keep-apart.json", Known.class, pairs -> Known.read(pairs, documents))
                        .orElseGet(() -> new Known(List.of(), Map.of())));
        for (BedState bed : beds) {
            bed.entries().forEach(entry -> apart.read(bed, entry));
            bed.plants().forEach(plant -> plant.entries().forEach(entry -> apart.read(bed, entry)));
        }
        return apart;
    }

    private void read(BedState bed, Entry entry) {
        entry.text("material").ifPresent(material -> given(bed.bed().id(), entry.date(), tags(entry, material),
                entry.kind().key() + " " + material + " on " + entry.date()));
    }

    private Set<String> tags(Entry entry, String material) {
        Set<String> tags = known.tagsOfMaterial.getOrDefault(material, Set.of());
        return tags.isEmpty() && entry.kind() == EntryKind.LIMED ? Set.of("lime") : tags;
    }

    /** Says that something with these tags is given on a bed. */
    public void given(String bed, LocalDate day, Set<String> tags, String words) {
        byBed.computeIfAbsent(bed, key -> new ArrayList<>()).add(new Given(day, tags, words));
    }

    /** Everything that an entry of this kind and material stands too close to. */
    public Optional<Clash> clash(String bed, Entry entry) {
        return entry.text("material").flatMap(material -> clash(bed, entry.date(), tags(entry, material)));
    }

    /** What stands in the way of giving something with these tags on that day. */
    public Optional<Clash> clash(String bed, LocalDate day, Set<String> tags) {
        Optional<Clash> found = longest(bed, day, tags);
        Optional<Clash> next = found;
        LocalDate free = day;
        // behind one pair another may begin: past a feed that lime must precede, the days after it
        while (next.isPresent()) {
            free = next.get().from;
            next = longest(bed, free, tags);
        }
        LocalDate from = free;
        return found.map(clash -> new Clash(clash.pair, clash.other, from));
    }

    /** The pair that is broken for the longest time; its day is the next on which that pair is not. */
    private Optional<Clash> longest(String bed, LocalDate day, Set<String> tags) {
        return byBed.getOrDefault(bed, List.of()).stream()
                .flatMap(given -> known.pairs.stream().flatMap(pair -> clash(pair, given, day, tags).stream()))
                .max(Comparator.comparing(Clash::from));
    }

    private static Optional<Clash> clash(Pair pair, Given given, LocalDate day, Set<String> tags) {
        boolean hadFirst = given.tags.contains(pair.first) && tags.contains(pair.then);
        boolean hadThen = given.tags.contains(pair.then) && tags.contains(pair.first);
        if (!hadFirst && !hadThen) { return Optional.empty(); }
        int days = (int) Math.ceil(pair.days().is());
        long after = ChronoUnit.DAYS.between(given.day, day);
        boolean later = hadFirst && after >= 0 && after < days;
        boolean earlier = hadThen && after <= 0 && -after < days;
        return later || earlier ? Optional.of(new Clash(pair, given.words, given.day.plusDays(later ? days : 1)))
                : Optional.empty();
    }
}
