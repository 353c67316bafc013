package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.store.Problems;

/** The short way through a memory just as we write it, held against the reader of every form. */
class CalendarStateTest {
    private static final Stamp STAMP = new Stamp(3, Instant.parse("2026-11-25T00:00:01Z"));
    private static final LocalDate DAY = LocalDate.of(2026, 12, 24);

    @TempDir
    Path folder;

    @Test
    void what_was_written_is_read() throws IOException {
        Map<String, Remembered> tasks = tasks();
        Map<String, String> adopted = Map.of(Uids.name("cut", "todo"), "old \"uid\"@example");

        new CalendarState(tasks, adopted).write(file());

        Problems problems = new Problems();
        CalendarState read = CalendarState.of(folder, problems);
        assertThat(problems.list()).isEmpty();
        assertThat(read.tasks()).isEqualTo(tasks);
        assertThat(read.adopted()).isEqualTo(adopted);
    }

    @Test
    void lines_as_we_write_them_are_read_the_short_way() throws IOException {
        new CalendarState(tasks(), Map.of()).write(file());

        assertThat(known().shortWay).containsExactlyElementsOf(tasks().keySet());
    }

    @Test
    void an_odd_line_is_never_read_otherwise_than_by_the_reader_of_every_form() throws IOException {
        new CalendarState(Map.of("done", remembered("done", "Cut", done())), Map.of()).write(file());
        byte[] good = Files.readAllBytes(file());
        int accepted = 0;
        for (int i = good.length - 2; good[i] != '\n'; i--) {
            for (char c : "\"\\,:}0a \n\r\u0001Zé".toCharArray()) {
                byte[] odd = good.clone();
                odd[i] = (byte) c;
                Files.write(file(), odd);
                Known known = known();
                Problems problems = new Problems();
                CalendarState whole = CalendarState.of(folder, problems);
                assertThat(known.lines).as(new String(odd, UTF_8)).isEqualTo(said(whole));
                assertThat(known.problems.list()).isEqualTo(problems.list());
                accepted += known.shortWay.size();
            }
        }
        assertThat(accepted).isPositive();
    }

    @Test
    void a_memory_longer_than_the_buffer_is_read_to_its_end() throws IOException {
        Map<String, Remembered> tasks = new LinkedHashMap<>();
        for (int i = 10_000; i < 12_000; i++) {
            String title = "Cut " + "x".repeat(i % 700);
            tasks.put("cut-" + i, remembered("cut-" + i, title, Item.Progress.OPEN));
        }
        tasks.put("long", remembered("long", "x".repeat(200_000), Item.Progress.OPEN));
        new CalendarState(tasks, Map.of()).write(file());

        assertThat(CalendarState.of(folder, new Problems()).tasks()).isEqualTo(tasks);
        assertThat(known().shortWay).containsExactlyElementsOf(tasks.keySet());
    }

    private static Map<String, Remembered> tasks() {
        Map<String, Remembered> tasks = new LinkedHashMap<>();
        tasks.put("begun", remembered("begun", "Cut", Item.Progress.begun(40)));
        tasks.put("cut", remembered("cut", "Cut \"all\" \\ or none", Item.Progress.OPEN));
        tasks.put("done", remembered("done", "Cut", done()));
        tasks.put("größe", remembered("größe", "Größe ±", Item.Progress.OPEN));
        tasks.put("wide", remembered("wide", "č \uD83E\uDED0", Item.Progress.SKIPPED));
        return tasks;
    }

    private static Item.Progress done() {
        return new Item.Progress(Item.State.DONE, Optional.of(DAY), 0);
    }

    private static Remembered remembered(String identity, String title, Item.Progress progress) {
        Item item = Plans.item(identity, "2026-12-01", "2027-02-05", title).with(progress);
        return Remembered.of(item, STAMP, Layout.usual());
    }

    private Path file() {
        return folder.resolve(CalendarState.FILE);
    }

    private Known known() throws IOException {
        Known known = new Known();
        CalendarState.each(folder, known.problems, known, new LinkedHashMap<>());
        return known;
    }

    private static Map<String, String> said(CalendarState state) {
        Map<String, String> said = new LinkedHashMap<>();
        state.tasks().forEach((identity, task) -> said.put(identity, Known.said(task)));
        return said;
    }

    /** Takes every line the short way where it can be gone. */
    private static final class Known implements CalendarState.Sink {
        final Problems problems = new Problems();
        final Map<String, String> lines = new LinkedHashMap<>();
        final List<String> shortWay = new ArrayList<>();

        @Override
        public boolean takes(StateLine line) {
            boolean isShown = line.shown().equals(Shown.of(line.days(), Layout.usual()));
            String said = said(line.stamp(), line.hash(), line.days(), line.state(), isShown);
            lines.put(line.identity(), said);
            shortWay.add(line.identity());
            return true;
        }

        @Override
        public void takes(Remembered task) {
            lines.put(task.item().identity(), said(task));
        }

        static String said(Remembered task) {
            Item item = task.item();
            boolean isShown = task.shown().equals(Shown.of(item.days(), Layout.usual()));
            return said(task.stamp(), task.hash(), item.days(), item.progress().state(), isShown);
        }

        private static String said(Stamp stamp, long hash, Item.Days days, Item.State state, boolean isShown) {
            return stamp + " " + hash + " " + days + " " + state + " " + isShown;
        }
    }
}
