package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.oldwood.craft.cuttings.survival.Kilograms;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.season.Season;

/**
 * How many cuttings to strike, and by when, for what is wanted.
 *
 * @param strikeBy the last day of that same window
 * @param latest the last day, in any window, that still bears by the wanted season; empty where it is too late already
 * @param line the days of a lot struck on {@code strikeFrom}
 * @param earliest the earliest season in which a lot struck from now on bears
 * @param number the fewest to strike; empty where no number up to {@link #MOST} gives the wanted sureness, or where
 *     nothing can be borne by then
 * @param chance the chance that this number gives; 0 where there is none
 */
public record StrikePlan(LikelyDay strikeFrom, LikelyDay strikeBy, Optional<LikelyDay> latest, Timeline line,
        Season earliest, OptionalInt number, double chance) {
    /** More than this many cuttings are never advised. */
    public static final int MOST = 3000;

    private static final int WINDOWS_AHEAD = 40;

    public boolean isTooLate() { return latest.isEmpty(); }

    /** The plan for a want, from the setting's day on. */
    public static StrikePlan of(Want want, Course course, Survival survival, Setting setting) {
        Windows windows = new Windows(course, setting);
        Timeline now = windows.next(setting.asOf());
        LikelyDay from = now.opens().date().isAfter(setting.asOf()) ? now.opens()
                : new LikelyDay(setting.asOf(), 0, "at once: the window is open");
        Optional<LikelyDay> latest = windows.last(now, want.by());
        OptionalInt number = latest.isEmpty() ? OptionalInt.empty()
                : survival.whole().fewest(plants -> success(plants, want, course, now), want.sure(), MOST);
        double chance = number.isPresent() ? chance(number.getAsInt(), want, course, survival, now) : 0;
        return new StrikePlan(from, now.closes(), latest, now, now.firstPick(), number, chance);
    }

    /** The fewest to strike for {@code wanted} plants; empty where more than {@link #MOST}. */
    public static OptionalInt fewest(int wanted, double sure, Survival survival) {
        return survival.whole().fewest(plants -> plants >= wanted ? 1 : 0, sure, MOST);
    }

    private static double success(int plants, Want want, Course course, Timeline line) {
        if (want.plants().isPresent()) { return plants >= want.plants().getAsInt() ? 1 : 0; }
        double share = course.share(line.seasonInPlace(want.by()));
        PlantYield yield = new PlantYield(course.perPlant().times(share));
        return Kilograms.chance(plants, yield, want.kg().getAsDouble());
    }

    /** The chance that {@code struck} cuttings meet the want. */
    static double chance(int struck, Want want, Course course, Survival survival, Timeline line) {
        return Math.min(1, survival.whole().from(struck).mean(plants -> success(plants, want, course, line)));
    }

    /** The windows for striking, one a season. */
    private record Windows(Course course, Setting setting) {

        /** The days of a lot struck as soon as can be on or after {@code day}. */
        Timeline next(LocalDate day) {
            Season season = setting.season(day).plus(-1);
            while (true) {
                Timeline line = at(season);
                if (!line.closes().date().isBefore(day)) {
                    return line.opens().date().isBefore(day) ? struck(day) : line;
                }
                season = season.plus(1);
            }
        }

        /** The last day that still bears by {@code by}, if there is one after {@code from}. */
        Optional<LikelyDay> last(Timeline from, Season by) {
            Optional<LikelyDay> last = Optional.empty();
            Season season = from.growth().first();
            for (int ahead = 0; ahead < WINDOWS_AHEAD; ahead++) {
                Timeline line = at(season.plus(ahead));
                if (line.firstPick().compareTo(by) > 0) { break; }
                last = Optional.of(line.closes());
            }
            return last;
        }

        /** The days of a lot struck when the window of that first growing season opens. */
        private Timeline at(Season first) {
            return struck(StrikeWindow.of(course, setting, first).opens().date());
        }

        private Timeline struck(LocalDate day) {
            return Timeline.of(LotCounts.struck(1, day), course,
                    new Setting(setting.hemisphere(), setting.stages(), day));
        }
    }

    /**
     * What a grower wants: so many plants that bear, or so many kilograms, by a season, and how sure.
     *
     * @param plants plants that stand where they are to stay and bear; or
     * @param sure the chance wanted, above 0 and below 1
     */
    public record Want(OptionalInt plants, OptionalDouble kg, Season by, double sure) {
        public Want {
            if (plants.isPresent() == kg.isPresent()) {
                throw new IllegalArgumentException("want either plants or kilograms");
            }
            if (!(sure > 0 && sure < 1)) {
                throw new IllegalArgumentException("the chance wanted must lie between 0 and 1 but is " + sure);
            }
        }
    }
}
