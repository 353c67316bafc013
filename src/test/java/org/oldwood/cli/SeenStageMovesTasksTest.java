package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;

/** A stage seen ten days early moves every later stage, and the tasks in the next calendar. */
class SeenStageMovesTasksTest {
    @TempDir
    Path folder;

    private record Days(String title, LocalDate first, int sequence) {}

    private void garden(double latitude, String climate, String planted) throws IOException {
        Files.writeString(folder.resolve("garden.json"), """
                {"format": 1, "name": "G", "id": "5b1c2a8e-3c5b-4f7e-9a55-0c2f6f0a1b2c",
                 "site": {"latitude": %s, "longitude": 0, "zone": "UTC"}, "climate": "%s",
                 "beds": [{"id": "a", "areaM2": 9, "texture": "loam"}]}
                """.formatted(latitude, climate));
        Files.writeString(folder.resolve("journal.jsonl"), """
                {"id":"e1","date":"%1$s","entry":"planted","plant":"bc","crop":"blackcurrant","bed":"a","bushes":3}
                {"id":"e2","date":"%1$s","entry":"planted","plant":"rc","crop":"redcurrant","bed":"a","bushes":2}
                """.formatted(planted));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({"52.2, cambridge, 2021-11-20, 2027-01-02", "-43.5, christchurch, 2021-05-20, 2026-07-02"})
    void moves_every_later_window(double latitude, String climate, String planted, LocalDate winter)
            throws IOException {
        garden(latitude, climate, planted);
        LocalDate seen = stages(winter).get("bud-swell").minusDays(10);
        Map<String, LocalDate> stagesBefore = stages(seen);
        Map<String, Days> before = export(seen);

        Cli.Result note = Cli.in(folder).run("note", "seen", "--crop", "blackcurrant", "--stage", "bud-swell",
                "--today", seen.toString());
        assertThat(note.err()).doesNotContain("Usage");
        assertThat(note.exit()).isZero();
        Map<String, LocalDate> stagesAfter = stages(seen);
        Map<String, Days> after = export(seen);

        for (String stage : stagesBefore.keySet()) {
            int days = switch (stage) {
                case "dormant" -> 0;
                case "leaf-fall-begins", "leaf-fall-done" -> 3;
                default -> 10;
            };
            assertThat(stagesAfter.get(stage)).as(stage).isEqualTo(stagesBefore.get(stage).minusDays(days));
        }
        assertMoved(before, after, "Watch for frost while blackcurrants flower", 10);
        assertMoved(before, after, "Net blackcurrants", 10);
        assertMoved(before, after, "Pick blackcurrants", 10);
        assertMoved(before, after, "Feed blackcurrants", 10);
        assertMoved(before, after, "Pick red currants", 0);
        assertThat(one(after, "Pick blackcurrants").sequence()).isEqualTo(1);
        assertThat(one(after, "Pick red currants").sequence()).isZero();
    }

    /** The same garden with no climate: the calendar's dates move too. */
    @Test
    void moves_a_garden_without_a_climate() throws IOException {
        garden(52.2, "cambridge", "2021-11-20");
        Path file = folder.resolve("garden.json");
        Files.writeString(file, Files.readString(file).replace("\"climate\": \"cambridge\",", ""));
        LocalDate seen = stages(LocalDate.of(2027, 1, 2)).get("bud-swell").minusDays(10);
        Map<String, Days> before = export(seen);

        Cli.in(folder).run("note", "seen", "--crop", "blackcurrant", "--stage", "03", "--today", seen.toString());

        assertMoved(before, export(seen), "Pick blackcurrants", 10);
    }

    /** In a late spring both dressings come later, and the first is over before the second, which tells all the rest. */
    @Test
    void the_first_dressing_ends_before_the_second_begins() throws IOException {
        garden(60, "saint-petersburg", "2021-11-20");
        Cli.in(folder).run("note", "seen", "--crop", "blackcurrant", "--stage", "bud-burst", "--date", "2027-05-10",
                "--today", "2027-05-18");
        Cli.in(folder).run("note", "fed", "--bed", "a", "--material", "dried-blood", "--grams", "100", "--today",
                "2027-05-18");

        assertThat(tasks("2027-05-19")).contains("2027 to 31 May 2027, both included, ±", "feed-second@a.blackcurrant");
        assertThat(tasks("2027-06-01").split("Not noted as done", 2)[0])
                .contains("feed-second@a.blackcurrant.stool@2027")
                .doesNotContain("feed-first@a.blackcurrant.stool@2027");
    }

    private String tasks(String today) { return Cli.in(folder).run("tasks", "year", "--each", "--today", today).out(); }

    private static void assertMoved(Map<String, Days> before, Map<String, Days> after, String title, int days) {
        assertThat(one(after, title).first()).as(title).isEqualTo(one(before, title).first().minusDays(days));
    }

    private static Days one(Map<String, Days> items, String title) {
        return items.values().stream().filter(item -> item.title().startsWith(title)).findFirst()
                .orElseThrow(() -> new AssertionError("no " + title));
    }

    private Map<String, LocalDate> stages(LocalDate today) {
        String json = Cli.in(folder).run("stages", "blackcurrant", "--json", "--today", today.toString()).out();
        Map<String, LocalDate> dates = new LinkedHashMap<>();
        String stage = "";
        for (String line : json.lines().map(String::strip).toList()) {
            String value = line.replaceAll(".*: \"|\",?$", "");
            if (line.startsWith("\"stage\"") && !json.contains("\"harm" + line)) {
                stage = value;
            } else if (line.startsWith("\"date\"")) { dates.put(stage, LocalDate.parse(value)); }
        }
        assertThat(dates).hasSize(10);
        return dates;
    }

    /** Events by UID, out of the file that {@code calendar} writes. */
    private Map<String, Days> export(LocalDate today) throws IOException {
        Path out = folder.resolve("out");
        Cli.Result run = Cli.in(folder).run("calendar", "--each", "--out", out.toString(), "--today", today.toString());
        assertThat(run.exit()).as(run.err()).isZero();
        Path file;
        try (var files = Files.list(out)) {
            file = files.filter(path -> path.toString().endsWith("todos.ics")).findFirst().orElseThrow();
        }
        String text = Files.readString(file).replace("\r\n ", "");
        Map<String, Days> items = new LinkedHashMap<>();
        for (String item : text.split("BEGIN:VTODO")) {
            // a task's; a round's title may begin with the same words
            if (item.contains("DESCRIPTION:From") && item.contains("RELATED-TO")) {
                items.put(field(item, "UID:"), new Days(field(item, "SUMMARY:"),
                        firstGoodDay(field(item, "DESCRIPTION:")), Integer.parseInt(field(item, "SEQUENCE:"))));
            }
        }
        return items;
    }

    /** {@code From 3 to 9 May 2027}, {@code from 3 Apr to 9 May 2027}, {@code from 3 December 2026 to 9 May 2027}. */
    private static LocalDate firstGoodDay(String text) {
        Matcher words = Pattern.compile("From (\\d+) ?(\\w{3})?\\w* ?(\\d+)? to \\d+ (\\w{3})\\w* (\\d+)\\..*")
                .matcher(text);
        assertThat(words.matches()).as(text).isTrue();
        String month = words.group(2) == null ? words.group(4) : words.group(2);
        String year = words.group(3) == null ? words.group(5) : words.group(3);
        return LocalDate.parse(words.group(1) + month + year, DateTimeFormatter.ofPattern("dMMMuuuu", Locale.ENGLISH));
    }

    private static String field(String item, String name) {
        int at = item.indexOf("\r\n" + name) + 2 + name.length();
        return item.substring(at, item.indexOf("\r\n", at));
    }
}
