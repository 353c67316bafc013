package org.oldwood.facts.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Stage;
import org.oldwood.crop.Yield;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.store.Documents;
import org.oldwood.words.Words;

/**
 * What to ask back at once where a figure can hardly be: more fruit than any such bushes bear, or fruit out of its time;
 * more water than the ground holds; a plant older than any; stems out of a bush that was never counted. The entry is
 * recorded all the same.
 */
public record Unlikely(GardenState state, Crops crops, Supplier<Stages> stages, Figures figures) {

    /**
     * @param state the garden with what was noted before
     * @param stages asked for where fruit was picked
     */
    public Unlikely(GardenState state, Crops crops, Supplier<Stages> stages, Documents documents) {
        this(state, crops, stages, figures(documents));
    }

    /**
     * From where on something is asked about.
     *
     * @param pickedTimesMost times the most that print tells of a plant
     * @param pickedEarliest days before it is ripe
     * @param wateredMost l/m² at once
     * @param oldestPlant years
     */
    public record Figures(Figure pickedTimesMost, Figure pickedEarliest, Figure wateredMost, Figure oldestPlant) {}

    public static Figures figures(Documents documents) {
        return RecordReader.read(documents.fields("unlikely.json").part("figures"), Figures.class);
    }

    /** The question about an entry; none where it may well be. */
    public Optional<String> about(Entry entry, LocalDate today) {
        return switch (entry.kind()) {
            case PICKED -> picked(entry).or(() -> outOfTime(entry));
            case WATERED -> watered(entry);
            case PLANTED -> old(entry, today);
            case PRUNED -> uncounted(entry);
            default -> Optional.empty();
        };
    }

    private Optional<String> picked(Entry entry) {
        List<PlantState> plants = plants(entry);
        double most = 0;
        for (PlantState plant : plants) {
            Optional<Double> bears = most(plant);
            if (bears.isEmpty()) { return Optional.empty(); }
            most += bears.get();
        }
        double kg = entry.number("kg").orElse(0);
        Figure times = figures.pickedTimesMost();
        return most > 0 && kg > times.is() * most ? Optional.of(
                "%s kg from %s: print tells of %s kg a season at most. Is it the right weight? If not: oldwood correct %s kg=…"
                        .formatted(Words.amount(kg), Words.count(plants.size(), "plant", "plants"), Words.amount(most),
                                entry.id()))
                : Optional.empty();
    }

    /** Fruit of one crop long before it is ripe, or on bare wood. */
    private Optional<String> outOfTime(Entry entry) {
        List<String> grown = plants(entry).stream().map(plant -> plant.plant().crop()).distinct().toList();
        if (grown.size() != 1) { return Optional.empty(); }
        Crop crop = crops.get(grown.get(0));
        Stages dates = stages.get();
        Season last = Season.containing(entry.date(), state.garden().hemisphere());
        LocalDate ripe = dates.day(crop, last, Stage.RIPE);
        if (entry.date().isBefore(ripe.minusDays((long) figures.pickedEarliest().is()))) { last = last.plus(-1); }
        LocalDate bare = dates.day(crop, last, Stage.LEAF_FALL_DONE);
        return entry.date().isAfter(bare)
                ? Optional.of(
                        "Picked on %s? %s are ripe about %s and were bare about %s. If not: oldwood correct %s date=…"
                                .formatted(entry.date(), Words.capital(crop.plural()), ripe, bare, entry.id()))
                : Optional.empty();
    }

    private List<PlantState> plants(Entry entry) {
        return entry.text("plant").flatMap(state::plant).map(List::of)
                .orElseGet(() -> entry.text("bed").flatMap(state::bed).stream().flatMap(bed -> bed.plants().stream())
                        .filter(plant -> entry.text("crop").map(plant.plant().crop()::equals).orElse(true)).toList());
    }

    /** The most that a plant bears when mature, kg; empty where no figure is known. */
    private Optional<Double> most(PlantState plant) {
        Crop crop = crops.get(plant.plant().crop());
        return Yield.read(crop).map(yield -> yield.mature().get(plant.plant().form())).map(mature -> {
            double parts = mature.unit().equals("kg/m")
                    ? plant.plant().lengthM().orElse((double) plant.plant().bushes())
                    : plant.plant().bushes();
            return mature.high() * parts;
        });
    }

    private Optional<String> watered(Entry entry) {
        double litres = entry.number("litres").orElse(0);
        Optional<Double> areaM2 = entry.text("bed")
                .or(() -> entry.text("plant").flatMap(state::plant).map(plant -> plant.plant().bed()))
                .flatMap(state::bed).map(bed -> bed.bed().areaM2());
        Figure most = figures.wateredMost();
        return areaM2.filter(area -> litres / area > most.is()).map(
                area -> "%s l on %s m² is %s l a square metre at once. Is it the right figure? If not: oldwood correct %s litres=…"
                        .formatted(Words.amount(litres), Words.amount(area), Words.amount(litres / area), entry.id()));
    }

    /** What is left of a bush that is cut by the age of its stems. */
    private Optional<String> uncounted(Entry entry) {
        return state.plant(entry.needed("plant"))
                .filter(plant -> plant.plant().form().equals("stool")
                        && plant.entries().stream().noneMatch(each -> each.kind() == EntryKind.COUNTED))
                .filter(plant -> entry.stems().total() > 0 && entry.text("cut").filter("planting"::equals).isEmpty())
                .map(plant -> "%1$s was never counted, so what is left is not known. Count it: oldwood note counted --plant %1$s"
                        .formatted(plant.plant().id()));
    }

    private Optional<String> old(Entry entry, LocalDate today) {
        long years = (long) figures.oldestPlant().is();
        return entry.date().isBefore(today.minusYears(years)) ? Optional
                .of("%s would be more than %s years old. Is %s the right day? If not: oldwood correct %s date=…"
                        .formatted(entry.needed("plant"), years, entry.date(), entry.id()))
                : Optional.empty();
    }
}
