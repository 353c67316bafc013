package org.oldwood.facts.feeding;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.FeedingTables;
import org.oldwood.craft.feeding.Materials;
import org.oldwood.craft.feeding.liming.Liming;
import org.oldwood.craft.feeding.liming.SulphurTable;
import org.oldwood.craft.mulching.MulchTables;
import org.oldwood.crop.Crop;
import org.oldwood.store.Documents;

/**
 * The tables and materials of feeding, liming and mulching, each read when it is first asked for, and what of them the
 * grower keeps.
 */
public final class FeedingBooks {
    private final Documents documents;
    private final Map<String, Optional<FeedingProfile>> profiles = new HashMap<>();
    private @Nullable FeedingTables tables;
    private @Nullable Materials materials;
    private @Nullable Liming liming;
    private @Nullable SulphurTable sulphur;
    private @Nullable MulchTables mulches;
    private @Nullable List<Together> together;

    public FeedingBooks(Documents documents) {
        this.documents = documents;
    }

    private static <T> T once(@Nullable T known, Supplier<T> read) {
        return known == null ? read.get() : known;
    }

    public FeedingTables tables() {
        FeedingTables read = once(tables, () -> FeedingTables.read(documents));
        tables = read;
        return read;
    }

    public Materials materials() {
        Materials read = once(materials, () -> Materials.read(documents));
        materials = read;
        return read;
    }

    public Liming liming() {
        Liming read = once(liming, () -> Liming.read(documents));
        liming = read;
        return read;
    }

    public SulphurTable sulphur() {
        SulphurTable read = once(sulphur, () -> SulphurTable.read(documents));
        sulphur = read;
        return read;
    }

    public MulchTables mulches() {
        MulchTables read = once(mulches, () -> MulchTables.read(documents));
        mulches = read;
        return read;
    }

    public List<Together> together() {
        List<Together> read = once(together, () -> Together.read(documents));
        together = read;
        return read;
    }

    /** So much of a lime as ground limestone of the table's strength; an unknown one as such. */
    public double asLimestone(String material, double grams) {
        return materials()
                .lime(material)
                .map(lime -> liming().reference().inPlaceOf(grams, lime.value()))
                .orElse(grams);
    }

    /** So much of an acidifier as elemental sulphur; an unknown one as such. */
    public double asSulphur(String material, double grams) {
        return grams
                / materials()
                        .acidifier(material)
                        .map(each -> each.timesSulphur().is())
                        .orElse(1.0);
    }

    /** The crop's asks of soil and food. */
    public Optional<FeedingProfile> profile(Crop crop) {
        return profiles.computeIfAbsent(crop.id(), id -> FeedingProfile.of(crop));
    }

    /** Materials to reckon with, and whether the grower named them. */
    public record Kept<T>(List<T> materials, boolean named) {}

    /** The feeds that the grower keeps; where none is named, usual ones. */
    public Kept<Feed> feeds(List<String> ids, boolean acidSoil) {
        Kept<Feed> own = kept(ids, materials()::feed);
        return own.materials().isEmpty()
                ? new Kept<>(
                        kept(tables().usual().forCrop(acidSoil), materials()::feed)
                                .materials(),
                        false)
                : own;
    }

    public static <T> Kept<T> kept(List<String> ids, Function<String, Optional<T>> find) {
        List<T> found = ids.stream().map(find).flatMap(Optional::stream).toList();
        return new Kept<>(found, !found.isEmpty());
    }
}
