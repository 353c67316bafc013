package org.oldwood.craft.feeding;

import java.util.List;

/**
 * What an application gives to a season. In its own season the share that plants can use counts; in the next one, of
 * organic materials, a small share of their nitrogen.
 *
 * <p>Source: RB209 section 2 (AHDB), Tables 2.2 to 2.7 and 2.17 for the shares, page 9 for the second year. Checked
 * against {@code reference/organic-supply.csv}. The rest of phosphate and potash stays in the soil and shows in the
 * next soil test.
 */
public final class Supply {
    private Supply() {}

    /** g/m² that count in the season of the application. */
    public static Nutrients inItsSeason(Feed feed, double grams, double areaM2) {
        return feed.gives(grams).times(1 / areaM2);
    }

    /**
     * g/m² that count in the season after.
     *
     * @param residualShare share of the total nitrogen that comes in the second year
     */
    public static Nutrients inTheNextSeason(Feed feed, double grams, double areaM2, double residualShare) {
        return feed.organic() ? Nutrients.NONE.withN(feed.holds(grams).n() * residualShare / areaM2) : Nutrients.NONE;
    }

    /**
     * What is carried of phosphate, potash and magnesia from seasons that had more than they needed, g/m². What one
     * season leaves unused, the next may use.
     *
     * @param seasons what counted in each season, the oldest first, g/m²
     * @param need the need of a season; a nutrient of which the school tells none is not carried
     * @param share share of a surplus that the next season still finds
     */
    public static Nutrients carried(List<Nutrients> seasons, Need need, Nutrients share) {
        Nutrients carried = Nutrients.NONE;
        for (Nutrients season : seasons) {
            carried = carried.plus(season).minus(need.gPerM2()).atLeastZero().times(share);
        }
        Nutrients all = carried;
        return Nutrients.each(nutrient -> need.known().contains(nutrient) ? all.of(nutrient) : 0);
    }
}
