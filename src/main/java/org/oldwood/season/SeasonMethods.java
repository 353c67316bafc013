package org.oldwood.season;

import java.time.LocalDate;
import java.time.MonthDay;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * The figures that the season engine works by whatever the crop, from {@code season/methods.json}.
 *
 * @param heatFrom day of the northern year on which heat begins to count
 * @param heatSum the stretch and base of the heat that is shown for comparison
 * @param spreadLeastC spread of daily means about a normal day, least, °C
 * @param spreadPerC and its share of the range of the monthly means
 * @param chillFrom day of the northern year on which chill begins to count
 * @param chillBefore and the day before which it counts
 * @param mild what winters short of chill do
 * @param autumn the stretch whose mean moves leaf fall
 * @param meanOver days over which cool means are averaged
 * @param nightSpreadC spread of least temperatures about the normal night
 * @param afterPetalFall how long young fruit stays tender after petal fall
 * @param watchAbove the years in 100 above which frost in flower is worth watching for
 * @param means when a garden's own measured days make a mean year
 * @param shrink how many seasons of sightings weigh as much as the model
 * @param carriedToAutumn how much of a spring's earliness reaches leaf fall
 * @param farthest how many times its ± a stage may be seen from its day before it is doubted
 * @param place what not knowing a place's own climate does to a date
 * @param lead how sure a stage is, by the weather still to come
 */
public record SeasonMethods(
        MonthDay heatFrom,
        HeatSum heatSum,
        Figure spreadLeastC,
        Figure spreadPerC,
        MonthDay chillFrom,
        MonthDay chillBefore,
        Mild mild,
        Autumn autumn,
        Figure meanOver,
        Figure nightSpreadC,
        Figure afterPetalFall,
        Figure watchAbove,
        Means means,
        Figure shrink,
        Figure carriedToAutumn,
        Figure farthest,
        PlaceError place,
        LeadError lead) {

    /**
     * What winters short of chill do to spring's dates. Hours are those below 7.2 °C to the end of a month.
     *
     * @param model the chill model that counts them
     * @param before the day of the northern year before which they count
     * @param shortBelow hours below which a date is less sure
     * @param shortPlusMinus its ±, days
     * @param unseenBelow hours below which nobody has looked
     * @param unseenPlusMinus the ± there, days
     * @param unsuitedShare the share of the least chill a crop wants below which it will not suit
     */
    public record Mild(
            String model,
            MonthDay before,
            Figure shortBelow,
            Figure shortPlusMinus,
            Figure unseenBelow,
            Figure unseenPlusMinus,
            Figure unsuitedShare) {
        private static Mild read(Fields fields) {
            return new Mild(
                    fields.text("heatModel"),
                    CropStages.monthDay(fields, "heatBefore"),
                    Figure.read(fields, "shortBelow"),
                    Figure.read(fields, "shortPlusMinus"),
                    Figure.read(fields, "unseenBelow"),
                    Figure.read(fields, "unseenPlusMinus"),
                    Figure.read(fields, "unsuitedShare"));
        }
    }

    /**
     * The stretch whose mean moves leaf fall.
     *
     * @param first its first day in the northern year
     * @param last and its last
     * @param leastC colder means count as this
     * @param mostC warmer means count as this
     * @param unseenAboveC mean above which nobody has looked
     */
    public record Autumn(MonthDay first, MonthDay last, Figure leastC, Figure mostC, Figure unseenAboveC) {
        private static Autumn read(Fields fields) {
            return new Autumn(
                    CropStages.monthDay(fields, "from"),
                    CropStages.monthDay(fields, "to"),
                    Figure.read(fields, "least"),
                    Figure.read(fields, "most"),
                    Figure.read(fields, "unseenAbove"));
        }
    }

    /**
     * What not knowing a place's own climate does to a date.
     *
     * @param mildAboveC mean of the coldest month from which winters are mild
     * @param flower days a degree up to petal fall, and so on
     */
    public record PlaceError(
            Figure mildAboveC, Figure flower, Figure ripe, Figure flowerMild, Figure ripeMild, Figure always) {
        private static PlaceError read(Fields fields) {
            return new PlaceError(
                    Figure.read(fields, "mildAboveC"),
                    Figure.read(fields, "flower"),
                    Figure.read(fields, "ripe"),
                    Figure.read(fields, "flowerMild"),
                    Figure.read(fields, "ripeMild"),
                    Figure.read(fields, "always"));
        }

        /** Standard error of a stage's day that comes from the place, days; none of leaf fall's. */
        double days(Climate climate, Stage stage) {
            if (climate.errorC() == 0 || stage.compareTo(Stage.RIPE) > 0) {
                return 0;
            }
            boolean mild = climate.meanC().least() >= mildAboveC.is();
            Figure perDegree = stage == Stage.RIPE ? (mild ? ripeMild : ripe) : (mild ? flowerMild : flower);
            return Math.hypot(always.is(), perDegree.is() * climate.errorC());
        }
    }

    /**
     * The ± of a stage that heat brings, by how much of its weather is still to come.
     *
     * @param mildAboveC mean of the coldest month above which {@code mild} days are added in squares
     */
    public record LeadError(Figure at10, Figure at20, Figure at30, Figure at60, Figure mildAboveC, Figure mild) {
        private static LeadError read(Fields fields) {
            return new LeadError(
                    Figure.read(fields, "under10"),
                    Figure.read(fields, "under20"),
                    Figure.read(fields, "under30"),
                    Figure.read(fields, "under60"),
                    Figure.read(fields, "mildAboveC"),
                    Figure.read(fields, "mild"));
        }

        /** Days; no more than the climate's own ±, which holds where more than sixty days are to come. */
        double days(int toCome, double coldestMonthC, double ofClimate) {
            if (toCome >= 60) {
                return ofClimate;
            }
            Figure by = toCome < 10 ? at10 : toCome < 20 ? at20 : toCome < 30 ? at30 : at60;
            return Math.min(ofClimate, Math.hypot(by.is(), coldestMonthC > mildAboveC.is() ? mild.is() : 0));
        }
    }

    /**
     * The stretch and base of heat that is shown for comparison; the stages' models have their own.
     *
     * @param from the first day of the northern year
     * @param before the day after the last
     * @param base base temperature, °C
     */
    public record HeatSum(MonthDay from, MonthDay before, Figure base) {
        private static HeatSum read(Fields fields) {
            return new HeatSum(
                    CropStages.monthDay(fields, "from"),
                    CropStages.monthDay(fields, "before"),
                    Figure.read(fields, "base"));
        }
    }

    /**
     * When a garden's own measured days make a mean year.
     *
     * @param mostMissingDays how many days of a month may be missing
     * @param leastYears how many years each month must be there
     * @param trustedYears from how many years on the means are no mere makeshift
     */
    public record Means(Figure mostMissingDays, Figure leastYears, Figure trustedYears) {
        private static Means read(Fields fields) {
            return new Means(
                    Figure.read(fields, "mostMissingDays"),
                    Figure.read(fields, "leastYears"),
                    Figure.read(fields, "trustedYears"));
        }
    }

    public static SeasonMethods read(Documents documents) {
        Fields fields = documents.fields("season/methods.json");
        fields.count("format", 1, 1);
        Fields heat = part(fields, "heat");
        Fields spread = part(fields, "dayToDay");
        Fields chill = part(fields, "chill");
        Fields frost = part(fields, "frost");
        Fields seen = part(fields, "sightings");
        SeasonMethods methods = new SeasonMethods(
                CropStages.monthDay(heat, "from"),
                HeatSum.read(part(fields, "heatSum")),
                Figure.read(spread, "leastC"),
                Figure.read(spread, "perC"),
                CropStages.monthDay(chill, "from"),
                CropStages.monthDay(chill, "before"),
                Mild.read(chill),
                Autumn.read(part(fields, "leafFall")),
                Figure.read(heat, "meanOver"),
                Figure.read(frost, "nightSpread"),
                Figure.read(frost, "afterPetalFall"),
                Figure.read(frost, "watchAbove"),
                Means.read(part(fields, "weatherMeans")),
                Figure.read(seen, "shrink"),
                Figure.read(seen, "carriedToAutumn"),
                Figure.read(seen, "farthest"),
                PlaceError.read(part(fields, "placeError")),
                LeadError.read(part(fields, "leadError")));
        fields.done();
        return methods;
    }

    /** The first day of a season's winter on which chill counts. */
    public LocalDate chillFirst(Season season) {
        LocalDate day = season.day(chillFrom.getMonthValue(), chillFrom.getDayOfMonth());
        return day.isBefore(chillLast(season))
                ? day
                : season.plus(-1).day(chillFrom.getMonthValue(), chillFrom.getDayOfMonth());
    }

    /** The last day of it. */
    public LocalDate chillLast(Season season) {
        return season.day(chillBefore.getMonthValue(), chillBefore.getDayOfMonth())
                .minusDays(1);
    }

    private static Fields part(Fields fields, String key) {
        return fields.object(key).orElseThrow(() -> new IllegalStateException("season/methods.json has no " + key));
    }

    /** Spread of the daily means about a normal day in a climate, °C. */
    public double spreadC(Climate climate) {
        Months mean = climate.meanC();
        return spreadLeastC.is() + spreadPerC.is() * (mean.most() - mean.least());
    }
}
