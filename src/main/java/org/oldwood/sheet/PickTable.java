package org.oldwood.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What one crop gave, season by season, against what plants of that age bear in print.
 *
 * @param crop its plural
 * @param seasons from the first to the coming one
 */
record PickTable(String crop, List<Season> seasons) {

    /**
     * One season.
     *
     * @param label the season
     * @param picked what was picked; absent where nothing was noted
     * @param expected what to expect; absent without figures
     */
    record Season(String label, Optional<KgBar> picked, Optional<KgBar> expected) {}
}
