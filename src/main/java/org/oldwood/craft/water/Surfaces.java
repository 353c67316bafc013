package org.oldwood.craft.water;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** What of the rain runs off roofs and other hard ground; from {@code surfaces.json}. */
public final class Surfaces {
    private final Map<String, Surface> surfaces = new LinkedHashMap<>();
    private final Figure firstFlush;

    /**
     * A covering.
     *
     * @param name for people
     * @param coefficient share of the rain that runs off
     */
    public record Surface(String name, Figure coefficient) {}

    private Surfaces(Figure firstFlush) {
        this.firstFlush = firstFlush;
    }

    /** Reads the document. Problems go to the documents'. */
    public static Surfaces read(Documents documents) {
        Fields root = documents.fields("surfaces.json");
        root.count("format", 1, 1);
        Surfaces surfaces = new Surfaces(Figure.read(root, "firstFlush"));
        root.object("surfaces").ifPresent(all -> {
            for (String id : all.keys()) {
                all.object(id).ifPresent(one -> surfaces.surfaces.put(id, surface(one)));
            }
        });
        root.done();
        return surfaces;
    }

    private static Surface surface(Fields fields) {
        Surface surface = new Surface(fields.text("name"), Figure.read(fields, "coefficient"));
        fields.done();
        return surface;
    }

    public List<String> ids() {
        return List.copyOf(surfaces.keySet());
    }

    /** The covering of an id, {@code tiles} for example. */
    public Optional<Surface> find(String id) {
        return Optional.ofNullable(surfaces.get(id));
    }

    /** Rain of a day that wets the roof and never runs off, mm. */
    public Figure firstFlush() {
        return firstFlush;
    }

    /** A roof of a covering and plan area, m². */
    public RoofWater roof(Surface surface, double areaM2) {
        return new RoofWater(areaM2, surface.coefficient().is(), firstFlush.is());
    }
}
