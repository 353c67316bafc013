package org.oldwood.garden;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.oldwood.crop.Stage;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;

/**
 * When each crop was seen to lose its leaves. A stem turns a year older then; where it was not seen, on the season's
 * nominal first day.
 */
public final class LeafFalls {
    /** A sighting so many days before the nominal day, or fewer, is that autumn's. */
    private static final int EARLIEST_DAYS = 75;

    private final Hemisphere hemisphere;
    private final Map<String, List<LocalDate>> seen = new HashMap<>();

    public LeafFalls(Hemisphere hemisphere) { this.hemisphere = hemisphere; }

    /** Takes note of an entry, if it says that a crop's leaves are off. */
    void note(Entry entry) {
        if (entry.kind() != EntryKind.SEEN || entry.text("crop").isEmpty()) { return; }
        Stage stage = entry.text("stage").flatMap(Stage::find).orElse(Stage.RIPE);
        if (stage == Stage.LEAF_FALL_DONE || stage == Stage.DORMANT) {
            seen.computeIfAbsent(entry.text("crop").get(), crop -> new ArrayList<>()).add(entry.date());
        }
    }

    /** The year of the season in which a day lies for a crop's stems. */
    public int seasonYear(String crop, LocalDate day) {
        Season nominal = Season.containing(day, hemisphere);
        List<LocalDate> falls = seen.getOrDefault(crop, List.of());
        if (falls.isEmpty()) { return nominal.year(); }
        LocalDate next = nominal.plus(1).start();
        boolean isOver = falls.stream().anyMatch(
                fall -> !fall.isAfter(day) && fall.isBefore(next) && !fall.isBefore(next.minusDays(EARLIEST_DAYS)));
        return nominal.year() + (isOver ? 1 : 0);
    }
}
