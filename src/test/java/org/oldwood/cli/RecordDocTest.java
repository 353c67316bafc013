package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;
import org.oldwood.garden.EntryKind;

/** The examples in {@code docs/record.md} work, and its table of entries is the program's own. */
class RecordDocTest {
    private static final Path PAGE = Path.of("docs/record.md");
    private static final String KINDS = "<!-- kinds -->\n";
    private static final List<String> BOOKED = List.of("tick", "planned");

    @TempDir
    Path folder;

    private static String example(String name) throws IOException {
        String page = Files.readString(PAGE);
        int mark = page.indexOf("<!-- example: " + name + " -->");
        assertThat(mark).as(name).isPositive();
        int start = page.indexOf('\n', page.indexOf("```", mark)) + 1;
        return page.substring(start, page.indexOf("```", start));
    }

    @Test
    void the_example_garden_is_good() throws IOException {
        for (String name : List.of("garden.json", "journal.jsonl", "notes.csv")) {
            Files.writeString(folder.resolve(name), example(name));
        }

        assertThat(Cli.in(folder).run("check", "--today=2026-11-25")).isEqualTo(new Cli.Result(0, "", ""));
        Cli.Result noted = Cli.in(folder).run("note", "--csv=notes.csv", "--today=2026-11-25");
        assertThat(noted.exit()).as(noted.err()).isZero();
    }

    @Test
    void the_example_stock_list_starts_a_garden() throws IOException {
        Files.writeString(folder.resolve("stock.csv"), example("stock.csv"));

        Cli.Result result = Cli.in(folder).run("start", "new", "--name=New", "--at=52,-2", "--stock=stock.csv",
                "--planted=2021", "--zone=Europe/London");

        assertThat(result.exit()).as(result.err()).isZero();
    }

    @Test
    void the_table_of_entries_is_the_programs_own() throws IOException {
        String page = Files.readString(PAGE);
        int start = page.indexOf(KINDS) + KINDS.length();
        int end = page.indexOf("\n## ", start);
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(PAGE, page.substring(0, start) + table() + page.substring(end));
            return;
        }
        assertThat(page.substring(start, end)).isEqualTo(table());
    }

    private static String table() {
        StringBuilder table = new StringBuilder("\n");
        for (EntryKind kind : EntryKind.values()) {
            String keys = kind.fields().stream().filter(field -> !BOOKED.contains(field.key()))
                    .map(field -> "`%s`%s".formatted(field.key(), field.required() ? "\\*" : ""))
                    .collect(Collectors.joining(" "));
            String one = kind.oneNeeded().isEmpty() ? "" : "; one of " + String.join(", ", kind.oneNeeded());
            table.append("- `%s`, %s: %s%s\n".formatted(kind.key(), kind.meaning(), keys, one));
        }
        return table.toString();
    }
}
