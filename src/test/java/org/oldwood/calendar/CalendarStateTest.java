package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.store.Problems;

/** The memory of what was written: read as it was, and no damage to one line costs another. */
class CalendarStateTest {
    private static final Stamp STAMP = new Stamp(3, Instant.parse("2026-11-25T00:00:01Z"));
    private static final LocalDate DAY = LocalDate.of(2026, 12, 24);

    @TempDir
    Path folder;

    @Test
    void what_was_written_is_read() throws IOException {
        Map<String, Remembered> items = items();
        Map<String, String> adopted = Map.of(Uids.name("cut", "todo"), "old \"uid\"@example");

        new CalendarState(items, adopted).write(file());

        Problems problems = new Problems();
        CalendarState read = CalendarState.of(folder, problems);
        assertThat(problems.list()).isEmpty();
        assertThat(read.items()).isEqualTo(items);
        assertThat(read.adopted()).isEqualTo(adopted);
    }

    @Test
    void a_line_from_before_there_were_rounds_had_an_event() throws IOException {
        Files.writeString(file(), """
                {"calendarState":1}
                {"task":"winter-cut@bc-1@2027","sequence":1,"changed":"2026-12-01T00:00:00Z","hash":"9a3f",\
                "shown":"2027-01-10/2027-02-06 2027-01-10/2027-02-05","title":"Cut","category":"pruning",\
                "first":"2027-01-10","last":"2027-02-05","best":"2027-01-12","state":"BEGUN","percent":40}
                """);

        Remembered read = CalendarState.of(folder, new Problems()).items().get("winter-cut@bc-1@2027");

        assertThat(read.event()).isEqualTo(Outgoing.Event.OWN);
        assertThat(read.stamp().sequence()).isEqualTo(1);
        assertThat(read.item().progress()).isEqualTo(Item.Progress.begun(40));
        assertThat(read.item().tasks()).isEmpty();
    }

    @Test
    void no_damage_to_one_line_costs_another_or_is_silent_where_it_costs_this() throws IOException {
        new CalendarState(items(), Map.of()).write(file());
        List<String> good = Files.readAllLines(file());
        String line = good.get(2);
        for (int i = 0; i < line.length(); i++) {
            for (char odd : "\"\\,:}0a \u0001Z".toCharArray()) {
                List<String> lines = new java.util.ArrayList<>(good);
                lines.set(2, line.substring(0, i) + odd + line.substring(i + 1));
                Files.write(file(), lines);

                Problems problems = new Problems();
                CalendarState read = CalendarState.of(folder, problems);

                assertThat(read.items().size() + problems.list().size()).as(lines.get(2)).isEqualTo(items().size());
            }
        }
    }

    private static Map<String, Remembered> items() {
        Map<String, Remembered> items = new TreeMap<>();
        items.put("begun", remembered("begun", "Cut", Item.Progress.begun(40)));
        items.put("cut", remembered("cut", "Cut \"all\" \\ or none", Item.Progress.OPEN));
        items.put("done", remembered("done", "Cut", new Item.Progress(Item.State.DONE, Optional.of(DAY), 0)));
        items.put("größe", remembered("größe", "Größe ±", Item.Progress.OPEN));
        items.put("wide", remembered("wide", "č \uD83E\uDED0", Item.Progress.SKIPPED));
        return items;
    }

    private static Remembered remembered(String identity, String title, Item.Progress progress) {
        LocalDate first = LocalDate.of(2026, 12, 1);
        Item item = new Item(identity, "", List.of("a@" + identity, "b"), new Item.Words(title, "", "pruning", "Row A"),
                "row-a", new Item.Days(first, DAY.plusDays(40), first.plusDays(3)), 0, progress);
        return new Remembered(item, STAMP, Layout.usual().shown(item.days()), "1f", DAY, Outgoing.Event.OFF, true);
    }

    private Path file() { return folder.resolve(CalendarState.FILE); }
}
