package org.oldwood.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oldwood.sheet.round.Wood;

/**
 * One bush, or several that are alike in all that is shown.
 *
 * @param title the crop
 * @param who the plants' ids, with their varieties
 * @param facts where, since when, how grown
 * @param wood its stems; absent where they were not counted
 * @param taken what comes out, in words
 * @param remarks what else to know
 * @param outlook the six coming seasons; may be empty
 */
record BushCard(
        String title,
        List<Who> who,
        List<String> facts,
        Optional<Wood> wood,
        String taken,
        List<String> remarks,
        List<Season> outlook) {

    /** A plant's id, and the same with its variety. */
    record Who(String id, String words) {}

    /** The plants' ids with a space between. */
    String ids() {
        return who.stream().map(Who::id).collect(Collectors.joining(" "));
    }

    /**
     * One of the coming seasons.
     *
     * @param label the season
     * @param stems what stands after its winter's cut
     * @param bearing share of them that bears well, per cent
     * @param plan the crop with the plan; absent without figures
     * @param none the crop without pruning; absent without figures
     */
    record Season(String label, String stems, long bearing, Optional<KgBar> plan, Optional<KgBar> none) {}
}
