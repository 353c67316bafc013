package org.oldwood.facts.record;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/**
 * The {@code choices} of a garden: which published way is followed, where several stand side by side. {@code feeding}
 * names one for the feeding of the whole garden; {@code renewal}, {@code renewal.<crop>} and {@code renewal.<plant>}
 * one of pruning, the narrowest first. A name that is not known leaves the default, and is a problem of the record.
 */
public record Choices(GardenState state, Crops crops, Problems problems) {
    public static final String FEEDING = "feeding";
    static final String RENEWAL = "renewal";
    private static final String OF = RENEWAL + ".";

    /** The keys that may choose a way of pruning for a plant, the narrowest first. */
    public static List<String> renewalKeys(PlantState plant) {
        return List.of(OF + plant.plant().id(), OF + plant.plant().crop(), RENEWAL);
    }

    /** Adds a problem for each choice in {@code garden.json} that names something unknown. */
    public void check(Documents documents) {
        if (documents.read(GardenFolder.GARDEN_FILE).orElse(null) instanceof Json.Obj object
                && object.members().get("choices") instanceof Json.Obj choices) {
            choices.members().forEach(this::check);
        }
    }

    private void check(String key, Json value) {
        if (!(value instanceof Json.Text text)) { return; }
        if (key.equals(FEEDING)) {
            known(text, feedingWays());
        } else if (key.equals(RENEWAL)) {
            known(text, pruningWays());
        } else if (key.startsWith(OF)) {
            ways(key.substring(OF.length())).ifPresentOrElse(ways -> known(text, ways),
                    () -> unknownSubject(key, value));
        } else {
            problems.tell("unknown-choice key", value.place(),
                    Nearest.to(key, List.of(FEEDING, RENEWAL)).map("Did you mean \"%s\"?"::formatted).orElse(""));
        }
    }

    private void known(Json.Text way, Collection<String> ways) {
        if (!ways.contains(way.value())) {
            problems.tell("unknown-way", way.place(), way.value(), Nearest.hint(way.value(), ways));
        }
    }

    private void unknownSubject(String key, Json value) {
        Set<String> known = new TreeSet<>(crops.ids());
        known.addAll(state.plants().keySet());
        String seen = key.substring(OF.length());
        problems.tell("unknown-choice subject", value.place(), seen,
                Nearest.to(seen, known).map(near -> "Did you mean \"%s%s\"?".formatted(OF, near))
                        .orElse("Name a plant of this garden, or a crop."));
    }

    /** Ways of pruning of a plant in its form, or of a crop in all its forms. */
    private Optional<Set<String>> ways(String subject) {
        PlantState plant = state.plants().get(subject);
        if (plant != null) {
            return crops.find(plant.plant().crop()).flatMap(Pruning::read)
                    .flatMap(pruning -> pruning.form(plant.plant().form())).map(form -> Set.copyOf(form.schoolIds()));
        }
        return crops.find(subject).map(Choices::ways);
    }

    private static Set<String> ways(Crop crop) {
        Set<String> all = new LinkedHashSet<>();
        Pruning.read(crop).ifPresent(pruning -> pruning.forms().values().forEach(form -> all.addAll(form.schoolIds())));
        return all;
    }

    private Set<String> pruningWays() {
        Set<String> all = new TreeSet<>();
        crops.ids().forEach(id -> all.addAll(ways(crops.get(id))));
        return all;
    }

    private Set<String> feedingWays() {
        Set<String> all = new TreeSet<>();
        crops.ids().forEach(id -> FeedingProfile.of(crops.get(id))
                .ifPresent(profile -> profile.schools().forEach(way -> all.add(way.id()))));
        return all;
    }
}
