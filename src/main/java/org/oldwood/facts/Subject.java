package org.oldwood.facts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.oldwood.crop.Crop;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.LotState;
import org.oldwood.garden.PlantState;

/** What a task is done to. */
public sealed interface Subject {
    /** Unique in the garden, and stable. */
    String id();

    /** For people: {@code blackcurrant bc-1}. */
    String words();

    /** Where several of a kind are told together: a bush by its id, as on its label. */
    default String label() {
        return this instanceof OnePlant ? id() : words();
    }

    /** {@code plant}, {@code stand}, {@code bed}, {@code lot} or {@code garden}. */
    default String kind() {
        return this instanceof OnePlant ? "plant"
                : this instanceof Stand ? "stand"
                        : this instanceof WholeBed ? "bed" : this instanceof Lot ? "lot" : "garden";
    }

    /** The crop whose stages its windows follow. */
    Optional<Crop> crop();

    /** The bed it lies in. */
    default Optional<BedState> bed() { return Optional.empty(); }

    /** The plants it is made of. */
    default List<PlantState> plants() { return List.of(); }

    /** How many bushes these are; a row counts as those it stands for. */
    default int bushes() {
        return plants().stream().mapToInt(plant -> plant.plant().bushes()).sum();
    }

    /** The length of its rows, m; 0 where there are none. */
    default double metres() {
        return plants().stream().mapToDouble(plant -> plant.plant().lengthM().orElse(0)).sum();
    }

    /** What was noted of it, oldest first. */
    List<Entry> entries();

    record OnePlant(PlantState state, Crop of, BedState in) implements Subject {
        @Override
        public String id() { return state.plant().id(); }

        @Override
        public String words() { return id().startsWith(of.id()) ? id() : of.name() + " " + id(); }

        @Override
        public Optional<Crop> crop() { return Optional.of(of); }

        @Override
        public Optional<BedState> bed() { return Optional.of(in); }

        @Override
        public List<PlantState> plants() { return List.of(state); }

        @Override
        public List<Entry> entries() { return state.entries(); }
    }

    /**
     * Which other stands of the same crop the garden has, so that a title can tell them apart.
     *
     * @param form another form of the crop stands in the same bed
     * @param bed the crop stands in another bed as well
     */
    record Beside(boolean form, boolean bed) {}

    record Stand(BedState in, Crop of, String form, Beside beside, List<PlantState> plants,
            List<Entry> entries) implements Subject {
        /**
         * The crop's plural, with its form and bed where the crop alone would not tell which stand is meant: {@code red
         * currants (cordon)}, {@code blueberries in gate bed}.
         *
         * @param formKnown the words around it already tell the form
         */
        public String crops(boolean formKnown) {
            String which = beside.form() && !formKnown ? " (" + form + ")" : "";
            return of.plural() + which + (beside.bed() ? " in " + in.bed().name() : "");
        }

        /** The stand with some of its plants alone, and what was noted of them or of the bed. */
        public Stand only(Predicate<PlantState> wanted) {
            List<PlantState> some = plants.stream().filter(wanted).toList();
            Set<String> ids = some.stream().map(plant -> plant.plant().id()).collect(Collectors.toSet());
            return new Stand(in, of, form, beside, some,
                    entries.stream().filter(entry -> entry.text("plant").map(ids::contains).orElse(true)).toList());
        }

        @Override
        public String id() { return in.bed().id() + "." + of.id() + "." + form; }

        @Override
        public String words() {
            String what = of.inRows() || plants.size() != 1 ? of.plural() : of.name();
            return what + " in " + in.bed().name();
        }

        @Override
        public Optional<Crop> crop() { return Optional.of(of); }

        @Override
        public Optional<BedState> bed() { return Optional.of(in); }
    }

    /** A whole bed; its windows follow the crop that has most plants in it. */
    record WholeBed(BedState in, Optional<Crop> crop) implements Subject {
        @Override
        public String id() { return in.bed().id(); }

        @Override
        public String words() { return in.bed().name(); }

        @Override
        public Optional<BedState> bed() { return Optional.of(in); }

        @Override
        public List<PlantState> plants() { return in.plants(); }

        @Override
        public List<Entry> entries() { return in.entries(); }
    }

    /** A lot of cuttings. */
    record Lot(LotState state, Crop of, Optional<BedState> bed) implements Subject {
        @Override
        public String id() { return state.id(); }

        @Override
        public String words() { return of.name() + " " + made() + " " + id(); }

        /** What the plants of the lot are until they are planted out. */
        private String made() {
            return switch (state.method()) {
                case "tip-layer" -> "tip layers";
                case "layer" -> "layers";
                case "sucker" -> "suckers";
                case "root" -> "root cuttings";
                case "division" -> "divisions";
                default -> "cuttings";
            };
        }

        @Override
        public Optional<Crop> crop() { return Optional.of(of); }

        @Override
        public List<Entry> entries() { return state.entries(); }
    }

    /** The garden as a whole; its windows follow its most numerous crop. */
    record WholeGarden(String name, Optional<Crop> crop, List<PlantState> plants,
            List<Entry> entries) implements Subject {
        @Override
        public String id() { return "garden"; }

        @Override
        public String words() { return name; }
    }
}
