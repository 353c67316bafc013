package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
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
 *
 * @param rain monthly rain, mm
 */
public record MeanWeather(Site site, Climate climate, Months rain) {

    /**
     * The days from {@code first} to {@code last}, both included.
     *
     * @param wind wind at 2 m, m/s
     */
    public WeatherSeries days(LocalDate first, LocalDate last, Weather measured, double wind) {
        int count = Math.toIntExact(last.toEpochDay() - first.toEpochDay()) + 1;
        MeanCurve lowest = climate.meanMinC().curve();
        MeanCurve highest = climate.meanMaxC().curve();
        double[] et0 = new double[count];
        double[] rains = new double[count];
        double[] soaked = new double[count];
        LocalDate date = first;
        for (int i = 0; i < count; i++, date = date.plusDays(1)) {
            int normal = SeasonDays.normalDay(date);
            Optional<WeatherDay> day = measured.on(date);
            double tmin = known(day, WeatherDay::minC).orElse(lowest.on(normal));
            double tmax = Math.max(tmin, known(day, WeatherDay::maxC).orElse(highest.on(normal)));
            DayWeather weather = new DayWeather(tmin, tmax, Humidity.UNKNOWN, OptionalDouble.of(wind),
                    Sunshine.UNKNOWN);
            et0[i] = EvapotranspirationDay.of(site.latitude(), site.heightM(), date.getDayOfYear(), weather, 0)
                    .penmanMonteith();
            OptionalDouble fell = known(day, WeatherDay::rainMm);
            double month = rain.in(date.getMonthValue());
            rains[i] = fell.orElse(month / date.lengthOfMonth());
            soaked[i] = fell.isPresent() ? EffectiveRain.daily(rains[i], et0[i])
                    : EffectiveRain.monthly(month) / date.lengthOfMonth();
        }
        return new WeatherSeries(first, et0, rains, soaked);
    }

    private static OptionalDouble known(Optional<WeatherDay> day, Function<WeatherDay, OptionalDouble> value) {
        return day.map(value).orElse(OptionalDouble.empty());
    }
}
