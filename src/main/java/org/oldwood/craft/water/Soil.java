package org.oldwood.craft.water;

import java.util.List;
import java.util.stream.Stream;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/**
 * A soil texture and what it does with water.
 *
 * @param id {@code sandy-loam}
 * @param name {@code sandy loam}
 * @param feel key of its group in the feel-and-appearance guide
 * @param fieldCapacity water held after draining, m³/m³
 * @param wiltingPoint water held that no root gets, m³/m³
 * @param intake what it takes in when wet, mm an hour
 */
public record Soil(String id, String name, String feel, Figure fieldCapacity, Figure wiltingPoint, Figure intake) {

    /** Share of the available water that a volumetric water content means; may leave 0 to 1. */
    public double heldShare(double waterContent) {
        return (waterContent - wiltingPoint.is()) / availableShare();
    }

    /** Available water, m³/m³. */
    public double availableShare() { return fieldCapacity.is() - wiltingPoint.is(); }

    /**
     * What the root zone can hold, mm.
     *
     * @param depthM depth of the roots, m
     * @param stones stones by volume, 0 to 1: they hold nothing
     */
    public double totalAvailableMm(double depthM, double stones) {
        return RootZone.totalAvailable(fieldCapacity.is(), wiltingPoint.is(), depthM) * (1 - stones);
    }

    /** The source keys of what the account uses. */
    public List<String> sources() {
        return Stream.of(fieldCapacity, wiltingPoint).flatMap(each -> each.sources().stream()).distinct().toList();
    }

    /** A class of the feel-and-appearance guide. */
    public record FeelClass(String word, @Key(least = 0, most = 1) double low, @Key(least = 0, most = 1) double high,
            String text, String source, Seen seen) implements Checked {
        @Override
        public void check(Fields fields) { fields.tellIf(high < low, "high", "high-below-low"); }
    }

}
