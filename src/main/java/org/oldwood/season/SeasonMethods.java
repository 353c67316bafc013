package org.oldwood.season;

import java.time.LocalDate;
import java.time.MonthDay;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Stage;
import org.oldwood.store.Documents;

/**
 * The figures that the season engine works by whatever the crop, from {@code season/methods.json}, under the names that
 * they have there; days are those of the northern year.
 */
public record SeasonMethods(Heat heat, HeatSum heatSum, DayToDay dayToDay, Chill chill, PlaceError placeError,
        LeadError leadError, Autumn leafFall, Frost frost, Means weatherMeans, Seen sightings) {

    /**
     * How heat counts.
     *
     * @param from day on which it begins to
     * @param meanOver days over which cool means are averaged
     */
    public record Heat(MonthDay from, Figure meanOver) {}

    /** The stretch and base of heat that is shown for comparison; the stages' models have their own. */
    public record HeatSum(MonthDay from, MonthDay before, Figure base) {}

    /** Spread of daily means about a normal day: least, and its share of the range of the monthly means. */
    public record DayToDay(Figure leastC, Figure perC) {}

    /**
     * When chill counts, and what winters short of it do to spring's dates.
     *
     * @param heatModel the chill model whose hours, to {@code heatBefore}, the rest is told in
     * @param shortBelow hours below which a date is less sure, with its ±
     * @param unseenBelow hours below which nobody has looked, with the ± there
     * @param unsuitedShare the share of the least chill a crop wants below which it will not suit
     * @param meanDayPortions how many portions too many a winter of mean days gives
     */
    public record Chill(MonthDay from, MonthDay before, String heatModel, MonthDay heatBefore, Figure shortBelow,
            Figure shortPlusMinus, Figure unseenBelow, Figure unseenPlusMinus, Figure unsuitedShare,
            Figure meanDayPortions) {}

    /** The stretch whose mean moves leaf fall, the bounds it is held within, and the mean above which nobody looked. */
    public record Autumn(MonthDay from, MonthDay to, Figure least, Figure most, Figure unseenAbove) {}

    /**
     * Of frost.
     *
     * @param nightSpread spread of least temperatures about the normal night, °C
     * @param afterPetalFall how long young fruit stays tender
     * @param watchAbove the years in 100 above which frost in flower is worth watching for
     * @param datePlusMinus how far the middle last and first frost may be off
     * @param groundBelow the normal daily mean below which work waits for a thaw, °C
     * @param groundOpensAfter how much longer work in the ground waits
     */
    public record Frost(Figure nightSpread, Figure afterPetalFall, Figure watchAbove, Figure datePlusMinus,
            Figure groundBelow, Figure groundOpensAfter) {}

    /** When a garden's own measured days make a mean year, and from how many years on it is no mere makeshift. */
    public record Means(Figure mostMissingDays, Figure leastYears, Figure trustedYears) {}

    /**
     * Of what was seen.
     *
     * @param shrink how many seasons of sightings weigh as much as the model
     * @param carriedToAutumn how much of a spring's earliness reaches leaf fall
     * @param farthest how many times its ± a stage may be seen from its day before it is doubted
     * @param least days within which none is doubted
     */
    public record Seen(Figure shrink, Figure carriedToAutumn, Figure farthest, Figure least) {}

    /** What not knowing a place's own climate does to a date, days a degree; winters are mild above a coldest month. */
    public record PlaceError(Figure mildAboveC, Figure flower, Figure ripe, Figure flowerMild, Figure ripeMild,
            Figure always) {
        /** Standard error of a stage's day that comes from the place, days; none of leaf fall's. */
        double days(Climate climate, Stage stage) {
            if (climate.errorC() == 0 || stage.compareTo(Stage.RIPE) > 0) { return 0; }
            boolean mild = climate.meanC().least() >= mildAboveC.is();
            Figure perDegree = stage == Stage.RIPE ? (mild ? ripeMild : ripe) : (mild ? flowerMild : flower);
            return Math.hypot(always.is(), perDegree.is() * climate.errorC());
        }
    }

    /** The ± of a stage that heat brings, by how much of its weather is still to come; more in mild winters. */
    public record LeadError(Figure under10, Figure under20, Figure under30, Figure under60, Figure mildAboveC,
            Figure mild) {
        /** Days; no more than the climate's own ±, which holds where more than sixty days are to come. */
        double days(int toCome, double coldestMonthC, double ofClimate) {
            if (toCome >= 60) { return ofClimate; }
            Figure by = toCome < 10 ? under10 : toCome < 20 ? under20 : toCome < 30 ? under30 : under60;
            return Math.min(ofClimate, Math.hypot(by.is(), coldestMonthC > mildAboveC.is() ? mild.is() : 0));
        }
    }

    public static SeasonMethods read(Documents documents) {
        return RecordReader.document(documents.fields("season/methods.json"), SeasonMethods.class);
    }

    /** The first day of a season's winter on which chill counts. */
    public LocalDate chillFirst(Season season) {
        LocalDate day = season.day(chill.from);
        return day.isBefore(chillLast(season)) ? day : season.plus(-1).day(chill.from);
    }

    public LocalDate chillLast(Season season) { return season.day(chill.before).minusDays(1); }

    /** Spread of the daily means about a normal day in a climate, °C. */
    public double spreadC(Climate climate) {
        Months mean = climate.meanC();
        return dayToDay.leastC.is() + dayToDay.perC.is() * (mean.most() - mean.least());
    }
}
