package org.oldwood.craft.cuttings;

import java.util.concurrent.TimeUnit;
import org.oldwood.craft.cuttings.survival.Survival;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What will become of a lot of blackcurrant cuttings: plants, their spread, and crops. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CuttingsKernels {
    private static final String STRUCK = "2026-11-20";

    @Param({"12", "100"})
    public int cuttings;

    private final Course course = Crafted.course("blackcurrant", "stool", "hardwood", "hard");
    private final Survival survival = Crafted.survival(course);
    private final Setting here = Crafted.north("blackcurrant", STRUCK);

    /** A lot just struck; stage dates by the calendar. */
    @Benchmark
    public double forecast() {
        Forecast forecast = Forecast.of(Crafted.lot(cuttings, STRUCK), course, survival, here);
        return forecast.plants().quantile(0.1) + forecast.plants().quantile(0.9) + forecast.fullCrop().expectedKg();
    }
}
