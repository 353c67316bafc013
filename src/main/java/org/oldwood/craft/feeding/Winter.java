package org.oldwood.craft.feeding;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;

/**
 * Which season's crop is fed by what is given out of season, and what winter rain leaves of quick nitrogen.
 *
 * @param feedingFirst first day of the time in which crops are fed, as in the north
 * @param feedingLast last day of it
 * @param lossFirst given on this day or before, quick nitrogen goes through the whole winter
 * @param lossLast from this day on rain takes none of it
 * @param left share that is left after a whole winter, 0 to 1, by nitrogen class of soil
 * @param leftElsewhere the share where the soil is not known
 * @param note whose figures these are
 */
@Notes("seen")
public record Winter(MonthDay feedingFirst, MonthDay feedingLast, MonthDay lossFirst, MonthDay lossLast,
        @Key(least = 0, most = 1) Map<String, Double> left, @Key(least = 0, most = 1) double leftElsewhere,
        String note) {

    /** The season whose time of feeding the day lies nearest to; of two as near the earlier one. */
    public Season feeds(LocalDate day, Hemisphere hemisphere) {
        Season season = Season.containing(day, hemisphere);
        LocalDate last = season.day(feedingLast);
        LocalDate next = season.plus(1).day(feedingFirst);
        LocalDate before = season.plus(-1).day(feedingLast);
        LocalDate first = season.day(feedingFirst);
        if (day.isAfter(last)) { return days(day, next) < days(last, day) ? season.plus(1) : season; }
        return day.isBefore(first) && days(before, day) <= days(day, first) ? season.plus(-1) : season;
    }

    /** Whether feeding of a season has begun by a day. */
    public boolean isOver(LocalDate day, Season season) {
        return !day.isBefore(season.day(feedingFirst));
    }

    /**
     * Share of the nitrogen of a feed that is there in spring, 0 to 1.
     *
     * @param soil nitrogen class of the soil; empty where it is not known
     */
    public double keeps(Feed feed, LocalDate day, Season season, Optional<String> soil) {
        LocalDate from = season.day(lossFirst);
        LocalDate until = season.day(lossLast);
        if (feed.slow() || !feed.givesNitrogen() || !day.isBefore(until)) { return 1; }
        double whole = soil.map(left::get).orElse(leftElsewhere);
        double through = Math.min(1, (double) days(day, until) / days(from, until));
        return 1 - (1 - whole) * through;
    }

    private static long days(LocalDate from, LocalDate to) { return ChronoUnit.DAYS.between(from, to); }
}
