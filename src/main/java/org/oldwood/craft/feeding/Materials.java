package org.oldwood.craft.feeding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.feeding.liming.Acidifier;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;

/**
 * The feeds, limes and acidifiers that are known: those of the bundled {@code materials} documents, then the garden's
 * own, which may replace one of the same id.
 */
public final class Materials {
    private final Map<String, Feed> feeds = new LinkedHashMap<>();
    private final Map<String, Lime> limes = new LinkedHashMap<>();
    private final Map<String, Acidifier> acidifiers = new LinkedHashMap<>();

    private Materials() {}

    public static Materials read(Documents documents) {
        Materials all = new Materials();
        documents.all("materials").forEach(document -> {
            document.objects("feeds").stream().map(Feed::read).forEach(feed -> all.feeds.put(feed.id(), feed));
            all.limes.putAll(RecordReader.byId(document, "limes", Lime.class, Lime::id));
            all.acidifiers.putAll(RecordReader.byId(document, "acidifiers", Acidifier.class, Acidifier::id));
        });
        return all;
    }

    public Optional<Feed> feed(String id) { return Optional.ofNullable(feeds.get(id)); }

    public Optional<Lime> lime(String id) { return Optional.ofNullable(limes.get(id)); }

    public Optional<Acidifier> acidifier(String id) { return Optional.ofNullable(acidifiers.get(id)); }

    public List<Feed> feeds() { return List.copyOf(feeds.values()); }

    public List<Lime> limes() { return List.copyOf(limes.values()); }

    public List<Acidifier> acidifiers() { return List.copyOf(acidifiers.values()); }

    /** The tags of a material by any of its ids; empty for one that is not known here. */
    public List<String> tags(String id) {
        return feed(id).map(Feed::tags).or(() -> lime(id).map(Lime::tags)).or(() -> acidifier(id).map(Acidifier::tags))
                .orElse(List.of());
    }
}
