package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/**
 * Holds runs of many tries to 10 s each and, where they are long, to 256 MiB. Time is what this thread computed and
 * waited, for a lock, a server or another thread: that a busy machine gave it no turn is no hang. A read that the
 * system never ends is not in it; it stops the run, which is seen.
 */
public final class Bounds {
    public static final Duration LONGEST = Duration.ofSeconds(10);
    private static final long MOST_MEMORY = 256L << 20;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private Duration longest = Duration.ZERO;
    private long began;

    public Bounds(boolean isLong) {
        threads.setThreadContentionMonitoringEnabled(true);
        if (isLong) {
            assertThat(Runtime.getRuntime().maxMemory()).as("a long run is made with -Xmx256m")
                    .isLessThanOrEqualTo(MOST_MEMORY);
        }
    }

    public void begin() { began = used(); }

    /** How long the try took that began last. */
    public Duration end() {
        Duration took = Duration.ofNanos(used() - began);
        longest = took.compareTo(longest) > 0 ? took : longest;
        return took;
    }

    public Duration longest() { return longest; }

    private long used() {
        ThreadInfo info = threads.getThreadInfo(Thread.currentThread().getId());
        return threads.getCurrentThreadCpuTime()
                + TimeUnit.MILLISECONDS.toNanos(info.getBlockedTime() + info.getWaitedTime());
    }
}
