package org.oldwood.facts.feeding;

import java.util.List;
import java.util.Set;
import org.oldwood.crop.Notes;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.store.Documents;

/**
 * A material that asks for something else beside it: fresh wood for nitrogen.
 *
 * @param with the tag of the material
 * @param reason why, and what to do; a full sentence
 */
@Notes({"id", "needs"})
record Together(String with, String reason, Seen seen) {
    /** Those of {@code keep-apart.json}. */
    public static List<Together> read(Documents documents) {
        return documents.fields("keep-apart.json").objects("together").stream()
                .map(each -> RecordReader.read(each, Together.class)).toList();
    }

    /** What to say of a material with these tags, with the mark of what was not read. */
    public static List<String> about(List<Together> all, Set<String> tags) {
        return all.stream().filter(each -> tags.contains(each.with)).map(each -> each.reason + each.seen.beside())
                .toList();
    }
}
