package org.oldwood.facts.feeding;

import java.util.List;
import java.util.Set;
import org.oldwood.crop.Seen;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * A material that asks for something else beside it: fresh wood for nitrogen.
 *
 * @param with the tag of the material
 * @param reason why, and what to do; a full sentence
 * @param seen how it was seen
 */
record Together(String with, String reason, Seen seen) {
    /** Those of {@code keep-apart.json}. */
    public static List<Together> read(Documents documents) {
        return documents.fields("keep-apart.json").objects("together").stream()
                .map(Together::of)
                .toList();
    }

    private static Together of(Fields fields) {
        return new Together(fields.text("with"), fields.text("reason"), Seen.parse(fields.oneOf("seen", Seen.keys())));
    }

    /** What to say of a material with these tags, with the mark of what was not read. */
    public static List<String> about(List<Together> all, Set<String> tags) {
        return all.stream()
                .filter(each -> tags.contains(each.with))
                .map(each -> each.reason + each.seen.beside())
                .toList();
    }
}
