package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.component.VTodo;
import biweekly.util.ICalDate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.words.Dates;

/** A reader that shares no code with ours, biweekly, understands every item as it was meant. */
class IndependentReaderTest {
    private static final String HARD = "Größe č 黒スグリ e\u0301 \uD83E\uDED0\uD83E\uDED0; comma, back\\slash \"quoted\": \\n";

    private static final Layout MANY = new Layout(Layout.Due.LAST_DAY, Optional.of(LocalTime.of(8, 0)),
            EnumSet.allOf(DayOfWeek.class), 2400, 2400);

    @TempDir
    Path folder;

    @Test
    void agrees_on_every_event_and_todo_of_a_year() throws IOException {
        List<Item> plan = year(2400);

        new Export(Plans.garden(folder), MANY, Plans.TODAY, false).pairs(plan, folder, Export.Split.ALL);

        Map<String, VEvent> events = byUid(read("events").getEvents(), e -> e.getUid().getValue());
        Map<String, VTodo> todos = byUid(read("todos").getTodos(), t -> t.getUid().getValue());
        assertThat(events).hasSize(2400);
        assertThat(todos).hasSize(2400);
        Uids uids = new Uids(Plans.GARDEN, Map.of());
        for (Item item : plan) {
            VEvent event = events.get(uids.event(item.identity()));
            agreesOn(item, event.getSummary().getValue(), event.getDescription().getValue());
            agreesOnDays(item, event);
            VTodo todo = todos.get(uids.todo(item.identity()));
            agreesOn(item, todo.getSummary().getValue(), todo.getDescription().getValue());
            agreesOnDue(item, todo);
        }
    }

    @Test
    void the_raw_lines_keep_the_standard() throws IOException {
        Plans.export(folder).pairs(year(60), folder, Export.Split.ALL);

        for (String kind : List.of("events", "todos")) {
            String raw = Files.readString(file(kind));
            assertThat(raw).endsWith("END:VCALENDAR\r\n").doesNotContain("METHOD", "\uFEFF");
            assertThat(raw.replace("\r\n", "")).doesNotContain("\n", "\r");
            assertThat(raw.lines()).allMatch(line -> line.getBytes(UTF_8).length <= 75);
            assertThat(raw.lines()).noneMatch(line -> line.isBlank());
        }
    }

    private static void agreesOn(Item item, String title, String text) {
        assertThat(title).isEqualTo(item.words().title());
        assertThat(text).endsWith(item.words().text()).contains(inWords(item.days().last()));
    }

    private static String inWords(LocalDate day) {
        return day.getDayOfMonth() + " " + Dates.monthName(day) + " " + day.getYear();
    }

    /** DTEND is not included: RFC 5545, 3.6.1. */
    private static void agreesOnDays(Item item, VEvent event) {
        assertThat(day(event.getDateStart().getValue())).isEqualTo(item.days().best());
        assertThat(day(event.getDateEnd().getValue())).isEqualTo(item.days().best().plusDays(1));
        assertThat(event.getTransparency().isTransparent()).isTrue();
        assertThat(event.getAlarms()).hasSizeLessThan(2);
        event.getAlarms().forEach(alarm -> assertThat(alarm.getTrigger().getDuration().getHours()).isEqualTo(8));
    }

    /**
     * DUE is later than DTSTART (3.8.2.3), also of work of one day: without a start it would show all the months
     * before.
     */
    private static void agreesOnDue(Item item, VTodo todo) {
        assertThat(day(todo.getDateDue().getValue())).isEqualTo(item.days().last());
        boolean oneDay = item.days().best().equals(item.days().last());
        assertThat(day(todo.getDateStart().getValue())).isEqualTo(item.days().best().minusDays(oneDay ? 1 : 0));
        assertThat(todo.getStatus().isNeedsAction()).isTrue();
    }

    private static LocalDate day(ICalDate date) {
        assertThat(date.hasTime()).isFalse();
        var raw = date.getRawComponents();
        return LocalDate.of(raw.getYear(), raw.getMonth(), raw.getDate());
    }

    /** Windows of one day to ten weeks, over New Year and a leap day, with hard text. */
    private static List<Item> year(int count) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            LocalDate first = LocalDate.of(2027, 11, 20).plusDays(i % 400);
            LocalDate last = first.plusDays(i % 71);
            items.add(Plans.item("rule-" + i,
                    new Item.Words(i + " " + HARD.repeat(1 + i % 5),
                            "a".repeat(i % 80) + "\n\n" + HARD.repeat(i % 40) + ".", "pruning", "Row; A, " + i),
                    new Item.Days(first, last, first.plusDays(i % 71 / 2))));
        }
        return items;
    }

    private ICalendar read(String kind) throws IOException {
        return Biweekly.parse(Files.readString(file(kind))).first();
    }

    private Path file(String kind) { return folder.resolve("school-terrace-" + kind + ".ics"); }

    private static <T> Map<String, T> byUid(List<T> all, Function<T, String> uid) {
        return all.stream().collect(Collectors.toMap(uid, item -> item));
    }
}
