package org.oldwood.craft.water;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;

/**
 * What of the rain runs off roofs and other hard ground; from {@code surfaces.json}.
 *
 * @param firstFlush rain of a day that wets the roof and never runs off, mm
 */
public record Surfaces(Map<String, Surface> surfaces, Figure firstFlush) {
    /**
     * A covering.
     *
     * @param coefficient share of the rain that runs off
     */
    public record Surface(String name, Figure coefficient) {}

    /** Reads the document. Problems go to the documents'. */
    public static Surfaces read(Documents documents) {
        return RecordReader.document(documents.fields("surfaces.json"), Surfaces.class);
    }

    public List<String> ids() { return List.copyOf(surfaces.keySet()); }

    /** The covering of an id, {@code tiles} for example. */
    public Optional<Surface> find(String id) {
        return Optional.ofNullable(surfaces.get(id));
    }

    /** A roof of a covering and plan area, m². */
    public RoofWater roof(Surface surface, double areaM2) {
        return new RoofWater(areaM2, surface.coefficient().is(), firstFlush.is());
    }
}
