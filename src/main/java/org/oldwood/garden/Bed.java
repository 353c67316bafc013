package org.oldwood.garden;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A piece of ground with plants on it.
 *
 * @param id unique among the beds
 * @param areaM2 area, m²
 * @param texture soil texture by name, {@code sandy-loam} for example; empty where not known
 * @param rootableDepthCm depth that roots can use, cm
 * @param stonesPercent stones by volume, %
 * @param shade share of the day's sun that the bed misses, 0 to 1
 * @param windy whether it lies open to the wind
 * @param roof the roof whose water reaches it
 * @param competing share of its water that roots of hedges or trees nearby take, 0 to 1
 * @param tapLitresPerMinute what the tap or line gives, l/min
 * @param organicPercent organic matter of the soil, % by weight; empty where not known
 * @param tubLitres mix that the tubs hold, all together, l; empty for open ground
 * @param sheltered whether a roof keeps the rain off
 * @param rows plants by their ids along each row, as one walks; empty where they stand as planted
 */
public record Bed(String id, String name, double areaM2, Optional<String> texture, OptionalDouble rootableDepthCm,
        double stonesPercent, double shade, boolean windy, Optional<Roof> roof, double competing,
        OptionalDouble tapLitresPerMinute, OptionalDouble organicPercent, OptionalDouble tubLitres, boolean sheltered,
        List<List<String>> rows) {

    /**
     * A roof that sheds its rain onto the bed.
     *
     * @param areaM2 plan area, m²
     * @param surface its covering by name, {@code tiles} for example
     */
    public record Roof(double areaM2, String surface) {}
}
