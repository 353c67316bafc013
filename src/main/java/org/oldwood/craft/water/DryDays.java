package org.oldwood.craft.water;

/**
 * Days without watering, prepared for many beds that lie alike. Nobody may change the arrays.
 *
 * <p>{@code demand}: what a full-grown crop in full sun would draw, mm; {@code soaked}: rain that soaked in, mm;
 * {@code shed}: rain that runs off roofs after the first flush, mm.
 */
public final class DryDays {
    final double[] demand;
    final double[] soaked;
    final double[] shed;

    /**
     * Prepares them.
     *
     * @param coefficient the crop's coefficient on each day
     */
    public DryDays(WeatherSeries weather, double[] coefficient, double firstFlushMm) {
        demand = new double[weather.days()];
        soaked = new double[weather.days()];
        shed = new double[weather.days()];
        for (int i = 0; i < demand.length; i++) {
            demand[i] = coefficient[i] * weather.et0(i);
            soaked[i] = weather.soaked(i);
            shed[i] = Math.max(0, weather.rain(i) - firstFlushMm);
        }
    }

    /** Rain that runs off roofs on the days from {@code from} to {@code to}, both included, mm. */
    public double shed(int from, int to) {
        double sum = 0;
        for (int i = from; i <= to; i++) {
            sum += shed[i];
        }
        return sum;
    }
}
