package org.oldwood.calendar;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.oldwood.calendar.format.ContentLines;

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
        LocalDate start = LocalDate.of(2026, 11, 25);
        Stamp stamp = new Stamp(0, start.atStartOfDay().toInstant(java.time.ZoneOffset.UTC));
        Components components = new Components(Layout.usual(), new Uids(new UUID(1, 2), Map.of()), ZoneId.of("UTC"));
        try (OutputStream out = new java.io.BufferedOutputStream(Files.newOutputStream(file))) {
            ContentLines lines = new ContentLines(out);
            lines.whole("BEGIN:VCALENDAR");
            lines.whole("VERSION:2.0");
            lines.whole("PRODID:" + Export.PRODUCT);
            for (int i = 0; i < number; i++) {
                Outgoing event = new Outgoing(item(i, start.plusDays(i % 365)), Optional.empty());
                components.event(event, stamp).write(lines);
            }
            lines.whole("END:VCALENDAR");
        }
    }

    static Item item(int number, LocalDate day) {
        return Plans.item("rule@plant-" + number, new Item.Words("Task " + number,
                "Cut out two old stems; leave eight, well spread, and note it.", "pruning", "bed " + number % 100),
                new Item.Days(day, day, day));
    }
}
