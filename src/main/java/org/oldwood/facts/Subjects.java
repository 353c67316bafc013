package org.oldwood.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;

/** All subjects of a garden on a day, by kind, in the order of the record. Linear in plants. */
public final class Subjects {
    private final Map<String, List<Subject>> byKind;
    private final List<Subject> bedByBed = new ArrayList<>();

    public Subjects(GardenState state, Crops crops) {
        Map<String, Integer> bedsOf = bedsByCrop(state);
        for (BedState bed : state.beds().values()) {
            bedByBed.add(new Subject.WholeBed(bed, mainCrop(bed.plants(), crops)));
            bedByBed.addAll(stands(bed, crops, bedsOf));
            bed.plants()
                    .forEach(plant -> bedByBed.add(new Subject.OnePlant(plant, crops.get(plant.plant().crop()), bed)));
        }
        state.lots().values().forEach(
                lot -> bedByBed.add(new Subject.Lot(lot, crops.get(lot.crop()), lot.bed().flatMap(state::bed))));
        List<PlantState> standing = List.copyOf(state.standing());
        bedByBed.add(
                new Subject.WholeGarden(state.garden().name(), mainCrop(standing, crops), standing, state.entries()));
        byKind = bedByBed.stream().collect(Collectors.groupingBy(Subject::kind));
    }

    public List<Subject> ofKind(String kind) { return byKind.getOrDefault(kind, List.of()); }

    /** All of them, those of one bed together: the bed, its stands, its plants. */
    public List<Subject> bedByBed() {
        return bedByBed;
    }

    /** The subject of an id among those of a kind. */
    public Optional<Subject> find(String id, String kind) {
        return ofKind(kind).stream().filter(subject -> subject.id().equals(id)).findFirst();
    }

    /** In how many beds each crop stands. */
    private static Map<String, Integer> bedsByCrop(GardenState state) {
        Map<String, Integer> beds = new HashMap<>();
        for (BedState bed : state.beds().values()) {
            bed.plants().stream().map(plant -> plant.plant().crop()).distinct()
                    .forEach(crop -> beds.merge(crop, 1, Integer::sum));
        }
        return beds;
    }

    private static List<Subject> stands(BedState bed, Crops crops, Map<String, Integer> bedsOf) {
        Map<String, Integer> forms = new HashMap<>();
        Map<String, List<PlantState>> groups = bed.plants().stream().collect(Collectors.groupingBy(
                plant -> plant.plant().crop() + "." + plant.plant().form(), LinkedHashMap::new, Collectors.toList()));
        List<Subject> stands = new ArrayList<>();
        groups.values().forEach(group -> forms.merge(group.get(0).plant().crop(), 1, Integer::sum));
        for (List<PlantState> group : groups.values()) {
            PlantState first = group.get(0);
            String crop = first.plant().crop();
            stands.add(new Subject.Stand(bed, crops.get(crop), first.plant().form(),
                    new Subject.Beside(forms.getOrDefault(crop, 0) > 1, bedsOf.getOrDefault(crop, 0) > 1), group,
                    together(bed, group)));
        }
        return stands;
    }

    /** What was noted of the bed and of each of the plants, by date. */
    private static List<Entry> together(BedState bed, List<PlantState> plants) {
        List<Entry> all = new ArrayList<>(bed.entries());
        plants.forEach(plant -> all.addAll(plant.entries()));
        all.sort((a, b) -> a.date().compareTo(b.date()));
        return all;
    }

    /** The crop with the most bushes; the first by its id where several have as many. */
    private static Optional<Crop> mainCrop(List<PlantState> plants, Crops crops) {
        Map<String, Integer> counts = new HashMap<>();
        plants.forEach(plant -> counts.merge(plant.plant().crop(), plant.plant().bushes(), Integer::sum));
        return counts.entrySet().stream()
                .min(Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .map(main -> crops.get(main.getKey()));
    }
}
