package org.oldwood.water;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.garden.Site;
import org.oldwood.season.Climate;
import org.oldwood.season.Months;
import org.oldwood.season.Weather;
import org.oldwood.season.WeatherDay;

/**
 * A garden's weather day by day: measured where it was, the climate's means elsewhere. A month's
 * mean rain is cut to what soaks in by the USDA-SCS rule and spread evenly over its days.
 */
public final class MeanWeather {
    private final MeanTemperatures means;
    private final Months rain;
    private final EvapotranspirationSeries thirst;

    /**
     * Prepares a place.
     *
     * @param rain monthly rain, mm
     */
    public MeanWeather(Site site, Climate climate, Months rain) {
        this.means = new MeanTemperatures(climate);
        this.rain = rain;
        this.thirst = EvapotranspirationSeries.inland(site.latitude(), site.heightM());
    }

    /** The days from {@code first} to {@code last}, both included. */
    public WeatherSeries days(LocalDate first, LocalDate last, Weather measured) {
        int count = Math.toIntExact(last.toEpochDay() - first.toEpochDay()) + 1;
        double[] et0 = new double[count];
        double[] fell = new double[count];
        double[] soaked = new double[count];
        for (int i = 0; i < count; i++) {
            LocalDate date = first.plusDays(i);
            Optional<WeatherDay> day = measured.isEmpty() ? Optional.empty() : measured.on(date);
            et0[i] = et0(date, day);
            OptionalDouble known = day.map(WeatherDay::rainMm).orElse(OptionalDouble.empty());
            int month = date.getMonthValue();
            double days = date.lengthOfMonth();
            fell[i] = known.orElse(rain.in(month) / days);
            soaked[i] =
                    known.isPresent()
                            ? EffectiveRain.daily(fell[i], et0[i])
                            : EffectiveRain.monthly(rain.in(month)) / days;
        }
        return new WeatherSeries(first, et0, fell, soaked);
    }

    private double et0(LocalDate date, Optional<WeatherDay> day) {
        double least =
                day.map(WeatherDay::minC).orElse(OptionalDouble.empty()).orElse(means.lowest(date));
        double most =
                day.map(WeatherDay::maxC)
                        .orElse(OptionalDouble.empty())
                        .orElse(means.highest(date));
        return thirst.on(date.getDayOfYear(), least, Math.max(least, most));
    }
}
