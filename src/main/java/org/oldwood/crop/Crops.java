package org.oldwood.crop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;

/** The crops that are known, bundled and the garden's own. A crop's files are read when it is asked for. */
public final class Crops {
    private final Documents documents;
    private final List<String> ids;
    private final Map<String, Crop> read = new LinkedHashMap<>();

    public Crops(Documents documents) {
        this.documents = documents;
        this.ids = documents.names("crops");
    }

    public List<String> ids() { return ids; }

    public Optional<Crop> find(String id) {
        return read.containsKey(id) || ids.contains(id) ? Optional.of(get(id)) : Optional.empty();
    }

    /** What to say where no crop has such an id: which people call so, else the nearest. */
    public String hint(String word) {
        List<String> meant = called(word);
        return meant.size() > 1 ? "Which one: %s?".formatted(String.join(" or ", meant))
                : Crop.other(word).map(text -> text.formatted(word))
                        .orElseGet(() -> Nearest.hint(meant.isEmpty() ? word : meant.get(0), ids));
    }

    /** The crops that people may mean by a word. */
    public List<String> called(String word) {
        return ids.stream().filter(id -> get(id).isCalled(word)).toList();
    }

    /** The crop of a known id. */
    public Crop get(String id) {
        Crop crop = read.get(id);
        if (crop == null) {
            if (!ids.contains(id)) { throw new IllegalArgumentException("no crop " + id + " among " + ids); }
            crop = Crop.read(id, documents);
            read.put(id, crop);
        }
        return crop;
    }
}
