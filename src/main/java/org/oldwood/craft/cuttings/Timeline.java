package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;

/**
 * The days of one lot, told by stages of growth: they move with the place, the half of the earth and what was seen in
 * the garden.
 *
 * @param tells from when losses show
 * @param liftFrom from when it may be lifted; the day itself, ± 0, once it was
 * @param liftBy until when it may be lifted
 * @param inPlace the first season that the plants grow where they are to stay
 * @param firstPick the first season that bears
 * @param fullCrop the first season that bears a full crop
 * @param lifted whether it is out of the ground it rooted in
 */
public record Timeline(Growth growth, LocalDate struckOn, LikelyDay opens, LikelyDay closes, LikelyDay tells,
        LikelyDay rooted, LikelyDay liftFrom, LikelyDay liftBy, LikelyDay plantOut, Season inPlace, Season firstPick,
        Season fullCrop, boolean lifted) {

    public static Timeline of(LotCounts lot, Course course, Setting setting) {
        Setting.StageDates stages = setting.stages();
        Growth growth = growth(lot.struckOn(), course.method(), setting.season(lot.struckOn()), stages);
        Method method = course.method();
        Days days = new Days(lot.struckOn(), growth);
        int later = seasonsLater(lot, course, days, setting.asOf());
        LikelyDay liftFrom = noted(lifted(lot), "lifted").orElseGet(() -> days.of(method.lift().from(), later));
        LikelyDay plantOut = noted(lot.plantedOutOn(), "planted out").orElse(liftFrom);
        Season inPlace = firstSeasonAfter(plantOut.date(), growth.first(), stages);
        return new Timeline(growth, lot.struckOn(), days.of(method.window().from(), 0),
                days.of(method.window().to(), 0), days.of(method.rooted().tellsFrom(), 0),
                days.of(method.rooted().at(), 0), liftFrom, days.of(method.lift().to(), later), plantOut, inPlace,
                inPlace.plus(course.firstPick() - 1), inPlace.plus(course.fullCrop() - 1), lifted(lot).isPresent());
    }

    /** What was planted out was lifted, noted or not. */
    private static Optional<LocalDate> lifted(LotCounts lot) {
        return lot.liftedOn().or(lot::plantedOutOn);
    }

    /** A lot that was not lifted when its time came waits for the next. */
    private static int seasonsLater(LotCounts lot, Course course, Days days, LocalDate asOf) {
        int later = 0;
        Anchor by = course.method().lift().to();
        boolean waits = lifted(lot).isEmpty() && !course.method().inPlace();
        while (waits && days.of(by, later).date().isBefore(asOf)) {
            later++;
        }
        return later;
    }

    private record Days(LocalDate struck, Growth growth) {
        LikelyDay of(Anchor anchor, int later) { return anchor.day(struck, growth, later); }
    }

    private static Optional<LikelyDay> noted(Optional<LocalDate> day, String what) {
        return day.map(it -> new LikelyDay(it, 0, what));
    }

    /** The season whose window lies nearest to the strike, among those in which the lot can still root after it. */
    private static Growth growth(LocalDate struck, Method method, Season around, Setting.StageDates stages) {
        Growth best = new Growth(around.plus(2), stages);
        for (int season = 1; season >= -1; season--) {
            Growth growth = new Growth(around.plus(season), stages);
            LikelyDay rooted = method.rooted().at().day(struck, growth, 0);
            if (rooted.date().isAfter(struck) && outside(struck, method, growth) <= outside(struck, method, best)) {
                best = growth;
            }
        }
        return best;
    }

    /** Days from the strike to the window; 0 inside it. */
    private static long outside(LocalDate struck, Method method, Growth growth) {
        Method.Window window = method.window();
        LocalDate opens = window.from().day(struck, growth, 0).date();
        LocalDate closes = window.to().day(struck, growth, 0).date();
        return Math.max(0, Math.max(ChronoUnit.DAYS.between(struck, opens), ChronoUnit.DAYS.between(closes, struck)));
    }

    private static Season firstSeasonAfter(LocalDate day, Season from, Setting.StageDates stages) {
        Season season = from;
        while (!stages.date(season, Stage.BUD_BURST).date().isAfter(day)) {
            season = season.plus(1);
        }
        return season;
    }

    /** Days that the strike lies outside its window, beyond the window's ±: below 0 too early. */
    public long daysOutside() {
        LocalDate earliest = opens.date().minusDays(opens.plusMinusDays());
        LocalDate latest = closes.date().plusDays(closes.plusMinusDays());
        if (struckOn.isBefore(earliest)) { return -ChronoUnit.DAYS.between(struckOn, opens.date()); }
        return struckOn.isAfter(latest) ? ChronoUnit.DAYS.between(closes.date(), struckOn) : 0;
    }

    /** From when the cuttings must not dry out: since their buds burst, or since the strike. */
    public LikelyDay moistFrom() {
        return tells.date().isBefore(struckOn) ? new LikelyDay(struckOn, 0, "the day of striking") : tells;
    }

    /** Until when: the leaf fall of their first season, or until they have rooted. */
    public LikelyDay moistTo() {
        LikelyDay fall = LikelyDay.of(growth.date(0, Stage.LEAF_FALL_BEGINS));
        return fall.date().isAfter(struckOn) ? fall : rooted;
    }

    /** The season in which it first grows leaves of its own. */
    public Season firstSeason() { return growth.first(); }

    /** The fruit's first ripe day in a season. */
    public LikelyDay ripe(Season season) {
        return LikelyDay.of(growth.stages().date(season, Stage.RIPE));
    }

    /** The seasons since planting in {@code season}: 1 in the first. */
    public int seasonInPlace(Season season) {
        return season.year() - inPlace.year() + 1;
    }

    /**
     * The growing seasons of a lot, counted from its first.
     *
     * @param first the season in which it first grows leaves of its own
     */
    record Growth(Season first, Setting.StageDates stages) {

        StageDate date(int season, Stage stage) { return stages.date(first.plus(season), stage); }
    }
}
