package org.oldwood.facts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Planner;
import org.oldwood.plan.SmallGarden;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;

/**
 * A test's own rules, facts and amounts in place of all that come with the program, so that a plan holds nothing but
 * what the test is about. Rules are written with single quotes; what a rule must have and the test does not care about
 * is added.
 */
public final class OwnRules {
    private static final String REST = ",'craft':'season','reason':'A good reason.','source':['oldwood'],'seen':'assumed'}";

    private final Path folder;
    private final List<String> rules = new ArrayList<>();
    private final Map<String, BiFunction<Optional<String>, Situation, Fact>> facts = new HashMap<>();
    private final Map<String, Function<Situation, Optional<Amount>>> amounts = new HashMap<>();

    public OwnRules(Path folder) {
        this.folder = folder;
        for (String bundled : Documents.bundled().names("rules")) {
            document("rules/" + bundled + ".json", "{'rules':[]}");
        }
    }

    /** A rule for the whole garden, titled like its id. */
    public OwnRules rule(String id, String rest) {
        return rule(id, "garden", rest);
    }

    public OwnRules rule(String id, String subject, String rest) {
        String title = rest.contains("'title'") ? "" : "'title':'" + id + "',";
        rules.add("{'id':'" + id + "','subject':'" + subject + "'," + title + rest + REST);
        return this;
    }

    /** A rule for the whole garden with a window from one northern month-day to another. */
    public OwnRules window(String id, String from, String to, String more) {
        return rule(id, span(from, to) + more);
    }

    public static String span(String from, String to) {
        return "'opens':{'day':'" + from + "'},'closes':{'day':'" + to + "'}";
    }

    public OwnRules tell(String name, Fact fact) { return tell(name, situation -> fact); }

    public OwnRules tell(String name, Function<Situation, Fact> fact) {
        return tell(name, (of, situation) -> fact.apply(situation));
    }

    /** A fact that takes an argument. */
    public OwnRules tell(String name, BiFunction<Optional<String>, Situation, Fact> fact) {
        facts.put(name, fact);
        return this;
    }

    public OwnRules amount(String name, Optional<Amount> amount) {
        amounts.put(name, any -> amount);
        return this;
    }

    /** An amount that hangs on the record. */
    public OwnRules amount(String name, Function<Situation, Amount> amount) {
        amounts.put(name, situation -> Optional.of(amount.apply(situation)));
        return this;
    }

    public OwnRules document(String name, String json) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, json.replace('\'', '"'));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    public Planner planner(SmallGarden garden, String day) {
        document("rules/own.json", "{'rules':[" + String.join(",", rules) + "]}");
        Problems problems = new Problems();
        Planner planner = garden.planner(day, Documents.with(folder, problems), new Told(facts, amounts));
        if (!problems.isEmpty()) { throw new AssertionError(problems.list().toString()); }
        return planner;
    }

    public Plan plan(SmallGarden garden, String day) { return planner(garden, day).plan(); }

    /** Knows what was told, and nothing else. */
    private static final class Told extends Advisor {
        Told(Map<String, BiFunction<Optional<String>, Situation, Fact>> facts,
                Map<String, Function<Situation, Optional<Amount>>> amounts) {
            facts.forEach(this::knows);
            amounts.forEach(this::measures);
        }
    }
}
