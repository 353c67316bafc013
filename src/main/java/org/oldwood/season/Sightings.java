package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.oldwood.crop.Stage;

/** What was seen, by crop, season and stage. */
public final class Sightings {
    private final Map<String, NavigableMap<Season, Map<Stage, List<LocalDate>>>> byCrop = new HashMap<>();

    private Sightings() {}

    public static Sightings none() { return new Sightings(); }

    public static Sightings of(Collection<Sighting> all) {
        Sightings sightings = new Sightings();
        all.stream().sorted(Comparator.comparing(Sighting::date))
                .forEach(one -> sightings.byCrop.computeIfAbsent(one.crop(), crop -> new TreeMap<>())
                        .computeIfAbsent(one.season(), season -> new EnumMap<>(Stage.class))
                        .computeIfAbsent(one.stage(), stage -> new ArrayList<>()).add(one.date()));
        return sightings;
    }

    /** The days on which a crop was seen at each stage in one season, the earliest first. */
    Map<Stage, List<LocalDate>> in(String crop, Season season) {
        return of(crop).getOrDefault(season, Map.of());
    }

    /** The seasons in which anything was seen of a crop. */
    Collection<Season> seasons(String crop) {
        return of(crop).keySet();
    }

    /** The seasons before this one in which anything was seen of a crop. */
    Collection<Season> before(String crop, Season season) {
        return of(crop).headMap(season, false).keySet();
    }

    private NavigableMap<Season, Map<Stage, List<LocalDate>>> of(String crop) {
        return byCrop.getOrDefault(crop, Collections.emptyNavigableMap());
    }
}
