package org.oldwood.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What one bush bears in the coming seasons, or several that are alike.
 *
 * @param who the plants' ids, with their varieties
 * @param facts where, since when, how grown
 * @param outlook the six coming seasons, those alike that follow each other in one
 */
record BushCard(String title, List<String> who, List<String> facts, List<Season> outlook) {

    /**
     * One of the coming seasons.
     *
     * @param label the season, or the first and last of several
     * @param stems what stands after its winter's cut
     * @param bearing share of them that bears well, per cent
     * @param plan the crop with the plan; absent without figures
     * @param none the crop without pruning; absent without figures
     */
    record Season(String label, String stems, long bearing, Optional<KgBar> plan, Optional<KgBar> none) {

        boolean sameAs(Season other) {
            return stems.equals(other.stems) && bearing == other.bearing
                    && plan.map(KgBar::inShort).equals(other.plan.map(KgBar::inShort))
                    && none.map(KgBar::inShort).equals(other.none.map(KgBar::inShort));
        }

        Season until(String last) {
            return new Season("%s to %s".formatted(label.split(" to ", 2)[0], last), stems, bearing, plan, none);
        }
    }
}
