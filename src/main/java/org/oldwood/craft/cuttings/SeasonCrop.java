package org.oldwood.craft.cuttings;

import org.oldwood.season.Season;

/**
 * What a lot is expected to bear in one season.
 *
 * @param share of a full crop, 0 to 1
 * @param expectedKg kg, by the default yield
 * @param lowKg kg; one lot in ten bears less
 * @param middleKg kg; half bear less
 * @param highKg kg; one lot in ten bears more
 */
public record SeasonCrop(
        Season season, double share, double expectedKg, double lowKg, double middleKg, double highKg) {}
