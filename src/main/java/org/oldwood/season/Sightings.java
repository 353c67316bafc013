package org.oldwood.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.oldwood.crop.Stage;
import org.oldwood.garden.Season;

/**
 * What was seen, by crop, season and stage. Where several plants of a crop were seen at a stage,
 * the middle day counts: a stage is reached when half the plants show it.
 */
public final class Sightings {
    private final Map<String, NavigableMap<Season, Map<Stage, LocalDate>>> byCrop = new HashMap<>();

    private Sightings() {}

    public static Sightings none() {
        return new Sightings();
    }

    public static Sightings of(Collection<Sighting> all) {
        Sightings sightings = new Sightings();
        Map<List<Object>, List<Sighting>> groups =
                all.stream()
                        .collect(
                                Collectors.groupingBy(
                                        one -> List.of(one.crop(), one.season(), one.stage())));
        for (List<Sighting> group : groups.values()) {
            List<LocalDate> dates = group.stream().map(Sighting::date).sorted().toList();
            Sighting one = group.get(0);
            sightings
                    .byCrop
                    .computeIfAbsent(one.crop(), crop -> new TreeMap<>())
                    .computeIfAbsent(one.season(), season -> new EnumMap<>(Stage.class))
                    .put(one.stage(), dates.get((dates.size() - 1) / 2));
        }
        return sightings;
    }

    /** What was seen of a crop in one season, by stage. */
    Map<Stage, LocalDate> in(String crop, Season season) {
        NavigableMap<Season, Map<Stage, LocalDate>> seasons = byCrop.get(crop);
        return seasons == null ? Map.of() : seasons.getOrDefault(season, Map.of());
    }

    /** The seasons before this one in which anything was seen of a crop. */
    Collection<Season> before(String crop, Season season) {
        NavigableMap<Season, Map<Stage, LocalDate>> seasons = byCrop.get(crop);
        return seasons == null ? List.of() : seasons.headMap(season, false).keySet();
    }
}
