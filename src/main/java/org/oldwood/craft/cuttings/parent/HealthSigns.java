package org.oldwood.craft.cuttings.parent;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;

/**
 * What bars a bush from being a parent.
 *
 * @param uninspectedYears age from which a bush that was never inspected calls for a warning, years
 * @param local what local rules to check, one line each
 */
public record HealthSigns(Figure uninspectedYears, List<Sign> signs, List<String> local) {
    /**
     * A finding and what follows from it.
     *
     * @param finding as the journal says it: {@code big-bud}
     * @param bars whether no cutting should be taken at all; otherwise it is a warning
     */
    public record Sign(String finding, boolean bars, String words, List<String> sources, Seen seen) {}

    /** The sign of a finding that bars the bush, if it is one. */
    public Optional<Sign> barring(String finding) {
        return signs.stream().filter(sign -> sign.bars && sign.finding.equals(finding)).findFirst();
    }
}
