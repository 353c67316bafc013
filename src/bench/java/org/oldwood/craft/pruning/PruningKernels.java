package org.oldwood.craft.pruning;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.oldwood.crop.Stems;
import org.oldwood.crop.Yield;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Random blackcurrant stools, one after another: what to cut out, and six seasons ahead. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PruningKernels {
    private static final int BUSHES = 1024;

    private final FormPruning form = Schools.form("blackcurrant", "stool");
    private final Habit plan = Habit.plan(form.school(), form.school());
    private final Outlook.Basis basis = new Outlook.Basis(form.school(), form,
            Yield.read(Schools.CROPS.get("blackcurrant")), form.newShoots().orElseThrow());
    private final Bush[] bushes = new Bush[BUSHES];
    private int next;

    public PruningKernels() {
        Random random = new Random(7);
        for (int i = 0; i < BUSHES; i++) {
            bushes[i] = Bush
                    .of(Stems.ofOpen(random.nextInt(12), random.nextInt(8), random.nextInt(6), random.nextInt(10)));
        }
    }

    private Bush bush() {
        next = (next + 1) % BUSHES;
        return bushes[next];
    }

    @Benchmark
    public int cutList() { return form.school().winter(bush()).number(); }

    /** Three runs each: few, expected and many new shoots. */
    @Benchmark
    public double outlook() { return Outlook.of(bush(), plan, basis, 6).winters().get(5).kg().orElseThrow().is(); }
}
