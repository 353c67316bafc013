package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.store.Fields;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

/**
 * {@code docs/rules.md} is made from the calls by which rules are read, the meanings in {@code rule-keys.txt}, and the
 * crafts' own lists of facts and amounts. {@code -Dgolden.update=true} writes it anew.
 */
class RulesDocTest {
    private static final Path PAGE = Path.of("docs/rules.md");
    private static final String MARK = "<!-- made by RulesDocTest -->\n";
    private static final Map<String, String> READERS = Map.of("rule", "Rule", "window end", "WindowEnd", "condition",
            "Condition", "missed", "IfMissed");
    private static final Map<String, String> HEADS = Map.of("rule", "A rule", "window end", "A window end", "condition",
            "A condition", "missed", "If missed", "doneWhen", "Done when");
    private static final Pattern CALL = Pattern.compile("(fields|enough)\\s*\\.(\\w+)\\(\"(\\w+)\"(?:, ([^;]*?))?\\)");
    private static final Pattern OTHER = Pattern
            .compile("(WindowEnd\\.read|IfMissed\\.read|word)\\((?:fields|rule)(?:, \"(\\w+)\")?\\)");

    record Key(String place, String name, String example, String meaning) {
        @Override
        public String toString() { return place + " " + name; }
    }

    static List<Key> keys() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/reference/rule-keys.txt")).stream()
                .map(line -> line.split("\\|", 4)).map(row -> new Key(row[0], row[1], row[2], row[3])).toList();
    }

    @Test
    void every_key_that_is_read_is_told_and_no_other() throws IOException {
        TreeSet<String> read = new TreeSet<>();
        for (String place : READERS.keySet()) {
            calls(place).forEach(call -> read.add(call.place() + " " + call.key()));
        }
        assertThat(keys()).extracting(Key::toString).containsExactlyInAnyOrderElementsOf(read);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("keys")
    void every_example_is_read_without_a_problem(Key key) {
        Problems problems = new Problems();
        Rule.read(Fields.of(JsonReader.readLine(example(key), "rule.json", 1, problems).orElseThrow(), problems));
        assertThat(problems.list()).isEmpty();
    }

    @Test
    void the_page_is_true() throws IOException {
        String page = Files.readString(PAGE);
        String made = page.substring(0, page.indexOf(MARK) + MARK.length()) + tables();
        if (Boolean.getBoolean("golden.update")) { Files.writeString(PAGE, made); }
        assertThat(Files.readString(PAGE)).isEqualTo(made);
    }

    /** One call that reads a key: with which method, between what, and what stands for it where it is absent. */
    private record Call(String place, String key, String method, String bounds) {
        private String type() {
            return switch (method) {
                case "text", "optionalText" -> "text";
                case "texts" -> "list of texts";
                case "oneOf", "optionalOneOf" -> words();
                case "number", "optionalNumber" -> "number" + range();
                case "count" -> "whole number" + range();
                case "flag" -> "true or false";
                case "objects" -> "list of conditions";
                case "WindowEnd.read" -> "window end";
                case "IfMissed.read" -> "missed";
                case "word" -> "text or number";
                default -> key.equals("doneFields") ? "fields of the entry" : key;
            };
        }

        private String words() {
            return switch (bounds) {
                case "SUBJECTS" -> "plant, stand, bed, lot or garden";
                case "Seen.keys()" -> "a [mark](sources.md)";
                default -> bounds.replaceAll("List\\.of\\(|[\")]", "");
            };
        }

        private String range() {
            String[] ends = bounds.split(", ", -1);
            return ends.length < 2 || ends[0].contains("e9") ? "" : " " + ends[0] + " to " + ends[1].replace("_", "");
        }

        private String otherwise() {
            String[] parts = bounds.split(", ", -1);
            return switch (method) {
                case "text" -> key.equals("instead") ? "none" : bounds.isEmpty() ? "required" : "empty";
                case "oneOf" -> "required";
                case "count", "number" -> parts.length > 2 ? parts[2] : "required";
                case "flag" -> bounds;
                case "texts" -> key.equals("source") ? "required" : "none";
                case "WindowEnd.read" -> key.matches("opens|closes") ? "required" : "none";
                default -> key.equals("unknown") ? "no" : "none";
            };
        }
    }

    private static List<Call> calls(String place) throws IOException {
        String source = Files.readString(Path.of("src/main/java/org/oldwood/plan", READERS.get(place) + ".java"))
                .replaceAll("\\s+", " ");
        List<Call> calls = new ArrayList<>();
        for (MatchResult found : CALL.matcher(source).results().toList()) {
            String where = found.group(1).equals("enough") ? "doneWhen" : place;
            String bounds = Optional.ofNullable(found.group(4)).orElse("");
            if (!found.group(2).matches("has|wrong|raw")) {
                calls.add(new Call(where, found.group(3), found.group(2), open(bounds)));
            }
        }
        for (MatchResult found : OTHER.matcher(source).results().toList()) {
            String key = Optional.ofNullable(found.group(2)).orElse("missed");
            calls.add(new Call(place, key, found.group(1), ""));
        }
        if (place.equals("window end")) {
            List.of("stage", "day", "fact", "entry").forEach(by -> calls.add(new Call(place, by, "optionalText", "")));
        }
        return calls;
    }

    /** A list in the arguments loses its bracket to the pattern. */
    private static String open(String bounds) {
        return bounds.startsWith("Seen.keys(") ? "Seen.keys()" : bounds;
    }

    private static String tables() throws IOException {
        StringBuilder text = new StringBuilder();
        for (String place : List.of("rule", "window end", "condition", "missed", "doneWhen")) {
            text.append("\n## %s\n\n".formatted(HEADS.get(place)));
            for (Key key : keys()) {
                if (key.place().equals(place)) {
                    Call call = calls(place.equals("doneWhen") ? "rule" : place).stream()
                            .filter(one -> one.place().equals(place) && one.key().equals(key.name())).findFirst()
                            .orElseThrow();
                    text.append("- `%s`: %s%s. %s `%s`\n".formatted(key.name(), call.type(), absent(call.otherwise()),
                            key.meaning(), key.example()));
                }
            }
        }
        Advisor crafts = new AllCrafts();
        return text + "\n## Facts\n\n" + named(crafts.factNames()) + "\n## Amounts\n\n" + named(crafts.amountNames());
    }

    private static String absent(String otherwise) {
        return switch (otherwise) {
            case "none", "empty" -> "";
            case "required" -> ", required";
            default -> ", else " + otherwise;
        };
    }

    private static String named(Iterable<String> names) {
        return "`" + String.join("`, `", Stream.of(String.join(" ", names).split(" ", -1)).sorted().toList()) + "`\n";
    }

    /** A whole rule that says the key. */
    private static String example(Key key) {
        String says = "\"%s\": %s".formatted(key.name(), key.example());
        Map<String, String> parts = new LinkedHashMap<>(Map.of("id", "\"own\"", "craft", "\"pruning\"", "title",
                "\"Prune {subject}\"", "subject", "\"plant\"", "opens", "{\"day\": \"01-05\"}", "closes",
                "{\"day\": \"02-05\"}", "reason", "\"Why.\"", "source", "[\"common-practice\"]", "seen", "\"read\""));
        switch (key.place()) {
            case "rule" -> parts.put(key.name(), key.example());
            case "window end" -> parts.put("opens", "{%s}"
                    .formatted(key.name().matches("of|plusDays") ? "\"fact\": \"strike-by-date\", " + says : says));
            case "condition" -> parts.put("when",
                    "[{%s}]".formatted(key.name().equals("fact") ? says : "\"fact\": \"method\", " + says));
            case "missed" -> parts.put("missed", "{%s}".formatted(missed(key, says)));
            default -> parts.put("doneWhen",
                    "{%s}".formatted(key.name().equals("percent") ? says : "\"percent\": 80, " + says));
        }
        List<String> members = new ArrayList<>();
        parts.forEach((name, value) -> members.add("\"%s\": %s".formatted(name, value)));
        return "{" + String.join(", ", members) + "}";
    }

    private static String missed(Key key, String says) {
        Map<String, String> parts = new LinkedHashMap<>(
                Map.of("then", "\"lapsed\"", "harm", "1", "seen", "\"assumed\""));
        if (key.name().equals("until")) {
            parts.put("then", "\"still-good\"");
        } else if (key.name().equals("instead")) { parts.put("then", "\"instead\""); }
        parts.put(key.name(), key.example());
        List<String> members = new ArrayList<>();
        parts.forEach((name, value) -> members.add("\"%s\": %s".formatted(name, value)));
        return String.join(", ", members);
    }
}
