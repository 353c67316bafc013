package org.oldwood.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/** A garden of currants and canes on a slope, and what is done to its record from the command line. */
abstract class Slope {
    static final String FEED = "feed-first@blackcurrant-bed.blackcurrant.stool@2027";
    static final String MARCH = "--today=2027-03-20";

    @TempDir
    Path folder;

    @BeforeEach
    void start() {
        ok("start", ".", "--name=Slope", "--at=52.1,-2.3", "--plants=blackcurrant=4,summer-raspberry=10",
                "--planted=2021", "--zone=Europe/London", "--today=2026-11-20");
        ok("note", "counted", "blackcurrant-1", "--stems=1=5,2=4,3=4,4+=3", "--today=2026-11-25");
    }

    final Cli.Result run(String... args) { return Cli.in(folder).run(args); }

    final String ok(String... args) {
        Cli.Result result = run(args);
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }

    final List<String> journal(String kind) throws IOException {
        return Files.readAllLines(folder.resolve("journal.jsonl")).stream()
                .filter(line -> line.contains("\"entry\":\"" + kind + "\"")).toList();
    }

    static String id(String line) { return line.replaceFirst(".*?\"id\":\"([^\"]+)\".*", "$1"); }
}
