package org.oldwood.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * What becomes of a rule's work that was not done in its time.
 *
 * @param then still good until a later day, too late but something else may be done, or lapsed
 * @param harm how much it harms, from 0 for work that nobody need do to 3 for what spreads or kills
 * @param until the latest good day, where it is still good
 * @param instead the rule whose work makes up for it
 * @param words what missing it changes, and what to do; a sentence, may be empty
 */
public record IfMissed(Then then, int harm, Optional<WindowEnd> until, Optional<String> instead, String words,
        Seen seen) {

    /** A garden's own rule need not say: its work lapses, and that is told last. */
    static final IfMissed UNSAID = new IfMissed(Then.LAPSED, 1, Optional.empty(), Optional.empty(), "", Seen.ASSUMED);

    /** What becomes of it. */
    public enum Then {
        STILL_GOOD,
        INSTEAD,
        LAPSED
    }

    static IfMissed read(Fields rule) {
        Optional<Fields> found = rule.object("missed");
        if (found.isEmpty()) { return UNSAID; }
        Fields fields = found.get();
        String key = fields.oneOf("then", List.of("still-good", "instead", "lapsed"));
        Then then = Then.valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'));
        IfMissed missed = new IfMissed(then, fields.count("harm", 0, 3),
                then == Then.STILL_GOOD ? Optional.of(WindowEnd.read(fields, "until")) : Optional.empty(),
                then == Then.INSTEAD ? Optional.of(fields.text("instead")) : Optional.empty(), fields.text("words", ""),
                Seen.parse(fields.oneOf("seen", Seen.keys())));
        fields.done();
        return missed;
    }
}
