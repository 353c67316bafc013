package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/**
 * A bed that is given another name, or another id, between two exports: RFC 5545, 3.8.4.7 (a UID is for ever), 3.8.1.11
 * (CANCELLED), 3.8.7.4 (SEQUENCE).
 */
class RenamedBedTest {
    @TempDir
    Path folder;

    @BeforeEach
    void begin() {
        run("start", ".", "--name=Terrace", "--at=52,-2", "--plants=blackcurrant=2,redcurrant=2", "--planted=2021",
                "--zone=Europe/London");
    }

    @Test
    void another_name_keeps_every_uid_and_revision_and_leaves_no_old_name() throws IOException {
        rename("\"id\": \"blackcurrant-bed\"", "\"id\": \"blackcurrant-bed\", \"name\": \"Old row\"");
        Map<String, String> before = exported("2026-11-25");

        rename("Old row", "New row");
        Map<String, String> after = exported("2026-11-25");

        assertThat(before.values()).anyMatch(item -> item.contains("Old row"));
        assertThat(after.keySet()).isEqualTo(before.keySet());
        assertThat(after.values()).noneMatch(item -> item.contains("Old row"))
                .allMatch(item -> item.contains("SEQUENCE:0\n")).noneMatch(item -> item.contains("STATUS:CANCELLED"));
    }

    @Test
    void another_id_withdraws_what_stood_under_the_old_and_doubles_nothing() throws IOException {
        Map<String, String> before = exported("2026-11-25");

        rename("blackcurrant-bed", "slope");
        Map<String, String> after = exported("2026-11-25");

        Set<String> gone = new HashSet<>();
        for (String uid : before.keySet()) {
            assertThat(after).as("nothing vanishes unsaid").containsKey(uid);
            String item = after.get(uid);
            if (item.contains("STATUS:CANCELLED")) {
                gone.add(uid);
                assertThat(item).contains("SUMMARY:Withdrawn: ", "SEQUENCE:1\n").doesNotContain("VALARM");
            } else {
                assertThat(steady(item)).isEqualTo(steady(before.get(uid)));
            }
        }
        assertThat(gone).as("the bed's own tasks; rounds know no bed").isNotEmpty().hasSizeLessThan(before.size() / 2);
        assertThat(standing(after)).as("no ghosts").doesNotHaveDuplicates();
        assertThat(standing(after)).containsExactlyInAnyOrderElementsOf(asNew("2026-11-25"));
    }

    @Test
    void the_old_id_again_brings_the_old_uids_back() throws IOException {
        Map<String, String> before = exported("2026-11-25");
        rename("blackcurrant-bed", "slope");
        exported("2026-11-25");

        rename("slope", "blackcurrant-bed");
        Map<String, String> after = exported("2026-11-25");

        Map<String, String> back = new HashMap<>(after);
        back.values().removeIf(item -> item.contains("STATUS:CANCELLED"));
        assertThat(back.keySet()).isEqualTo(before.keySet());
    }

    @Test
    void split_by_bed_the_old_file_goes_with_what_it_held() throws IOException {
        run("calendar", "--out=by", "--by=bed", "--today=2026-11-25");
        Path old = folder.resolve("by/terrace-blackcurrant-bed-todos.ics");
        Set<String> held = items(old).keySet();

        rename("blackcurrant-bed", "slope");
        Cli.Result result = Cli.in(folder).run("calendar", "--out=by", "--by=bed", "--today=2026-11-25");

        assertThat(result.err()).contains("terrace-blackcurrant-bed-todos.ics held nothing any more and was removed");
        assertThat(old).doesNotExist();
        Map<String, String> now = items(folder.resolve("by/terrace-slope-todos.ics"));
        assertThat(now.keySet()).containsAll(held);
        assertThat(now.values()).noneMatch(item -> item.contains("STATUS:CANCELLED"));
    }

    /**
     * What stays of a round when its bed is called otherwise, so that its title has more room or less, and beds come in
     * another order; SEQUENCE is in it.
     */
    private static String steady(String item) {
        return item.replaceAll("(DTSTAMP|LAST-MODIFIED|LOCATION|SUMMARY):.*\n", "").replace("slope", "blackcurrant-bed")
                .lines().flatMap(line -> Stream.of(line.split("\\\\n| "))).sorted().collect(Collectors.joining("\n"));
    }

    /** What is planned, by days and title: one line an open to-do. */
    private static List<String> standing(Map<String, String> items) {
        return items.values().stream().filter(item -> !item.contains("STATUS:CANCELLED")).map(item -> item.lines()
                .filter(line -> line.matches("(DTSTART|DUE|SUMMARY|LOCATION).*")).toList().toString()).toList();
    }

    /** What a calendar would hold that never knew the old id. */
    private List<String> asNew(String today) throws IOException {
        Files.delete(folder.resolve("calendar-state.jsonl"));
        return standing(exported(today));
    }

    private Map<String, String> exported(String today) throws IOException {
        run("calendar", "--out=.", "--each", "--today=" + today);
        return items(folder.resolve("terrace-todos.ics"));
    }

    private static Map<String, String> items(Path file) throws IOException {
        Map<String, String> items = new HashMap<>();
        String text = Files.readString(file).replace("\r\n ", "").replace("\r\n", "\n");
        for (String part : text.split("(?=BEGIN:VTODO)")) {
            if (part.startsWith("BEGIN:VTODO")) {
                String uid = part.replaceFirst("(?s).*?UID:(\\S+).*", "$1");
                assertThat(items.put(uid, part)).as("one item a UID").isNull();
            }
        }
        return items;
    }

    private void rename(String from, String to) throws IOException {
        for (String name : List.of("garden.json", "journal.jsonl")) {
            Path file = folder.resolve(name);
            Files.writeString(file, Files.readString(file).replace(from, to));
        }
    }

    private void run(String... args) {
        boolean isDated = String.join(" ", args).contains("--today");
        String[] all = java.util.Arrays.copyOf(args, args.length + (isDated ? 0 : 1));
        if (!isDated) { all[args.length] = "--today=2026-11-25"; }
        Cli.Result result = Cli.in(folder).run(all);
        assertThat(result.exit()).as(result.err()).isZero();
    }
}
