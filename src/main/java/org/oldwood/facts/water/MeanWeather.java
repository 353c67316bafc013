package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.oldwood.craft.water.EffectiveRain;
import org.oldwood.craft.water.WeatherSeries;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.oldwood.garden.Site;
import org.oldwood.season.Climate;
import org.oldwood.season.MeanCurve;
import org.oldwood.season.Months;
import org.oldwood.season.SeasonDays;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;

/**
 * A garden's weather day by day: measured where it was, the climate's means elsewhere. A month's mean rain is cut to
 * what soaks in by the USDA-SCS rule and spread evenly over its days.
 */
public final class MeanWeather {
    private final Site site;
    private final MeanCurve lowest;
    private final MeanCurve highest;
    private final Months rain;

    /**
     * Prepares a place.
     *
     * @param rain monthly rain, mm
     */
    public MeanWeather(Site site, Climate climate, Months rain) {
        this.site = site;
        this.lowest = MeanCurve.through(climate.meanMinC());
        this.highest = MeanCurve.through(climate.meanMaxC());
        this.rain = rain;
    }

    /**
     * The days from {@code first} to {@code last}, both included.
     *
     * @param wind wind at 2 m, m/s
     */
    public WeatherSeries days(LocalDate first, LocalDate last, Weather measured, double wind) {
        int count = Math.toIntExact(last.toEpochDay() - first.toEpochDay()) + 1;
        Filled days = new Filled(count);
        LocalDate date = first;
        for (int i = 0; i < count; i++) {
            int month = date.getMonthValue();
            double length = date.lengthOfMonth();
            days.tmin[i] = lowest.on(SeasonDays.normalDay(date));
            days.tmax[i] = highest.on(SeasonDays.normalDay(date));
            days.rain[i] = rain.in(month) / length;
            days.soaked[i] = EffectiveRain.monthly(rain.in(month)) / length;
            date = date.plusDays(1);
        }
        for (WeatherDay day : measured.between(first, last)) {
            days.measured(Math.toIntExact(day.date().toEpochDay() - first.toEpochDay()), day);
        }
        double[] et0 = new double[count];
        for (int i = 0; i < count; i++) {
            DayWeather day = new DayWeather(
                    days.tmin[i], days.tmax[i], Humidity.unknown(), OptionalDouble.of(wind), Sunshine.unknown());
            int dayOfYear = first.plusDays(i).getDayOfYear();
            et0[i] = EvapotranspirationDay.of(site.latitude(), site.heightM(), dayOfYear, day, 0)
                    .penmanMonteith();
        }
        days.soak(et0);
        return new WeatherSeries(first, et0, days.rain, days.soaked);
    }

    /** The series while they are filled. */
    private static final class Filled {
        final double[] tmin;
        final double[] tmax;
        final double[] rain;
        final double[] soaked;
        final boolean[] rainMeasured;

        Filled(int count) {
            tmin = new double[count];
            tmax = new double[count];
            rain = new double[count];
            soaked = new double[count];
            rainMeasured = new boolean[count];
        }

        void measured(int i, WeatherDay day) {
            tmin[i] = day.minC().orElse(tmin[i]);
            tmax[i] = Math.max(tmin[i], day.maxC().orElse(tmax[i]));
            rainMeasured[i] = day.rainMm().isPresent();
            rain[i] = day.rainMm().orElse(rain[i]);
        }

        void soak(double[] et0) {
            for (int i = 0; i < et0.length; i++) {
                if (rainMeasured[i]) {
                    soaked[i] = EffectiveRain.daily(rain[i], et0[i]);
                }
            }
        }
    }
}
