package org.oldwood.craft.feeding;

import java.util.List;

/**
 * What one of the year's dressings has to bring. Nitrogen goes by the shares of the timing: after the first dressing
 * its share should have been given, after the last all of it. Until one is noted, a dressing supposes that those before
 * it will be given; what the ceiling cut off goes with the next. Phosphate, potash and magnesia all go with the first,
 * for their time does not matter on plants that stand (RB209 section 7). No single dressing of nitrogen passes its
 * ceiling.
 */
public final class Dressings {
    private Dressings() {}

    /**
     * What dressing number {@code which} brings, g/m².
     *
     * @param dressings the dressings of the year
     * @param which its place, 0 for the first; beyond the last it takes what is left
     * @param balance need and what was given so far this season, g/m²
     * @param begun whether anything was fed this season
     * @param mostN the ceiling of nitrogen in one dressing, g/m²
     */
    public static Nutrients due(
            List<Timing.Dressing> dressings, int which, Balance balance, boolean begun, double mostN) {
        double given = balance.given().n();
        double need = balance.need().n();
        double n = 0;
        for (int each = begun ? which : 0; each <= which; each++) {
            n = Math.min(mostN, Math.max(0, need * shareUntil(dressings, each) - given));
            given += n;
        }
        return which == 0 || begun ? balance.due().withN(n) : Nutrients.NONE.withN(n);
    }

    private static double shareUntil(List<Timing.Dressing> dressings, int which) {
        if (which >= dressings.size() - 1) {
            return 1;
        }
        return dressings.subList(0, which + 1).stream()
                .mapToDouble(Timing.Dressing::share)
                .sum();
    }
}
