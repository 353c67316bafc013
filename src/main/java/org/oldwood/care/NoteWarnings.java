package org.oldwood.care;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crops;
import org.oldwood.feeding.Doubts;
import org.oldwood.feeding.FeedingProfile;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;

/**
 * What to say at once when somebody notes that something was given: that it came too soon after
 * what it must be kept apart from, that a crop in the bed does not bear it, that the amount looks
 * like kilograms written as grams, or that the material is not known. The entry is recorded all the
 * same.
 */
public final class NoteWarnings {
    private static final List<EntryKind> GIVING =
            List.of(EntryKind.FED, EntryKind.LIMED, EntryKind.ACIDIFIED, EntryKind.MULCHED);

    private final GardenState before;
    private final Crops crops;
    private final Documents documents;
    private final FeedingBooks books;

    /**
     * @param before the garden without the new entries
     */
    public NoteWarnings(GardenState before, Crops crops, Documents documents) {
        this.before = before;
        this.crops = crops;
        this.documents = documents;
        this.books = new FeedingBooks(documents);
    }

    /** True where an entry of this kind can be warned about; asking costs little. */
    public static boolean concerns(Entry entry) {
        return GIVING.contains(entry.kind());
    }

    /** The warnings about one entry; none where all is well. */
    public List<String> about(Entry entry) {
        Optional<BedState> bed = bed(entry);
        Optional<String> material = entry.text("material");
        if (!concerns(entry) || bed.isEmpty() || material.isEmpty()) {
            return List.of();
        }
        List<String> warnings = new ArrayList<>();
        tooClose(entry, bed.get()).ifPresent(warnings::add);
        notBorne(material.get(), bed.get()).ifPresent(warnings::add);
        doubt(entry, material.get(), bed.get()).ifPresent(warnings::add);
        unknown(entry, material.get()).ifPresent(warnings::add);
        return warnings;
    }

    private Optional<BedState> bed(Entry entry) {
        return entry.text("bed")
                .or(
                        () ->
                                entry.text("plant")
                                        .flatMap(before::plant)
                                        .map(plant -> plant.plant().bed()))
                .flatMap(before::bed);
    }

    private Optional<String> tooClose(Entry entry, BedState bed) {
        return KeepApart.read(documents, before)
                .clash(bed.bed().id(), entry)
                .map(
                        clash ->
                                "Too close on "
                                        + bed.bed().name()
                                        + " to \""
                                        + clash.other()
                                        + "\": keep "
                                        + clash.pair().days().inWords()
                                        + " between. "
                                        + clash.pair().reason()
                                        + " It is noted all the same. If it is not yet done, wait until "
                                        + clash.from()
                                        + ".");
    }

    private Optional<String> notBorne(String material, BedState bed) {
        List<String> tags = new ArrayList<>(books.materials().tags(material));
        books.mulches().mulch(material).ifPresent(mulch -> tags.addAll(mulch.tags()));
        for (PlantState plant : bed.plants()) {
            Optional<FeedingProfile.Excluded> excluded =
                    books.profile(crops.get(plant.plant().crop()))
                            .flatMap(profile -> profile.excludes(tags));
            if (excluded.isPresent()) {
                return Optional.of(
                        crops.get(plant.plant().crop()).plural()
                                + " stand in "
                                + bed.bed().name()
                                + ". "
                                + excluded.get().reason());
            }
        }
        return Optional.empty();
    }

    private Optional<String> doubt(Entry entry, String material, BedState bed) {
        double grams = entry.number("grams").orElse(0);
        if (grams <= 0) {
            return Optional.empty();
        }
        Doubts doubts = books.tables().doubts();
        double areaM2 = area(entry, bed);
        return entry.kind() == EntryKind.LIMED
                ? books.materials().lime(material).flatMap(it -> doubts.about(it, grams, areaM2))
                : books.materials().feed(material).flatMap(it -> doubts.about(it, grams, areaM2));
    }

    private double area(Entry entry, BedState bed) {
        return entry.text("plant")
                .flatMap(before::plant)
                .map(plant -> Grounds.of(bed, List.of(plant), crops).areaM2())
                .orElse(bed.bed().areaM2());
    }

    private Optional<String> unknown(Entry entry, String material) {
        List<String> known =
                switch (entry.kind()) {
                    case LIMED -> books.materials().limes().stream().map(it -> it.id()).toList();
                    case ACIDIFIED ->
                            books.materials().acidifiers().stream().map(it -> it.id()).toList();
                    case MULCHED -> books.mulches().mulches().stream().map(it -> it.id()).toList();
                    default -> books.materials().feeds().stream().map(it -> it.id()).toList();
                };
        return known.contains(material)
                ? Optional.empty()
                : Optional.of(
                        "\""
                                + material
                                + "\" is not a material that is known, so it does not count in the"
                                + " reckoning. "
                                + Nearest.to(material, known)
                                        .map(near -> "Did you mean \"" + near + "\"?")
                                        .orElse(
                                                "Known: "
                                                        + String.join(", ", known)
                                                        + ". You may add your own in materials/mine.json."));
    }
}
