package org.oldwood.craft.water;

import java.time.LocalDate;

/** Days of weather, and what an account tells of a day besides. */
final class Days {
    private Days() {}

    /** Measured days: a rain of less than a fifth of the evapotranspiration counts as none. */
    static WeatherSeries measured(LocalDate first, double[] et0, double[] rain) {
        double[] soaked = new double[rain.length];
        for (int i = 0; i < rain.length; i++) {
            soaked[i] = EffectiveRain.daily(rain[i], et0[i]);
        }
        return new WeatherSeries(first, et0, rain, soaked);
    }

    /** Depletion in the morning, mm; days without notes. */
    static double morning(WaterDays days, double startMm, int day) {
        return day == 0 ? startMm : days.depletion(day - 1);
    }

    /** What plants, soil and neighbours' roots took, mm, by what is left; days without notes. */
    static double used(WaterDays days, double startMm, int day) {
        return days.depletion(day) - morning(days, startMm, day) + days.gain(day) - days.drained(day);
    }

    /** Share of their demand that the plants of a bed without neighbours got, 0 to 1. */
    static double stress(WaterDays days, double startMm, int day) {
        return used(days, startMm, day) / days.demand(day);
    }
}
