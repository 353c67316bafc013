package org.oldwood.calendar;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Items and gardens for the tests of this package. */
public final class Plans {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    public static final UUID GARDEN = UUID.fromString("0b7f0a52-6a3e-4d2c-8b54-0c1f3f3a9d11");

    private Plans() {}

    public static Export.Garden garden(Path folder) { return garden(folder, GARDEN); }

    public static Export.Garden garden(Path folder, UUID id) {
        return new Export.Garden(id, "School terrace", ZoneId.of("Europe/Berlin"), folder, Map.of());
    }

    public static Export export(Path folder) { return export(folder, TODAY); }

    public static Export export(Path folder, LocalDate today) {
        return new Export(garden(folder), Layout.usual(), today, false);
    }

    public static Item item(String identity, String first, String last) {
        return item(identity, first, last, "Cut " + identity);
    }

    public static Item item(String identity, String first, String last, String title) {
        LocalDate start = LocalDate.parse(first);
        return item(identity, new Item.Words(title, "Take out the oldest stems, at the base.", "pruning", "Row A"),
                new Item.Days(start, LocalDate.parse(last), start));
    }

    public static Item item(String identity, Item.Words words, Item.Days days) {
        return new Item(identity, "", List.of(), words, "row-a", days, 0, Item.Progress.OPEN);
    }
}
