package org.oldwood.calendar.server;

import java.time.Duration;
import java.util.function.Consumer;

/** Says now and then what a command is at, once it lasts. */
final class Progress {
    private static final Duration EVERY = Duration.ofSeconds(3);

    private final Consumer<String> tells;
    private final long every;
    private long last = System.nanoTime();

    Progress(Consumer<String> tells) { this(tells, EVERY); }

    Progress(Consumer<String> tells, Duration every) {
        this.tells = tells;
        this.every = every.toNanos();
    }

    void isStillAt(String what) {
        if (System.nanoTime() - last >= every) {
            last = System.nanoTime();
            tells.accept("Still " + what + ".");
        }
    }
}
