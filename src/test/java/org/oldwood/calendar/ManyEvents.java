package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.UUID;
import org.oldwood.garden.Zone;

/**
 * Writes so many all-day events as one calendar file, to be timed as a whole process;
 * {@code src/test/scripts/many_events.mjs} writes the like with ical.js. Run it with a number and a file.
 */
final class ManyEvents {
    private ManyEvents() {}

    public static void main(String[] arguments) throws IOException {
        write(Integer.parseInt(arguments[0]), Path.of(arguments[1]));
    }

    private static void write(int number, Path file) throws IOException {
        Uids uids = new Uids(new UUID(1, 2), Map.of());
        LocalDate start = LocalDate.of(2026, 11, 25);
        Stamp stamp = new Stamp(0, start.atStartOfDay().toInstant(ZoneOffset.UTC));
        try (OutputStream out = Files.newOutputStream(file)) {
            Layout layout = new Layout(Layout.EventDays.SPAN, Layout.Due.LAST_DAY, Layout.Alarms.NONE);
            IcsWriter writer = new IcsWriter(out, layout, uids, Zone.of("UTC"));
            writer.begin(new IcsWriter.Head("many-events", "Many events", false));
            for (int i = 0; i < number; i++) {
                writer.event(item(i, start.plusDays(i % 365)), stamp);
            }
            writer.end();
        }
    }

    static Item item(int number, LocalDate day) {
        return new Item(
                "rule@plant-" + number,
                new Item.Words(
                        "Task " + number,
                        "Cut out two old stems; leave eight, well spread, and note it.",
                        "pruning",
                        "bed " + number % 100),
                "bed",
                new Item.Days(day, day, day),
                Item.Progress.OPEN);
    }
}
