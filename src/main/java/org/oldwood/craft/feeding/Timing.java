package org.oldwood.craft.feeding;

import java.time.MonthDay;
import java.util.List;
import org.oldwood.store.Fields;
import org.oldwood.store.IsoDate;

/**
 * When the year's food is given to a group of crops: the dressings in order and the last days.
 *
 * @param id {@code ribes}
 * @param dressings the dressings of the year
 * @param onSand the dressings on light sand; the same as {@code dressings} where nothing else is told
 * @param latestQuick last day for quick nitrogen, as in the north
 * @param latestSlow last day for slow organic nitrogen, as in the north
 * @param sources source keys
 * @param note what to know about it
 */
public record Timing(
        String id,
        List<Dressing> dressings,
        List<Dressing> onSand,
        MonthDay latestQuick,
        MonthDay latestSlow,
        List<String> sources,
        String note) {

    /**
     * One dressing of the year.
     *
     * @param id {@code first} or {@code second}
     * @param words when, in words
     * @param share its share of the year's need, more than 0 to 1
     */
    public record Dressing(String id, String words, double share) {}

    static Timing read(Fields fields) {
        List<Dressing> usual = dressings(fields, "dressings");
        List<Dressing> sand = dressings(fields, "onSand");
        fields.text("seen");
        Timing timing = new Timing(
                fields.text("id"),
                usual,
                sand.isEmpty() ? usual : sand,
                IsoDate.monthDay(fields.text("latestQuick")),
                IsoDate.monthDay(fields.text("latestSlow")),
                fields.texts("source"),
                fields.text("note", ""));
        fields.done();
        return timing;
    }

    private static List<Dressing> dressings(Fields fields, String key) {
        return fields.objects(key).stream()
                .map(inner -> new Dressing(inner.text("id"), inner.text("words"), inner.number("share", 0.01, 1)))
                .toList();
    }

    public List<Dressing> on(boolean sand) {
        return sand ? onSand : dressings;
    }
}
