package org.oldwood.craft.water;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.oldwood.crop.Crop;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;

/**
 * The crop coefficients of each crop on each day of the weather, worked out once for all beds. Coefficients follow the
 * stage dates of each season.
 */
public final class CropCurves {
    private final WeatherSeries weather;
    private final Hemisphere hemisphere;
    private final Stages stages;
    private final double wind;
    private final Map<String, Curve> curves = new HashMap<>();
    private final int[] seasons;

    /**
     * One crop's coefficients, day by day. Nobody may change the arrays.
     *
     * @see CropCurves#of
     */
    public static final class Curve {
        public final double[] single;
        final double[] basal;
        final double bare;

        Curve(int days, double singleBare, double basalBare) {
            single = new double[days];
            basal = new double[days];
            bare = singleBare;
            Arrays.fill(single, singleBare);
            Arrays.fill(basal, basalBare);
        }
    }

    /** Curves in a wind, m/s at 2 m, to which the coefficients are moved (FAO-56, equations 62, 65 and 70). */
    public CropCurves(WeatherSeries weather, Hemisphere hemisphere, Stages stages, double windMs) {
        this.weather = weather;
        wind = windMs;
        this.hemisphere = hemisphere;
        this.stages = stages;
        seasons = new int[weather.days()];
        Season season = Season.containing(weather.first(), hemisphere);
        LocalDate end = season.end();
        for (int i = 0; i < seasons.length; i++) {
            if (weather.index(end) < i) {
                season = season.plus(1);
                end = season.end();
            }
            seasons[i] = season.year();
        }
    }

    public WeatherSeries weather() { return weather; }

    public int seasonYear(int day) { return seasons[day]; }

    public Curve of(Crop crop, CropWater water) { return curves.computeIfAbsent(crop.id(), id -> curve(crop, water)); }

    private Curve curve(Crop crop, CropWater water) {
        Curve curve = new Curve(weather.days(), water.group().single().initial(), water.group().basal().initial());
        Season season = Season.containing(weather.first(), hemisphere).plus(-1);
        Season last = Season.containing(weather.last(), hemisphere);
        for (; season.compareTo(last) <= 0; season = season.plus(1)) {
            grow(curve, crop, water, season);
        }
        return curve;
    }

    private void grow(Curve curve, Crop crop, CropWater water, Season season) {
        int begins = weather.index(water.growth().begins().in(season, crop, stages));
        int full = after(begins, weather.index(water.growth().fullLeaf().in(season, crop, stages)));
        int declines = after(full, weather.index(water.growth().declines().in(season, crop, stages)));
        int ends = after(declines, weather.index(water.growth().ends().in(season, crop, stages)));
        CropCoefficient single = inWind(water.group().single(), water);
        CropCoefficient basal = inWind(water.group().basal(), water);
        int to = Math.min(ends, weather.days() - 1);
        for (int day = Math.max(0, begins); day <= to; day++) {
            curve.single[day] = single.on(day, begins, full, declines, ends);
            curve.basal[day] = basal.on(day, begins, full, declines, ends);
        }
    }

    private CropCoefficient inWind(CropCoefficient table, CropWater water) {
        return table.adjusted(wind, CropCoefficient.TABLE_LOWEST_HUMIDITY, water.group().heightM().is());
    }

    /** Stages of a freak season may overlap; a phase is then a day long. */
    private static int after(int earlier, int day) {
        return Math.max(earlier + 1, day);
    }
}
