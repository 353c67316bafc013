package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.util.List;
import org.oldwood.season.Season;

/**
 * When cuttings of a crop are struck by a method, for one growing season.
 *
 * @param first the season in which they first grow leaves of their own
 * @param closes the last day, included
 */
public record StrikeWindow(Season first, LikelyDay opens, LikelyDay closes, List<String> sources) {

    public static StrikeWindow of(Course course, Setting setting, Season first) {
        Timeline.Growth growth = new Timeline.Growth(first, setting.stages());
        Method.Window window = course.method().window();
        LocalDate struck = first.start();
        return new StrikeWindow(first, window.from().day(struck, growth, 0), window.to().day(struck, growth, 0),
                window.sources());
    }

    /**
     * The window that opens in a season. Cuttings set before the leaves fall are set in one season and grow in the
     * next.
     */
    public static StrikeWindow opensIn(Season season, Course course, Setting setting) {
        StrikeWindow same = of(course, setting, season);
        StrikeWindow next = of(course, setting, season.plus(1));
        return season.contains(next.opens.date()) ? next : same;
    }
}
