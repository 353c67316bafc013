package org.oldwood.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.facts.Fact;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.words.Words;

/**
 * Something that must hold of a subject, and that can say why it does or does not.
 *
 * @param of the fact's argument, if it takes one
 * @param atLeast the least number allowed, included
 * @param atMost the greatest number allowed, included
 * @param words the words allowed; empty for any
 * @param not true where {@code words} are those that are not allowed
 * @param whenUnknown what an unknown fact counts as
 */
public record Condition(String fact, Optional<String> of, OptionalDouble atLeast, OptionalDouble atMost,
        List<String> words, boolean not, boolean whenUnknown) {

    static Condition read(Fields fields) {
        Optional<String> is = word(fields, "is");
        Optional<String> isNot = word(fields, "isNot");
        List<String> oneOf = fields.texts("oneOf");
        Condition condition = new Condition(fields.text("fact").intern(), // found faster by the crafts' own names
                word(fields, "of"), fields.optionalNumber("atLeast", -1e9, 1e9),
                fields.optionalNumber("atMost", -1e9, 1e9), is.or(() -> isNot).map(List::of).orElse(oneOf),
                isNot.isPresent(), fields.optionalOneOf("unknown", List.of("yes", "no")).orElse("no").equals("yes"));
        fields.done();
        return condition;
    }

    private static Optional<String> word(Fields fields, String key) {
        Optional<Json> raw = fields.raw(key);
        if (raw.isPresent() && raw.get() instanceof Json.Num num) { return Optional.of(num.written()); }
        return fields.optionalText(key);
    }

    /** Whether it holds of the fact, with the fact's own words and what was asked of it. */
    public Reason test(Fact found) {
        boolean holds = holds(found);
        return new Reason(holds, inWords(found, holds), found.sources());
    }

    /** Whether it holds of the fact. */
    boolean holds(Fact found) {
        if (!found.known()) { return whenUnknown; }
        return found.number().isPresent() ? inRange(found.number().getAsDouble()) : wordFits(found);
    }

    private String inWords(Fact found, boolean holds) {
        if (!found.known()) {
            return found.words() + " (not known" + (whenUnknown ? ", so it does not stop the job)" : ")");
        }
        return holds || words.equals(List.of("yes")) || words.equals(List.of("no")) ? found.words()
                : found.words() + "; asked for: " + wanted();
    }

    private boolean inRange(double value) {
        if (!words.isEmpty() && words.contains(Words.fixed(value, 6)) == not) { return false; }
        boolean high = atLeast.isEmpty() || value >= atLeast.getAsDouble();
        boolean low = atMost.isEmpty() || value <= atMost.getAsDouble();
        return high && low;
    }

    private boolean wordFits(Fact found) {
        if (words.isEmpty()) { return true; }
        String word = found.text().orElseGet(() -> found.day().map(Object::toString).orElse(""));
        return words.contains(word) != not;
    }

    private String wanted() {
        if (!words.isEmpty()) { return (not ? "not " : "") + String.join(" or ", words); }
        String least = atLeast.isPresent() ? "at least " + Words.fixed(atLeast.getAsDouble(), 6) : "";
        String most = atMost.isPresent() ? "at most " + Words.fixed(atMost.getAsDouble(), 6) : "";
        return least + (least.isEmpty() || most.isEmpty() ? "" : " and ") + most;
    }
}
