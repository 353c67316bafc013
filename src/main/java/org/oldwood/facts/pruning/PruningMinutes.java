package org.oldwood.facts.pruning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.crop.Crop;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;

/**
 * How long a cut takes: what the grower noted for the plant; else what was noted for plants of the same crop and form,
 * by the bush or by the metre; else the figure of the crop. Reads the journal once, linear in entries.
 */
public final class PruningMinutes {
    private static final String WINTER = "winter";
    private static final String RENOVATION = "renovation";

    /** Minutes and how many times, bushes or metres they stand for. */
    private record Noted(double minutes, double parts) {
        static final Noted NOTHING = new Noted(0, 0);

        Noted and(double more, double of) { return new Noted(minutes + more, parts + of); }

        double each() { return minutes / parts; }
    }

    private final Map<Alike, Noted> noted = new HashMap<>();

    /** Plants whose minutes can stand for each other's. */
    private record Alike(String crop, String form, String cut) {
        Alike(PlantState plant, String cut) { this(plant.plant().crop(), plant.plant().form(), cut); }
    }

    public PruningMinutes(GardenState state) { state.plants().values().forEach(plant -> add(plant)); }

    private void add(PlantState plant) {
        for (Entry entry : plant.entries()) {
            OptionalInt minutes = minutes(entry);
            if (minutes.isPresent()) {
                Alike alike = new Alike(plant, cut(entry));
                Noted before = noted.getOrDefault(alike, Noted.NOTHING);
                noted.put(alike, before.and(minutes.getAsInt(), size(plant)));
            }
        }
    }

    private static OptionalInt minutes(Entry entry) {
        return entry.kind() == EntryKind.PRUNED ? entry.count("minutes") : OptionalInt.empty();
    }

    private static String cut(Entry entry) { return entry.text("cut").orElse(WINTER); }

    /** What was noted for a plant itself. */
    private static Noted own(PlantState plant, String cut) {
        Noted own = Noted.NOTHING;
        for (Entry entry : plant.entries()) {
            OptionalInt minutes = minutes(entry);
            if (minutes.isPresent() && cut(entry).equals(cut)) { own = own.and(minutes.getAsInt(), 1); }
        }
        return own;
    }

    /** Metres of a row, or bushes. */
    private static double size(PlantState plant) {
        return plant.plant().lengthM().orElse(plant.plant().bushes());
    }

    /** Minutes for all of the plants together, where figures or notes say. */
    public Optional<Double> of(List<PlantState> plants, Crop crop, FormPruning form, String time) {
        double sum = 0;
        for (PlantState plant : plants) {
            Optional<Double> one = of(plant, crop, form, time);
            if (one.isEmpty()) { return Optional.empty(); }
            sum += one.get();
        }
        return plants.isEmpty() ? Optional.empty() : Optional.of(sum);
    }

    private Optional<Double> of(PlantState plant, Crop crop, FormPruning form, String time) {
        Noted mine = own(plant, time);
        if (mine.parts > 0) { return Optional.of(mine.each()); }
        Noted others = noted.get(new Alike(plant, time));
        if (others != null) { return Optional.of(others.each() * size(plant)); }
        if (time.equals(RENOVATION)) { return of(plant, crop, form, WINTER); }
        return form.labour().flatMap(labour -> labour.of(time))
                .map(figure -> FormPruning.Labour.minutes(figure, PruningCase.metres(plant, crop)))
                .map(each -> each * (plant.plant().lengthM().isPresent() ? 1 : Math.max(1, plant.plant().bushes())));
    }

}
