package org.oldwood.craft.water;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** Figures that hold for every crop and bed; from {@code water.json}. */
public final class WaterFigures {
    private final Fields root;
    private final Fields coefficients;
    private final Map<String, Figure> read = new HashMap<>();

    private WaterFigures(Fields root) {
        this.root = root;
        root.count("format", 1, 1);
        coefficients = root.part("coefficients");
    }

    /** Opens the document. Problems go to the documents'. */
    public static WaterFigures read(Documents documents) {
        return new WaterFigures(documents.fields("water.json"));
    }

    /** The figure under a key, {@code mulchCut} for example. */
    public Figure figure(String key) {
        return read.computeIfAbsent(key, name -> Figure.read(root, name));
    }

    /**
     * A group of crops that FAO-56's tables treat alike.
     *
     * @param basal basal crop coefficients: transpiration alone
     * @param heightM height of the full-grown plants
     * @param depletion depletion fraction at a demand of 5 mm a day
     * @param cautiousDepletion another view of it
     * @param rootDepth greatest depth of the roots, another view beside the crop's own
     */
    public record Group(String name, CropCoefficient single, CropCoefficient basal, @Key("height") Figure heightM,
            Figure depletion, Figure cautiousDepletion, Figure rootDepth, List<String> sources) {}

    public Group group(String id) {
        Fields group = coefficients.part(id);
        List<String> sources = group.part("single").texts("source");
        return RecordReader.read(group, Group.class, Map.of("sources", sources));
    }
}
