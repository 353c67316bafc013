package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.Subjects;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.CalendarStages;
import org.oldwood.store.Documents;

/** Every rule fires at its bounds, and just outside each of them it does not. */
class RuleSituationsTest {
    private static final LocalDate DAY = LocalDate.of(2025, 11, 5);
    private static final String ROWS = "/rules/situations.csv";

    @TempDir
    static Path folder;

    private static Rules rules = Rules.read(Documents.bundled());
    private static Optional<GardenFolder> garden = Optional.empty();

    @BeforeAll
    static void plant_everything() throws IOException {
        garden = Optional.of(AllCropsGarden.at(folder, 52, "2025-11-02"));
        assertThat(garden.get().on(DAY).questions()).isEmpty();
        assertThat(garden.get().problems().list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = ROWS, numLinesToSkip = 1)
    void fires_at_its_bounds_and_not_outside(String id, String crop, String fires, String also, String not) {
        Rule rule = rules.find(id).orElseThrow();
        Map<String, String> facts = facts(fires);
        assertThat(due(rule, crop, facts)).as("with " + facts).isTrue();
        pairs(also).forEach(pair -> assertThat(due(rule, crop, with(facts, pair[0], pair[1])))
                .as("with " + pair[0] + " = " + pair[1]).isTrue());
        pairs(not).forEach(pair -> assertThat(due(rule, crop, with(facts, pair[0], pair[1])))
                .as("with " + pair[0] + " = " + pair[1]).isFalse());
    }

    /** A condition without a row that breaks it would be one that nothing holds in place. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = ROWS, numLinesToSkip = 1)
    void has_a_row_outside_every_bound(String id, String crop, String fires, String also, String not) {
        for (Condition condition : rules.find(id).orElseThrow().when()) {
            String name = condition.fact() + condition.of().map(argument -> ":" + argument).orElse("");
            long wanted = (condition.atLeast().isPresent() ? 1 : 0) + (condition.atMost().isPresent() ? 1 : 0)
                    + (condition.words().isEmpty() ? 0 : 1);
            assertThat(pairs(not).stream().filter(pair -> pair[0].equals(name) && !pair[1].equals("?")).count())
                    .as(id + ": rows outside " + name).isGreaterThanOrEqualTo(wanted);
        }
    }

    @Test
    void every_rule_has_its_row() throws IOException {
        try (var in = RuleSituationsTest.class.getResourceAsStream(ROWS)) {
            String text = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            Set<String> ids = new TreeSet<>();
            text.lines().skip(2).forEach(line -> ids.add(line.split(",", 2)[0]));
            assertThat(ids).containsExactlyInAnyOrderElementsOf(rules.ids());
        }
    }

    private static boolean due(Rule rule, String crop, Map<String, String> facts) {
        GardenState state = garden.orElseThrow().on(DAY);
        Situation.World world = new Situation.World(state, new CalendarStages(), garden.get().crops(),
                garden.get().documents());
        Subject subject = new Subjects(state, garden.get().crops()).ofKind(rule.subject()).stream()
                .filter(rule::concerns).filter(one -> isOf(one, crop) && hasItsWindow(rule, one)).findFirst()
                .orElseThrow(() -> new AssertionError("no " + crop + " for " + rule.id()));
        Map<String, String> told = new HashMap<>(facts);
        tellDay(told, rule.opens(), DAY);
        tellDay(told, rule.closes(), DAY.plusDays(300));
        return new Judge(world, new Told(told)).judge(rule, subject, state.season()).due();
    }

    /** A window's end that a craft works out gets a day. */
    private static void tellDay(Map<String, String> told, WindowEnd end, LocalDate day) {
        if (end.by().equals("fact")) {
            told.put(end.of().map(of -> end.name() + ":" + of).orElse(end.name()), day.toString());
        }
    }

    private static boolean isOf(Subject subject, String crop) {
        return crop.equals("-") || subject.crop().map(Crop::id).equals(Optional.of(crop));
    }

    /** A window by an entry needs a subject that has one. */
    private static boolean hasItsWindow(Rule rule, Subject subject) {
        return !rule.opens().by().equals("entry")
                || subject.entries().stream().anyMatch(entry -> entry.kind().key().equals(rule.opens().name()));
    }

    private static Map<String, String> with(Map<String, String> facts, String key, String value) {
        Map<String, String> changed = new HashMap<>(facts);
        changed.put(key, value);
        return changed;
    }

    private static Map<String, String> facts(String text) {
        Map<String, String> facts = new HashMap<>();
        pairs(text).forEach(pair -> facts.put(pair[0], pair[1]));
        return facts;
    }

    private static List<String[]> pairs(String text) {
        return text == null || text.isBlank() ? List.of()
                : List.of(text.split("; ")).stream().map(pair -> pair.split("=", 2)).toList();
    }

    /** Tells the facts of a row, and knows no others. */
    private static final class Told extends Advisor {
        Told(Map<String, String> values) {
            values.keySet().stream().map(key -> key.split(":", 2)[0]).distinct()
                    .forEach(name -> knows(name, (of, situation) -> fact(name, of, values)));
        }

        private static Fact fact(String name, Optional<String> of, Map<String, String> values) {
            String value = values.getOrDefault(of.map(arg -> name + ":" + arg).orElse(name), "?");
            if (value.equals("?")) { return Fact.unknown("not told"); }
            if (name.endsWith("-date")) { return Fact.day(LocalDate.parse(value), value); }
            return Character.isDigit(value.charAt(0)) || value.charAt(0) == '-'
                    ? Fact.number(Double.parseDouble(value), value)
                    : Fact.text(value, value);
        }
    }
}
