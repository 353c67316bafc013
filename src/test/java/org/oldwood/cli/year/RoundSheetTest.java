package org.oldwood.cli.year;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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

/**
 * Cards and boxes of the sheet against the plan of the same day: winter, spring, summer, in both halves of the earth.
 */
class RoundSheetTest {
    private static final Pattern CARD = Pattern
            .compile("card cut\" data-tasks=\"([^\"]+)\".*?<p class=\"taken\">(.*?)</p>", Pattern.DOTALL);
    private static final Pattern BOX = Pattern.compile("class=\"tick\" data-tasks=\"([^\"]+)\"");

    @TempDir
    Path folder;

    private void copy(String garden) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", garden))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    private String run(String... args) {
        Cli.Result result = Cli.in(folder).run(args);
        assertThat(result.exit()).as(result.err()).isZero();
        return result.out();
    }

    private JsonNode plan(String day) throws IOException {
        return new ObjectMapper().readTree(run("tasks", "--json", "--today=" + day));
    }

    private Map<String, JsonNode> open(String day) throws IOException {
        Map<String, JsonNode> open = new LinkedHashMap<>();
        for (JsonNode task : plan(day).get("tasks")) {
            if (task.get("state").asText().equals("open")) { open.put(task.get("id").asText(), task); }
        }
        return open;
    }

    /** The day is the round's: a bush's own, which no list shows, would be another. */
    @Test
    void a_card_tells_by_when_and_no_day_of_its_own() throws IOException {
        copy("terrace-school");
        run("sheet", "--today=2026-11-25");

        List<String> facts = Pattern.compile("card cut\".*?<ul class=\"facts\">(.*?)</ul>", Pattern.DOTALL)
                .matcher(Files.readString(folder.resolve("sheet.html"))).results().map(found -> found.group(1))
                .toList();
        assertThat(facts).isNotEmpty().allMatch(fact -> fact.matches("(?s).*<bdi>till [0-9]+ \\w+</bdi>.*"));
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "terrace-school,2027-02-10", "terrace-school,2027-06-20",
            "fire-station-hedges,2026-11-25", "fire-station-hedges,2027-02-10", "fire-station-hedges,2027-06-20"})
    void every_card_is_the_plants_next_open_cut(String garden, String day) throws IOException {
        copy(garden);
        Map<String, JsonNode> open = open(day);
        run("sheet", "--today=" + day, "--quiet");
        Matcher cards = CARD.matcher(Files.readString(folder.resolve("sheet.html")));

        Map<String, String> carded = new HashMap<>();
        while (cards.find()) {
            for (String id : cards.group(1).split(" ")) {
                JsonNode task = open.get(id);
                assertThat(task).as(id).isNotNull();
                assertThat(cards.group(2).toLowerCase(Locale.ROOT)).as(id)
                        .contains(task.get("amount").get("words").asText().toLowerCase(Locale.ROOT));
                assertThat(carded.put(id.split("@", -1)[1], id)).as("two cards of one plant").isNull();
            }
        }
        assertThat(carded).isNotEmpty();
        Set<String> earlier = new TreeSet<>();
        open.forEach((id, task) -> {
            String card = carded.get(id.split("@", -1)[1]);
            boolean cut = card != null && id.split("@", -1)[0].equals(card.split("@", -1)[0])
                    && task.get("day").asText().compareTo(open.get(card).get("day").asText()) < 0;
            if (cut) { earlier.add(id); }
        });
        assertThat(earlier).as("cuts that come before the card's").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"terrace-school,2026-11-25", "fire-station-hedges,2026-11-25", "fire-station-hedges,2027-04-10"})
    void the_twelve_months_have_a_box_for_every_open_task_that_is_wanted(String garden, String day) throws IOException {
        copy(garden);
        Map<String, JsonNode> open = open(day);
        run("sheet", "--month=year", "--today=" + day, "--quiet");
        Matcher boxes = BOX.matcher(Files.readString(folder.resolve("sheet-year.html")));

        Set<String> shown = new TreeSet<>();
        while (boxes.find()) {
            shown.addAll(List.of(boxes.group(1).split(" ")));
        }

        assertThat(open.keySet()).containsAll(shown);
        String end = LocalDate.parse(day).withDayOfMonth(1).plusYears(1).toString();
        Set<String> left = new TreeSet<>(open.keySet());
        left.removeAll(shown);
        left.removeIf(id -> open.get(id).get("day").asText().compareTo(end) >= 0);
        for (JsonNode round : plan(day).get("rounds")) {
            if (round.get("day").asText().compareTo(end) >= 0) {
                round.get("tasks").forEach(task -> left.remove(task.asText()));
            }
        }
        Set<String> kinds = new TreeSet<>();
        left.forEach(id -> kinds.add(id.split("@", -1)[0]));
        assertThat(kinds).as("left out, since nobody asked for more plants")
                .allMatch(kind -> kind.startsWith("strike-") || kind.startsWith("take-") || kind.contains("cutting")
                        || kind.contains("sucker") || kind.contains("layer"));
    }

    private static String told(Cli.Result result) { return (result.out() + result.err()).replaceAll("\\s+", " "); }

    private static List<String> inOrder(String html, String pattern) {
        return Pattern.compile(pattern).matcher(html).results().map(it -> it.group(1)).toList();
    }

    /** As the demo garden declares it: along the rows, not as planted. */
    @Test
    void plants_of_a_bed_stand_as_they_do_in_its_rows() throws IOException {
        copy("terrace-school");
        run("sheet", "--today=2026-11-25", "--quiet");
        String html = Files.readString(folder.resolve("sheet.html"));

        List<String> drawn = inOrder(html, "data-plant=\"([^\"]+)\"");
        assertThat(drawn).containsSubsequence("bc-old", "bc-1", "bc-2", "bc-3", "bc-4", "jb-1", "hk-1", "hk-2");
        List<String> carded = inOrder(html, "<span class=\"ids\"><bdi>([^,<]+)");
        assertThat(carded).containsSubsequence("bc-1", "bc-2", "bc-3", "bc-4", "jb-1", "hk-1");
        run("walk", "--labels=labels.html", "--today=2026-11-25", "--quiet");
        assertThat(inOrder(Files.readString(folder.resolve("labels.html")), "code of ([^\"]+)")).startsWith("bc-old",
                "bc-1", "bc-2", "bc-3", "bc-4", "jb-1", "hk-1", "hk-2");
    }

    @Test
    void the_beds_from_above_show_at_each_plant_what_is_due_there() throws IOException {
        copy("terrace-school");
        String day = "2027-01-10";
        run("sheet", "--today=" + day, "--quiet");
        String html = Files.readString(folder.resolve("sheet.html"));
        Set<String> boxes = new TreeSet<>(inOrder(html, "tick\" data-tasks=\"([^\"]+)\""));
        Map<String, JsonNode> open = open(day);

        Matcher spots = Pattern.compile("data-plant=\"([^\"]+)\"><span class=\"spot[^>]*>(.*?)</span>").matcher(html);
        Map<String, String> signs = new HashMap<>();
        while (spots.find()) {
            signs.put(spots.group(1), spots.group(2));
        }
        Set<String> wanted = new TreeSet<>();
        for (String ids : boxes) {
            for (String id : ids.split(" ")) {
                JsonNode subject = open.get(id).get("subject");
                if (subject.get("kind").asText().equals("plant")) {
                    wanted.add(subject.get("id").asText());
                    assertThat(signs.get(subject.get("id").asText())).as(id)
                            .contains("s-" + open.get(id).get("craft").asText());
                }
            }
        }
        assertThat(wanted).hasSizeGreaterThan(3);
    }

    @Test
    void rows_that_name_no_plant_or_one_twice_are_told() throws IOException {
        copy("terrace-school");
        Path garden = folder.resolve("garden.json");
        String good = Files.readString(garden);
        Files.writeString(garden, good.replace("jb-1, hk-1", "jb-9, hk-1"));
        assertThat(told(Cli.in(folder).run("check", "--today=2026-11-25")))
                .contains("rows of upper-terrace name \"jb-9\"");
        Files.writeString(garden, good.replace("jb-1, hk-1", "bc-1, hk-1"));
        Cli.Result twice = Cli.in(folder).run("check", "--today=2026-11-25");
        assertThat(twice.exit()).isEqualTo(1);
        assertThat(told(twice)).contains("names \"bc-1\" twice");
    }

    /** Gooseberries, whose bed is walked to last, are fed first: what is to be had at hand is wanted on their day. */
    @Test
    void what_is_to_be_at_hand_is_wanted_on_the_first_day_that_takes_it() throws IOException {
        run("start", ".", "--name=Slope", "--at=52,-2", "--plants=blackcurrant=4,gooseberry=2", "--planted=2021",
                "--zone=Europe/London", "--today=2026-11-29");
        JsonNode blood = new ObjectMapper().readTree(run("shopping", "--json", "--today=2026-11-29")).get("materials")
                .get(0);
        assertThat(blood.get("material").asText()).isEqualTo("dried-blood");
        LocalDate first = LocalDate.parse(blood.get("neededBy").asText());
        assertThat(first).hasMonth(Month.MARCH);

        run("sheet", "--month=3", "--today=2026-11-29", "--quiet");
        assertThat(Files.readString(folder.resolve("sheet-2027-03.html")))
                .containsPattern("dried blood, [^<]*, by " + first.getDayOfMonth() + " Mar<");
    }
}
