package org.oldwood.craft.water;

import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * When a bed will run short in the days ahead. Uses the same arithmetic as {@link WaterAccount}. Days are counted from
 * the first one looked at, 0 for that one.
 *
 * @param likely days until it runs short in mean weather; empty where mean rain keeps it going
 * @param sooner the same with less rain than the mean
 * @param later the same with more
 * @param rainless the same with no rain at all
 */
public record NextShort(OptionalInt likely, OptionalInt sooner, OptionalInt later, OptionalInt rainless) {

    /**
     * Looks ahead.
     *
     * @param ahead mean weather from today on
     * @param coefficient the bed's coefficient on each of these days
     * @param start depletion on the evening before the first of these days
     * @param rainSpread by what share of the mean the rain of some weeks commonly misses it
     */
    public static NextShort of(BedWater bed, WeatherSeries ahead, double[] coefficient, Depletion start,
            double rainSpread) {
        BiFunction<Double, Double, OptionalInt> run = (rain, depletion) -> {
            WaterDays days = new WaterAccount(bed).run(ahead.withRainTimes(rain, day -> true), coefficient,
                    new BedEvents(), depletion);
            return IntStream.range(0, days.days()).filter(days::isShort).findFirst();
        };
        return new NextShort(run.apply(1.0, start.mm()), run.apply(1 - rainSpread, start.driestMm()),
                run.apply(1 + rainSpread, start.wettestMm()), run.apply(0.0, start.mm()));
    }

    /**
     * What is missing on an evening, mm.
     *
     * @param driestMm had it rained less than the mean on days whose rain was not measured
     * @param wettestMm had it rained more
     */
    public record Depletion(double mm, double driestMm, double wettestMm) {}

    /**
     * Days to either side of the likely day, the greater of the two; to the sooner day alone where more rain would keep
     * the bed going. Empty where the likely day is not known.
     */
    public OptionalInt plusMinusDays() {
        if (likely.isEmpty() || sooner.isEmpty()) { return OptionalInt.empty(); }
        int before = likely.getAsInt() - sooner.getAsInt();
        int after = later.orElse(likely.getAsInt()) - likely.getAsInt();
        return OptionalInt.of(Math.max(1, Math.max(before, after)));
    }
}
