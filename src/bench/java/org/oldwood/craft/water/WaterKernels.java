package org.oldwood.craft.water;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Reference evapotranspiration of 30 years of made-up days, and a bed's daily account of them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class WaterKernels {
    private static final LocalDate FIRST = LocalDate.of(1996, 1, 1);
    private static final int DAYS = 10_958;

    private final double[] least = new double[DAYS];
    private final double[] most = new double[DAYS];
    private final double[] rain = new double[DAYS];
    private final double[] coefficient = new double[DAYS];
    private final BedWater bed = new BedWater(80, 0.5, 6, RoofWater.NONE, 0.1, 1);
    private final BedEvents nothing = new BedEvents();
    private final WeatherSeries weather;

    public WaterKernels() {
        Random random = new Random(7);
        for (int i = 0; i < DAYS; i++) {
            double mean = 10 - 7 * Math.cos(2 * Math.PI * (i % 365 - 20) / 365);
            double warm = mean + 3 * random.nextGaussian();
            least[i] = warm - 2 - 4 * random.nextDouble();
            most[i] = warm + 2 + 5 * random.nextDouble();
            rain[i] = random.nextInt(3) == 0 ? -4.5 * Math.log(1 - random.nextDouble()) : 0;
            coefficient[i] = i % 365 > 90 && i % 365 < 300 ? 1 : 0.3;
        }
        weather = new WeatherSeries(FIRST, evapotranspiration(), rain, rain);
    }

    /** Penman-Monteith from temperatures, day for day. */
    @Benchmark
    public double[] evapotranspiration() {
        double[] mm = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            DayWeather day = new DayWeather(least[i], most[i], Humidity.UNKNOWN, OptionalDouble.empty(),
                    Sunshine.UNKNOWN);
            mm[i] = EvapotranspirationDay.of(52.2, 20, i % 365 + 1, day, 0).penmanMonteith();
        }
        return mm;
    }

    /** The account of one bed, all its daily series kept. */
    @Benchmark
    public double account() { return new WaterAccount(bed).run(weather, coefficient, nothing, 0).depletion(DAYS - 1); }
}
