package org.oldwood.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oldwood.cli.Main;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Surroundings;
import org.oldwood.page.Desk;

/**
 * Answers the page by running the program's own commands, so that a note from the phone is checked, worded and written
 * as one from the terminal is, and a command on the terminal at the same time is waited for.
 */
final class GardenDesk implements Desk {
    private final GardenCommand command;
    private final List<String> common;

    GardenDesk(GardenCommand command) {
        this.command = command;
        List<String> options =
                new ArrayList<>(List.of("--garden", command.gardenPath().toString()));
        command.givenToday.ifPresent(day -> options.addAll(List.of("--today", day.toString())));
        this.common = List.copyOf(options);
    }

    @Override
    public Object view() throws IOException {
        PageViewer viewer = new PageViewer();
        viewer.takeFrom(command);
        return viewer.view();
    }

    @Override
    public String sheet() throws IOException {
        Path file = Files.createTempFile("oldwood", ".html");
        try {
            Files.delete(file);
            Ran ran = run("", List.of("sheet", "--out", file.toString()));
            return ran.code == 0 ? Files.readString(file) : String.join("\n", ran.said);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    @Override
    public Reply note(String key, List<Map<String, String>> rows) throws IOException {
        Ran ran = run(table(rows), List.of("note", "--csv", "-", "--once", key));
        return new Reply(ran.code == 0, ran.said);
    }

    @Override
    public Reply takeBack(String key, String entry) throws IOException {
        Ran ran = run("", List.of("undo", entry));
        return new Reply(ran.code == 0, ran.said);
    }

    /** Rows as a table of comma-separated values (RFC 4180), which is what many notes at once are read from. */
    static String table(List<Map<String, String>> rows) {
        Set<String> columns = new LinkedHashSet<>();
        rows.forEach(row -> columns.addAll(row.keySet()));
        StringBuilder table = new StringBuilder();
        List<String> names = List.copyOf(columns);
        line(table, names);
        rows.forEach(row -> line(
                table, names.stream().map(name -> row.getOrDefault(name, "")).toList()));
        return table.toString();
    }

    private static void line(StringBuilder table, List<String> cells) {
        List<String> quoted = cells.stream()
                .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                .toList();
        table.append(String.join(",", quoted)).append('\n');
    }

    private record Ran(int code, List<String> said) {}

    private Ran run(String in, List<String> words) {
        List<String> args = new ArrayList<>(words);
        args.addAll(common);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = command.around();
        int code = Main.run(
                args,
                new Surroundings(
                        around.folder(),
                        around.environment(),
                        new ByteArrayInputStream(in.getBytes(UTF_8)),
                        out,
                        err,
                        Surroundings.Hidden.NOBODY));
        List<String> said = new ArrayList<>();
        (out.toString(UTF_8) + err.toString(UTF_8))
                .lines()
                .filter(line -> !line.isBlank())
                .forEach(said::add);
        return new Ran(code, said);
    }
}
