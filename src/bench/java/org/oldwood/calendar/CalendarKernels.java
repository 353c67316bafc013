package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.oldwood.garden.Zone;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One all-day event with thirteen properties, written as iCalendar; the lines go nowhere. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CalendarKernels {
    private static final int ITEMS = 1024;
    private static final LocalDate START = LocalDate.of(2026, 11, 25);

    private final Stamp stamp = new Stamp(0, START.atStartOfDay().toInstant(ZoneOffset.UTC));
    private final IcsWriter writer = new IcsWriter(
            OutputStream.nullOutputStream(),
            new Layout(Layout.EventDays.SPAN, Layout.Due.LAST_DAY, Layout.Alarms.NONE),
            new Uids(new UUID(1, 2), Map.of()),
            Zone.of("UTC"));
    private final Item[] items = new Item[ITEMS];
    private int next;

    public CalendarKernels() {
        for (int i = 0; i < ITEMS; i++) {
            items[i] = ManyEvents.item(i, START.plusDays(i % 365));
        }
    }

    @Benchmark
    public void event() throws IOException {
        next = (next + 1) % ITEMS;
        writer.event(items[next], stamp);
    }
}
