package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.oldwood.crop.Stage;

/**
 * What was seen, by crop, season and stage. Where several plants of a crop were seen at a stage, the middle day counts:
 * a stage is reached when half the plants show it.
 */
public final class Sightings {
    private final Map<String, NavigableMap<Season, Map<Stage, LocalDate>>> byCrop = new HashMap<>();

    private Sightings() {}

    public static Sightings none() {
        return new Sightings();
    }

    public static Sightings of(Collection<Sighting> all) {
        Sightings sightings = new Sightings();
        Map<String, Map<Season, Map<Stage, List<LocalDate>>>> groups = new HashMap<>();
        for (Sighting one : all) {
            groups.computeIfAbsent(one.crop(), crop -> new HashMap<>())
                    .computeIfAbsent(one.season(), season -> new EnumMap<>(Stage.class))
                    .computeIfAbsent(one.stage(), stage -> new ArrayList<>())
                    .add(one.date());
        }
        groups.forEach((crop, seasons) -> sightings.byCrop.put(crop, middles(seasons)));
        return sightings;
    }

    private static NavigableMap<Season, Map<Stage, LocalDate>> middles(
            Map<Season, Map<Stage, List<LocalDate>>> seasons) {
        NavigableMap<Season, Map<Stage, LocalDate>> middles = new TreeMap<>();
        seasons.forEach((season, stages) -> {
            Map<Stage, LocalDate> middle = new EnumMap<>(Stage.class);
            stages.forEach((stage, dates) -> middle.put(stage, middle(dates)));
            middles.put(season, middle);
        });
        return middles;
    }

    private static LocalDate middle(List<LocalDate> dates) {
        dates.sort(null);
        return dates.get((dates.size() - 1) / 2);
    }

    /** What was seen of a crop in one season, by stage. */
    Map<Stage, LocalDate> in(String crop, Season season) {
        NavigableMap<Season, Map<Stage, LocalDate>> seasons = byCrop.get(crop);
        return seasons == null ? Map.of() : seasons.getOrDefault(season, Map.of());
    }

    /** The seasons in which anything was seen of a crop. */
    Collection<Season> seasons(String crop) {
        NavigableMap<Season, Map<Stage, LocalDate>> seasons = byCrop.get(crop);
        return seasons == null ? List.of() : seasons.keySet();
    }

    /** The seasons before this one in which anything was seen of a crop. */
    Collection<Season> before(String crop, Season season) {
        NavigableMap<Season, Map<Stage, LocalDate>> seasons = byCrop.get(crop);
        return seasons == null ? List.of() : seasons.headMap(season, false).keySet();
    }
}
