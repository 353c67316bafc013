package org.oldwood.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.oldwood.cli.Main;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.command.Surroundings;
import org.oldwood.page.Desk;
import org.oldwood.store.Csv;
import org.oldwood.store.JsonText;

/**
 * Answers the page by running the program's own commands, so that a note from the phone is checked, worded and written
 * as one from the terminal is, and a command on the terminal at the same time is waited for.
 */
final class GardenDesk implements Desk {
    private static final String RECEIPT = "([0-9]+ entr.*)?noted (in|already).*|nothing new.*";

    private final GardenCommand command;
    private final List<String> common;
    private Object shown = "";
    private String shownAt = "";

    GardenDesk(GardenCommand command) {
        this.command = command;
        List<String> options = new ArrayList<>(List.of("--garden", command.gardenPath().toString()));
        command.givenToday.ifPresent(day -> options.addAll(List.of("--today", day.toString())));
        command.givenUnits.ifPresent(key -> options.addAll(List.of("--units", key)));
        this.common = List.copyOf(options);
    }

    @Override
    public Object view() throws IOException {
        String now = stamp();
        if (!now.equals(shownAt)) {
            PageViewer viewer = new PageViewer();
            viewer.takeFrom(command);
            PageView view = viewer.view();
            shown = JsonText.told(view, viewer.wording()::said);
            shownAt = now;
        }
        return shown;
    }

    @Override
    public String stamp() throws IOException {
        PageViewer viewer = new PageViewer();
        viewer.takeFrom(command);
        StringBuilder stamp = new StringBuilder(viewer.today().toString());
        try (DirectoryStream<Path> files = Files.newDirectoryStream(command.gardenPath(), "*.{json,jsonl,csv}")) {
            for (Path file : files) {
                stamp.append(' ').append(Files.getLastModifiedTime(file).toMillis()).append('+')
                        .append(Files.size(file));
            }
        }
        return stamp.toString();
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
        Ran ran = run(Csv.text(rows, false), List.of("note", "--csv", "-", "--yes", "--once", key));
        return new Reply(ran.code == 0, ran.code == 0 ? ran.asked : ran.said);
    }

    @Override
    public Reply takeBack(String entry, boolean whole) throws IOException {
        Ran ran = run("", whole ? List.of("undo", entry, "--whole") : List.of("undo", entry));
        return new Reply(ran.code == 0, ran.said);
    }

    /** @param asked what was asked or warned of, without the receipt that ends it */
    private record Ran(int code, List<String> said, List<String> asked) {}

    private Ran run(String in, List<String> words) {
        List<String> args = Stream.concat(words.stream(), common.stream()).toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = command.around();
        int code = Main.run(args, new Surroundings(around.folder(), around.environment(),
                new ByteArrayInputStream(in.getBytes(UTF_8)), out, err, Surroundings.Hidden.NOBODY));
        List<String> said = (out.toString(UTF_8) + err.toString(UTF_8)).lines().filter(line -> !line.isBlank())
                .toList();
        List<String> asked = err.toString(UTF_8).lines().takeWhile(line -> !line.matches(RECEIPT)).toList();
        return new Ran(code, said, asked);
    }

    /** Reads the garden anew for one look of the page: what others noted meanwhile is in it. */
    private static final class PageViewer extends GardenCommand {
        PageView view() throws IOException {
            return new PageData(folder(), GardenPlan.of(this, folder()), wording()).view();
        }

        @Override
        public int run() throws IOException { throw new IllegalStateException("the page's view is no command"); }
    }
}
