package org.oldwood.craft.water;

import java.util.List;
import java.util.Map;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;

/** Reads the parts of a document that must be there. */
final class Parts {
    private Parts() {}

    /** The object under a key; a problem and an empty object where there is none. */
    static Fields must(Fields parent, String key) {
        return parent.object(key).orElseGet(() -> {
            parent.wrong(
                    key,
                    "missing-part",
                    "is missing; it must be an object {…}",
                    "Take the bundled document as a pattern.");
            return Fields.of(new Json.Obj(parent.place(), Map.of()), parent.problems());
        });
    }

    /** Reads what grounds a part that is no single figure, and ends its reading. */
    static List<String> grounds(Fields fields) {
        List<String> sources = fields.texts("source");
        fields.oneOf("seen", Seen.keys());
        fields.text("note", "");
        fields.done();
        return sources;
    }
}
