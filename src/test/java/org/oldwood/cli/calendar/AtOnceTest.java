package org.oldwood.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.calendar.LoopbackServer;
import org.oldwood.cli.command.Cli;
import org.oldwood.cli.record.NotingChild;

/** Two commands for one garden at once, as from a timer and by hand: both end well, and nothing is torn or doubled. */
class AtOnceTest {
    private static final int ROUNDS = 3;

    @TempDir
    Path scratch;

    private Path garden;

    @BeforeEach
    void begin() throws IOException { garden = NotingChild.garden(Files.createDirectory(scratch.resolve("garden"))); }

    @Test
    void two_that_publish_make_each_entry_once_and_keep_what_people_wrote() throws IOException {
        for (int round = 0; round < ROUNDS; round++) {
            Files.deleteIfExists(garden.resolve("calendar-state.jsonl"));
            Files.deleteIfExists(garden.resolve("calendar-servers.jsonl"));
            try (LoopbackServer server = new LoopbackServer()) {
                String address = server.address().toString();
                twice("calendar", "publish", address);
                long entries = server.objects.values().stream().flatMap(String::lines)
                        .filter(line -> line.startsWith("UID:")).distinct().count();
                assertThat(entries).isPositive().isEqualTo(server.objects.size());

                server.objects.replaceAll((path, text) -> text.replace("SUMMARY:", "SUMMARY:Mine "));
                twice("calendar", "publish", address, "--no-reminder");
                assertThat(server.objects.values()).hasSize((int) entries).allMatch(text -> text.contains("Mine "));
                assertThat(run("calendar", "publish", address, "--no-reminder").out())
                        .contains("0 new, 0 changed, 0 removed");
            }
        }
    }

    @Test
    void two_that_write_calendars_leave_whole_ones() throws IOException {
        run("calendar", "--out=good");
        Map<String, String> good = files(garden.resolve("good"));
        Files.delete(garden.resolve("calendar-state.jsonl"));
        for (int round = 0; round < ROUNDS; round++) {
            twice("calendar", "--out=both");
            assertThat(files(garden.resolve("both"))).isEqualTo(good);
        }
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }

    private void twice(String... command) {
        CompletableFuture<Cli.Result> other = CompletableFuture.supplyAsync(() -> run(command));
        run(command);
        other.join();
    }

    private Cli.Result run(String... command) {
        String[] dated = Stream.concat(Stream.of(command), Stream.of("--today=2026-11-25")).toArray(String[]::new);
        Cli.Result result = Cli.in(garden).run(dated);
        assertThat(result.exit()).as(result.err()).isZero();
        return result;
    }
}
