package org.oldwood.facts.feeding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.FeedingTables;
import org.oldwood.craft.feeding.Materials;
import org.oldwood.craft.feeding.liming.Liming;
import org.oldwood.craft.feeding.liming.SulphurTable;
import org.oldwood.craft.mulching.MulchTables;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Situation;
import org.oldwood.garden.BedState;
import org.oldwood.store.Documents;

/**
 * The tables and materials of feeding, liming and mulching, each read when it is first asked for, and what of them the
 * grower keeps.
 */
public final class FeedingBooks {
    private final Map<String, Optional<FeedingProfile>> profiles = new HashMap<>();
    private final Documents documents;
    private final Supplier<FeedingTables> tables = once(FeedingTables::read);
    private final Supplier<Materials> materials = once(Materials::read);
    private final Supplier<Liming> liming = once(Liming::read);
    private final Supplier<SulphurTable> sulphur = once(SulphurTable::read);
    private final Supplier<MulchTables> mulches = once(MulchTables::read);
    private final Supplier<List<Together>> together = once(Together::read);

    public FeedingBooks(Documents documents) { this.documents = documents; }

    /** The books of all that is planned together. */
    static FeedingBooks of(Situation s) {
        return s.world().once(FeedingBooks.class, of -> new FeedingBooks(of.documents()));
    }

    /** Reads when first asked for, and once. */
    private <T> Supplier<T> once(Function<Documents, T> read) {
        Map<String, T> known = new HashMap<>();
        return () -> known.computeIfAbsent("", any -> read.apply(documents));
    }

    public FeedingTables tables() { return tables.get(); }

    public Materials materials() { return materials.get(); }

    public Liming liming() { return liming.get(); }

    public SulphurTable sulphur() { return sulphur.get(); }

    public MulchTables mulches() { return mulches.get(); }

    public List<Together> together() { return together.get(); }

    /** So much of a lime as ground limestone of the table's strength; an unknown one as such. */
    public double asLimestone(String material, double grams) {
        return materials().lime(material).map(lime -> liming().reference().inPlaceOf(grams, lime.value()))
                .orElse(grams);
    }

    /** So much of an acidifier as elemental sulphur; an unknown one as such. */
    public double asSulphur(String material, double grams) {
        return grams / materials().acidifier(material).map(each -> each.timesSulphur().is()).orElse(1.0);
    }

    /** The crop's asks of soil and food. */
    public Optional<FeedingProfile> profile(Crop crop) {
        return profiles.computeIfAbsent(crop.id(), id -> FeedingProfile.of(crop));
    }

    /** What the crops of a bed ask for, each crop once. */
    public List<FeedingProfile> profiles(BedState bed, Crops crops) {
        return SharedBed.crops(bed, crops).stream().map(this::profile).flatMap(Optional::stream).toList();
    }

    /** Feeds to reckon with, and whether the grower named them. */
    public record Kept(List<Feed> feeds, boolean named) {}

    /** The feeds that the grower keeps; where none is named, usual ones. */
    public Kept feeds(List<String> ids, boolean acidSoil) {
        List<Feed> own = kept(ids, id -> materials().feed(id).filter(feed -> !feed.is("mulch-only")));
        return own.isEmpty() ? new Kept(kept(tables().usual().forCrop(acidSoil), materials()::feed), false)
                : new Kept(own, true);
    }

    /** Those of the ids that are known. */
    public static <T> List<T> kept(List<String> ids, Function<String, Optional<T>> find) {
        return ids.stream().map(find).flatMap(Optional::stream).toList();
    }
}
