package org.oldwood.facts.feeding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.words.Words;

/** What cannot stand in one bed, because no pH suits all of it, and ground that no sulphur makes acid. */
public final class SharedBed {
    private SharedBed() {}

    /** Why crops cannot share a bed and what to do; empty where some pH suits all. */
    public static Optional<String> clash(FeedingBooks books, Collection<Crop> crops) {
        Map<String, FeedingProfile> profiles = new TreeMap<>();
        crops.forEach(crop -> books.profile(crop).ifPresent(profile -> profiles.put(crop.plural(), profile)));
        Comparator<Map.Entry<String, FeedingProfile>> byPh = Comparator
                .comparing(each -> each.getValue().targetPh().is());
        List<Map.Entry<String, FeedingProfile>> sorted = profiles.entrySet().stream().sorted(byPh).toList();
        if (sorted.size() < 2) { return Optional.empty(); }
        Map.Entry<String, FeedingProfile> acid = sorted.get(0);
        Map.Entry<String, FeedingProfile> sweet = sorted.get(sorted.size() - 1);
        boolean apart = acid.getValue().acidSoil() != sweet.getValue().acidSoil()
                || sorted.stream().mapToDouble(each -> each.getValue().targetPh().low()).max().orElseThrow() > sorted
                        .stream().mapToDouble(each -> each.getValue().targetPh().high()).min().orElseThrow();
        return apart
                ? Optional.of(
                        ("%s want pH %s, %s %s: no pH suits both, so neither lime nor sulphur is given for them. Move"
                                + " the fewer to a bed of their own, or to tubs.")
                                .formatted(Words.capital(acid.getKey()), band(acid), sweet.getKey(), band(sweet)))
                : Optional.empty();
    }

    private static String band(Map.Entry<String, FeedingProfile> of) {
        return "%s to %s".formatted(Words.amount(of.getValue().targetPh().low()),
                Words.amount(of.getValue().targetPh().high()));
    }

    static List<Crop> crops(BedState bed, Crops crops) {
        return bed.plants().stream().map(plant -> plant.plant().crop()).distinct().map(crops::get).toList();
    }

    /** Why crops of acid soils have no hope in a bed, and the way out; empty where they have. */
    static Optional<String> hopeless(FeedingBooks books, BedState bed, Collection<Crop> crops) {
        return SoilRecord.ph(bed).filter(ph -> ph.freeLime() || ph.ph() > books.sulphur().highestStart())
                .flatMap(ph -> crops.stream()
                        .filter(crop -> books.profile(crop).filter(FeedingProfile::acidSoil).isPresent()).findFirst()
                        .map(crop -> "%s cannot thrive there: %s, and no sulphur brings that down. Grow them in tubs or in a raised bed of acid compost, with rain water."
                                .formatted(Words.capital(crop.plural()), ph.freeLime() ? "the soil holds free lime"
                                        : "its pH is " + Words.amount(ph.ph()))));
    }

    /** What to say of the beds of a garden, a line each. */
    public static List<String> of(GardenState state, Crops crops, FeedingBooks books) {
        return state.beds().values().stream()
                .flatMap(bed -> clash(books, crops(bed, crops)).or(() -> hopeless(books, bed, crops(bed, crops)))
                        .map(words -> bed.bed().name() + ": " + words).stream())
                .toList();
    }
}
