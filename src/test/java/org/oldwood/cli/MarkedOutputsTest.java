package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.cli.command.Cli;
import org.oldwood.crop.Seen;
import org.oldwood.store.Documents;
import org.oldwood.store.Json;

/**
 * Every output of both demo gardens: a figure of the data that was not read in print has its mark behind it. What is
 * worked out from a record needs none; its figures do.
 */
class MarkedOutputsTest {
    /**
     * Those that tell figures which were not read in print, none of which plans a year; with {@code -Dwalk=all} every
     * command, the sheet, and the reasons of every round, in which no such figure stood when this was written.
     */
    private static final List<String> COMMANDS = List.of("stages", "prune", "prune --outlook", "suits --at=52,-2",
            "cuttings", "chill");

    private static final List<String> OTHERS = List.of("now", "tasks", "tasks year", "feed", "mulch", "lime",
            "shopping", "water", "ledger", "acidify", "stock");

    private static final boolean ALL = System.getProperty("walk", "").equals("all");

    /** Amounts of a record have these units too; in words and notes {@code MarksTest} looks at each sentence. */
    private static final Set<String> AMOUNTS = Set.of("kg", "g", "l", "mm", "%", "min", "m", "canes", "plants", "t",
            "1");

    /** A number and what follows it; not what is told as worked out, or as seen in the garden. */
    private static final Pattern TOLD = Pattern
            .compile("(?<![\\w.,±-] ?)(?<!about |laid |lies )\\d+(?:\\.\\d+)? [^\\s,;:()]+?(?=[\\s,;:()]|\\.\\s)(?!"
                    + " (later|earlier) for)");

    @TempDir
    static Path folder;

    /** A number and its unit, as a figure is told; and the marks that figures so told have. */
    private static Map<String, Set<Seen>> told() throws IOException {
        Map<String, Set<Seen>> told = new HashMap<>();
        Path data = Path.of("src/main/resources/org/oldwood");
        Documents documents = Documents.bundled();
        try (Stream<Path> files = Files.walk(data)) {
            files.map(path -> data.relativize(path).toString())
                    .filter(name -> name.endsWith(".json") && !name.startsWith("sources"))
                    .forEach(name -> documents.read(name).ifPresent(json -> figures(json, told)));
        }
        return told;
    }

    private static void figures(Json value, Map<String, Set<Seen>> told) {
        if (value instanceof Json.Arr list) {
            list.items().forEach(item -> figures(item, told));
        } else if (value instanceof Json.Obj object) {
            Map<String, Json> has = object.members();
            if (has.get("is") instanceof Json.Num is && has.get("unit") instanceof Json.Text unit
                    && has.get("seen") instanceof Json.Text seen && !AMOUNTS.contains(unit.value())) {
                String words = unit.value().replace("m2", "m²").replace("m3", "m³");
                told.computeIfAbsent(
                        "%s %s".formatted(is.written().replaceFirst("\\.0$", ""), words.equals("d") ? "days" : words),
                        each -> new TreeSet<>()).add(Seen.parse(seen.value()));
            }
            has.values().forEach(inner -> figures(inner, told));
        }
    }

    @ParameterizedTest
    @CsvSource({"terrace-school, 2026-11-28", "fire-station-hedges, 2026-11-28"})
    void no_figure_in_words_is_without_its_mark(String garden, String today) throws IOException {
        Map<String, Set<Seen>> told = told();
        List<String> bare = new ArrayList<>();
        int met = 0;
        for (Map.Entry<String, String> output : outputs(garden, today).entrySet()) {
            String text = output.getValue().replaceAll("\\s+", " ");
            Matcher at = TOLD.matcher(text);
            while (at.find()) {
                Set<Seen> marks = told.getOrDefault(at.group(), Set.of(Seen.READ));
                met += marks.contains(Seen.READ) ? 0 : 1;
                String after = text.substring(at.end(), Math.min(text.length(), at.end() + 60));
                if (!marks.contains(Seen.READ) && marks.stream().noneMatch(seen -> after.contains(seen.words()))) {
                    bare.add("%s: %s %s %s".formatted(output.getKey(),
                            text.substring(Math.max(0, at.start() - 40), at.start()), at.group(), after));
                }
            }
        }
        assertThat(bare).isEmpty();
        assertThat(met).as("figures that were not read in print").isGreaterThan(20);
    }

    /** All that is printed, and the sheet and the calendars. */
    private static Map<String, String> outputs(String garden, String today) throws IOException {
        Map<String, String> outputs = new HashMap<>();
        for (String command : ALL ? Stream.concat(COMMANDS.stream(), OTHERS.stream()).toList() : COMMANDS) {
            outputs.put(command, run(garden, today, command.split(" ")).out());
        }
        JsonNode rounds = ALL ? json(garden, today, "tasks").path("rounds") : new ObjectMapper().createArrayNode();
        for (JsonNode round : rounds) {
            String id = round.path("id").asText();
            outputs.put("why " + id, run(garden, today, "why", id).out());
        }
        if (ALL) {
            Path sheet = folder.resolve(garden + ".html");
            run(garden, today, "sheet", "--out=" + sheet);
            outputs.put("sheet", Files.readString(sheet));
        }
        for (String part : List.of("events", "todos")) {
            outputs.put(part,
                    Files.readString(Path.of("calendars/%s-%s.ics".formatted(garden, part))).replace("\r\n ", ""));
        }
        return outputs;
    }

    /** In JSON the mark is a key of its own, beside the figure or once for all minutes. */
    @Test
    void a_figure_in_json_has_its_mark_beside_it() throws IOException {
        String garden = "fire-station-hedges";
        String today = "2026-11-28";

        assertThat(json(garden, today, "tasks").path("minutesSeen").asText()).isEqualTo("by your notes, else assumed");
        assertThat(json(garden, today, "prune").path("minutesSeen").asText()).isEqualTo("by your notes, else assumed");
        assertThat(json(garden, today, "chill").findParents("wanted")).isNotEmpty()
                .allMatch(figure -> Seen.keys().contains(figure.path("seen").asText()));
        assertThat(json(garden, today, "stages").findParents("harmBeginsC")).isNotEmpty()
                .allMatch(figure -> Seen.keys().contains(figure.path("seen").asText()));
    }

    private static JsonNode json(String garden, String today, String command) throws IOException {
        return new ObjectMapper().readTree(run(garden, today, command, "--json").out());
    }

    private static Cli.Result run(String garden, String today, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--garden=demo-data/" + garden, "--today=" + today, "--quiet"));
        Cli.Result result = Cli.in(Path.of("").toAbsolutePath()).run(all.toArray(String[]::new));
        assertThat(result.exit()).as(result.err()).isZero();
        return result;
    }
}
