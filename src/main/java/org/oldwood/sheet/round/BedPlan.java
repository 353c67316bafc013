package org.oldwood.sheet.round;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.settle.Share;

/**
 * A bed from above, with what is due at each plant.
 *
 * @param placed whether the garden says where its plants stand; else they stand in a row as planted
 */
public record BedPlan(String name, boolean placed, List<List<Spot>> rows) {
    private static final int MOST_SIGNS = 3;

    /**
     * A plant.
     *
     * @param row whether it is a row of canes
     * @param crafts what is due, the most urgent first
     */
    public record Spot(String id, boolean row, List<String> crafts) {}

    /** The beds in which something is due at a plant. */
    static List<BedPlan> of(GardenState state, List<Round> rounds) {
        Map<String, Set<String>> due = new LinkedHashMap<>();
        List<Task> tasks = rounds.stream().flatMap(round -> round.tasks().stream())
                .filter(task -> !task.subject().kind().equals("garden")).toList();
        for (Task task : tasks) {
            Set<String> open = task.shares().stream().filter(Share::open).map(Share::id).collect(Collectors.toSet());
            List<String> plants = task.subject().plants().stream().map(plant -> plant.plant().id()).toList();
            boolean each = plants.stream().anyMatch(open::contains);
            plants.stream().filter(id -> !each || open.contains(id))
                    .forEach(id -> due.computeIfAbsent(id, any -> new LinkedHashSet<>()).add(task.rule().craft()));
        }
        return state.beds().values().stream()
                .filter(bed -> bed.plants().stream().anyMatch(plant -> due.containsKey(plant.plant().id())))
                .map(bed -> new BedPlan(bed.bed().name(), !bed.bed().rows().isEmpty(),
                        bed.rows().stream().map(row -> row.stream().map(plant -> spot(plant, due)).toList()).toList()))
                .toList();
    }

    private static Spot spot(PlantState plant, Map<String, Set<String>> due) {
        String id = plant.plant().id();
        return new Spot(id, plant.plant().lengthM().isPresent(),
                due.getOrDefault(id, Set.of()).stream().limit(MOST_SIGNS).toList());
    }

    /** What the signs on some beds stand for: craft and words. */
    public static Map<String, String> legend(List<BedPlan> beds) {
        Map<String, String> words = new LinkedHashMap<>();
        beds.stream().flatMap(bed -> bed.rows.stream()).flatMap(List::stream).flatMap(spot -> spot.crafts.stream())
                .forEach(craft -> words.put(craft, craft.equals("season") ? "looking" : craft));
        return words;
    }
}
