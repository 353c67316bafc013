package org.oldwood.plan.round;

import java.util.List;
import org.oldwood.crop.Seen;
import org.oldwood.plan.Rule;
import org.oldwood.store.Fields;

/**
 * What is done in one outing.
 *
 * @param id its name in the data
 * @param title for people, at most 20 characters
 * @param joinDays by how many days a job may be moved forward, within its window, to join others; 0 or more
 * @param optional whether nothing is lost where nobody does it
 * @param rules the rules whose tasks it gathers, in the order of work
 */
public record RoundKind(String id, String title, int joinDays, boolean optional, List<String> rules) {

    static RoundKind read(Fields fields) {
        RoundKind kind = new RoundKind(
                fields.text("id"),
                fields.text("title"),
                fields.count("joinDays", 0, 60, 0),
                fields.flag("optional", false),
                fields.texts("rules"));
        if (kind.joinDays > 0) {
            Seen.parse(fields.oneOf("seen", Seen.keys()));
        }
        fields.done();
        return kind;
    }

    /** A rule that no kind names is an outing for itself, so that no task is lost. */
    static RoundKind alone(Rule rule) {
        return new RoundKind(rule.id(), rule.id().replace('-', ' '), 0, false, List.of(rule.id()));
    }
}
