package org.oldwood.craft.feeding;

import java.time.MonthDay;
import java.util.List;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;

/**
 * When the year's food is given to a group of crops: the dressings in order and the last days.
 *
 * @param id {@code ribes}
 * @param dressings the dressings of the year
 * @param onSand the dressings on light sand; none where nothing else is told
 * @param latestQuick last day for quick nitrogen, as in the north
 * @param latestSlow last day for slow organic nitrogen, as in the north
 * @param note what to know about it
 */
@Notes("seen")
public record Timing(String id, List<Dressing> dressings, List<Dressing> onSand, MonthDay latestQuick,
        MonthDay latestSlow, List<String> sources, String note) {

    /**
     * One dressing of the year.
     *
     * @param id {@code first} or {@code second}
     * @param share its share of the year's need, more than 0 to 1
     */
    public record Dressing(String id, String words, @Key(least = 0.01, most = 1) double share) {}

    /** All at the time of the first dressing, where none later is in time for the wood to ripen. */
    public Timing inOne() {
        return new Timing(id, List.of(new Dressing("first", dressings.get(0).words, 1)), List.of(), latestQuick,
                latestSlow, sources, note);
    }

    public List<Dressing> on(boolean sand) { return sand && !onSand.isEmpty() ? onSand : dressings; }
}
