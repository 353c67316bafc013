package org.oldwood.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/** Calendars of rounds, as a person keeps them over a year. */
class RoundCalendarTest {
    private static final String TODAY = "--today=2026-11-25";
    private static final Path OLD = Path.of("src/test/resources/calendar/one-item-a-task");
    private static final int MOST_EVENTS = 70;
    private static final int MOST_A_DAY = 3;
    private static final int MOST_A_WEEK = 4;
    private static final int LONGEST_TITLE = 40;
    private static final int LONGEST_MEDIAN = 500;
    private static final int FIRST_WORDS = 300;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void a_demo_garden_asks_no_more_than_a_person_can_do(String name) throws IOException {
        copy(Path.of("demo-data", name));

        List<Map<String, String>> events = items("events", calendar(TODAY));

        Map<LocalDate, Long> days = events.stream()
                .collect(Collectors.groupingBy(RoundCalendarTest::day, Collectors.counting()));
        Map<LocalDate, Long> weeks = events.stream().collect(Collectors.groupingBy(
                event -> day(event).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)), Collectors.counting()));
        assertThat(events.stream().filter(event -> day(event).isBefore(LocalDate.of(2027, 11, 25))))
                .hasSizeBetween(MOST_EVENTS / 2, MOST_EVENTS);
        assertThat(days.values()).allMatch(number -> number <= MOST_A_DAY);
        assertThat(weeks.values()).allMatch(number -> number <= MOST_A_WEEK);
        assertThat(events.stream().filter(event -> event.containsKey("ALARM")).map(RoundCalendarTest::day))
                .doesNotHaveDuplicates().hasSize(days.size());
        assertThat(events).allMatch(event -> event.get("SUMMARY").length() <= LONGEST_TITLE);
        List<Integer> lengths = events.stream().map(event -> event.get("DESCRIPTION").length()).sorted().toList();
        assertThat(lengths.get(lengths.size() / 2)).isLessThan(LONGEST_MEDIAN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void the_first_words_tell_until_when_and_one_caution(String name) throws IOException {
        copy(Path.of("demo-data", name));

        for (Map<String, String> todo : items("todos", calendar(TODAY))) {
            String text = todo.get("DESCRIPTION");
            assertThat(text).matches("(?s)(From .* to|On) \\d+ [A-Z][a-z]+ 20\\d\\d[.].*");
            int caution = text.indexOf("Take care: ");
            if (caution >= 0) {
                assertThat(caution).as(text).isLessThan(FIRST_WORDS);
                assertThat(text.indexOf("Take care: ", caution + 1)).as("one line").isNegative();
            }
            assertThat(text).contains("More: oldwood tasks ").doesNotContain("Source:");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"terrace-school", "fire-station-hedges"})
    void each_task_of_the_plan_is_in_one_round_or_is_optional_and_named(String name) throws IOException {
        copy(Path.of("demo-data", name));
        Cli.Result written = calendar(TODAY, "--each");

        Set<String> planned = new TreeSet<>();
        String json = Cli.in(folder).run("tasks", "--each", "--json", TODAY).out();
        for (JsonNode task : new ObjectMapper().readTree(json).get("tasks")) {
            if (task.get("state").asText().equals("open")) { planned.add(task.get("id").asText()); }
        }
        List<String> told = new ArrayList<>();
        for (Map<String, String> todo : items("todos", written)) {
            Matcher id = Pattern.compile("oldwood why (\\S+)$").matcher(todo.get("DESCRIPTION"));
            if (id.find()) {
                told.add(id.group(1));
                assertThat(todo).containsKey("RELATED-TO");
            }
        }
        assertThat(planned).hasSizeGreaterThan(100);
        assertThat(told).doesNotHaveDuplicates();
        planned.removeAll(told);
        assertThat(planned).allMatch(id -> id.matches("(strike|layer|tip-layer|dig-suckers).*"));
        assertThat(written.err().replaceAll("\\s+", " ")).contains("Left out", "More gooseberries");
    }

    @Test
    void a_year_of_a_garden_keeps_uids_and_doubles_nothing() throws IOException {
        Files.writeString(folder.resolve("garden.json"), Files.readString(OLD.resolve("garden.json")));
        Files.writeString(folder.resolve("journal.jsonl"), Files.readAllLines(OLD.resolve("journal.jsonl")).stream()
                .limit(4).collect(Collectors.joining("\n", "", "\n")));
        Map<String, String> before = titles(items("todos", calendar(TODAY)));

        note("planted", "--plant=bc-9", "--crop=blackcurrant", "--bed=long-bed", "--form=stool", "--date=2025-11-20");
        note("grubbed", "--plant=bc-2", "--date=2026-12-20", "--today=2026-12-20");
        List<Map<String, String>> after = items("todos", calendar("--today=2027-01-03"));

        String cut = before.keySet().stream().filter(uid -> before.getOrDefault(uid, "").contains("blackcurrants"))
                .findFirst().orElseThrow();
        assertThat(titles(after)).containsKey(cut);
        assertThat(after.stream().map(todo -> todo.get("UID"))).doesNotHaveDuplicates();
        assertThat(standing(after)).doesNotHaveDuplicates();
    }

    @Test
    void a_ticked_round_settles_its_tasks_and_a_part_leaves_the_rest_open() throws IOException {
        copy(OLD);
        Files.delete(folder.resolve("calendar-state.jsonl"));
        List<Map<String, String>> todos = items("todos", calendar("--today=2026-12-02"));
        Map<String, String> cut = named(todos, "blackcurrants");
        note("done", "count-stems@bc-1@2027", "--today=2026-12-02");

        Map<String, String> part = named(items("todos", calendar("--today=2026-12-02")), "blackcurrants");
        assertThat(part.get("UID")).isEqualTo(cut.get("UID"));
        assertThat(part.get("STATUS")).isEqualTo("IN-PROCESS");
        assertThat(part.get("DESCRIPTION")).contains("Done already: 1 of ");

        tick(part.get("UID"));
        Cli.Result read = Cli.in(folder).run("calendar", "read", "out/mill-lane-todos.ics", "--yes",
                "--today=2026-12-06");
        assertThat(read.exit()).as(read.err()).isZero();
        String journal = Files.readString(folder.resolve("journal.jsonl"));
        assertThat(journal).contains("\"task\":\"winter-cut@bc-1@2027\"", "\"task\":\"winter-cut@bc-2@2027\"");
        Map<String, String> all = named(items("todos", calendar("--today=2026-12-06")), "blackcurrants");
        assertThat(all.get("UID")).isEqualTo(cut.get("UID"));
        assertThat(all.get("STATUS")).isEqualTo("COMPLETED");
        assertThat(
                Cli.in(folder).run("calendar", "read", "out/mill-lane-todos.ics", "--yes", "--today=2026-12-06").err())
                .contains("nothing new to note");
    }

    /** The calendar and the memory of the version that had an item for each task. */
    @Test
    void the_change_of_units_leaves_no_doubles_and_writes_nothing_anew_after_it() throws IOException {
        copy(OLD);
        Set<String> old = uids(Files.readString(OLD.resolve("mill-lane-todos.ics")));

        List<Map<String, String>> todos = items("todos", calendar("--today=2026-12-02"));
        String again = Files.readString(folder.resolve("out/mill-lane-todos.ics"));
        calendar("--today=2026-12-02");

        List<Map<String, String>> stillOld = todos.stream().filter(todo -> old.contains(todo.get("UID"))).toList();
        assertThat(stillOld).hasSizeGreaterThan(50).allMatch(todo -> todo.get("STATUS").equals("CANCELLED"));
        assertThat(standing(todos)).doesNotHaveDuplicates().hasSizeGreaterThan(20);
        assertThat(todos.stream().filter(todo -> todo.get("STATUS").equals("COMPLETED")))
                .as("what was done stays under its old item alone").isEmpty();
        assertThat(Files.readString(folder.resolve("out/mill-lane-todos.ics"))).isEqualTo(again);
    }

    @Test
    void what_was_ticked_in_an_older_calendar_is_read_after_the_change_of_units() throws IOException {
        copy(OLD);
        calendar("--today=2026-12-02");
        Path older = folder.resolve("older.ics");
        String text = Files.readString(OLD.resolve("mill-lane-todos.ics"));
        int at = text.indexOf("SUMMARY:Count the stems of blackcurrant bc-2");
        Files.writeString(older, text.substring(0, at) + text.substring(at).replaceFirst("STATUS:NEEDS-ACTION",
                "STATUS:COMPLETED\r\nCOMPLETED:20261201T100000Z"));

        Cli.Result read = Cli.in(folder).run("calendar", "read", "older.ics", "--yes", "--today=2026-12-02");

        assertThat(read.exit()).as(read.err()).isZero();
        assertThat(Files.readString(folder.resolve("journal.jsonl")))
                .contains("\"date\":\"2026-12-01\",\"entry\":\"done\",\"task\":\"count-stems@bc-2@2027\"");
    }

    private void copy(Path garden) throws IOException {
        for (String name : List.of("garden.json", "journal.jsonl", "calendar-state.jsonl")) {
            if (Files.exists(garden.resolve(name))) { Files.copy(garden.resolve(name), folder.resolve(name)); }
        }
    }

    private Cli.Result calendar(String... options) {
        List<String> all = new ArrayList<>(List.of("calendar", "--out=out"));
        all.addAll(List.of(options));
        Cli.Result result = Cli.in(folder).run(all.toArray(String[]::new));
        assertThat(result.exit()).as(result.err()).isZero();
        return result;
    }

    private void note(String... words) {
        List<String> all = new ArrayList<>(List.of("note"));
        all.addAll(List.of(words));
        if (all.stream().noneMatch(word -> word.startsWith("--today"))) { all.add(TODAY); }
        Cli.Result result = Cli.in(folder).run(all.toArray(String[]::new));
        assertThat(result.exit()).as(result.err()).isZero();
    }

    private void tick(String uid) throws IOException {
        Path file = folder.resolve("out/mill-lane-todos.ics");
        String text = Files.readString(file);
        int at = text.indexOf("UID:" + uid);
        Files.writeString(file, text.substring(0, at)
                + text.substring(at).replaceFirst("STATUS:[A-Z-]+", "STATUS:COMPLETED\r\nCOMPLETED:20261205T100000Z"));
    }

    /** The items of the file of a kind, unfolded and unescaped, by property. */
    private List<Map<String, String>> items(String kind, Cli.Result written) throws IOException {
        assertThat(written.exit()).isZero();
        Path file;
        try (var files = Files.list(folder.resolve("out"))) {
            file = files.filter(path -> path.toString().endsWith(kind + ".ics")).findFirst().orElseThrow();
        }
        List<Map<String, String>> items = new ArrayList<>();
        for (String part : Files.readString(file).replace("\r\n ", "").split("BEGIN:V(EVENT|TODO)\r\n")) {
            Map<String, String> item = new HashMap<>();
            for (String line : part.split("\r\n")) {
                if (line.equals("BEGIN:VALARM")) { item.put("ALARM", "yes"); }
                item.putIfAbsent(line.split("[:;]", 2)[0], value(line));
            }
            items.add(item);
        }
        return items.subList(1, items.size());
    }

    private static String value(String line) {
        return line.substring(line.indexOf(':') + 1).replace("\\n", "\n").replace("\\", "");
    }

    private static LocalDate day(Map<String, String> event) {
        return LocalDate.parse(event.getOrDefault("DTSTART", ""), DateTimeFormatter.BASIC_ISO_DATE);
    }

    private static Map<String, String> named(List<Map<String, String>> items, String title) {
        return items.stream().filter(item -> item.getOrDefault("SUMMARY", "").contains(title))
                .filter(item -> !item.getOrDefault("STATUS", "").equals("CANCELLED")).findFirst().orElseThrow();
    }

    private static List<String> standing(List<Map<String, String>> items) {
        return items.stream().filter(item -> !item.getOrDefault("STATUS", "").equals("CANCELLED"))
                .map(item -> item.get("SUMMARY") + item.get("DUE")).toList();
    }

    private static Map<String, String> titles(List<Map<String, String>> items) {
        return items.stream().filter(item -> !item.getOrDefault("STATUS", "").equals("CANCELLED")).collect(
                Collectors.toMap(item -> item.getOrDefault("UID", ""), item -> item.getOrDefault("SUMMARY", "")));
    }

    private static Set<String> uids(String file) {
        Set<String> uids = new HashSet<>();
        file.lines().filter(line -> line.startsWith("UID:")).skip(1).forEach(line -> uids.add(line.substring(4)));
        return uids;
    }
}
