package org.oldwood.craft.pruning;

import java.util.List;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * How wood of one kind looks.
 *
 * @param of {@code spent}, {@code bearing} or {@code new}
 * @param words what to look for
 */
public record WoodLook(String of, String words, List<String> sources, Seen seen) {
    static final List<String> KINDS = List.of("spent", "bearing", "new");

    static WoodLook read(Fields fields) {
        WoodLook look = new WoodLook(
                fields.oneOf("of", KINDS),
                fields.text("words"),
                fields.texts("source"),
                Seen.parse(fields.oneOf("seen", Seen.keys())));
        fields.done();
        return look;
    }
}
