package org.oldwood.craft.pruning;

import java.util.OptionalInt;
import org.oldwood.crop.Stems;

/**
 * A bush, or a row of canes, in the winter when it is pruned.
 *
 * @param stems the stems by age, all of them; for a form with permanent branches, its main branches
 * @param sick how many of these are dead or diseased
 * @param weak how many of these are weak, damaged or hang low, and are not sick
 * @param seasons growing seasons completed since planting; empty where the planting year is unknown
 * @param renovationWinter 1 in the first winter of bringing back a neglected bush, 2 in the second …; 1 where no such
 *     work has begun
 * @param metres length of the row, or the room of one plant in its row
 */
public record Bush(Stems stems, Stems sick, Stems weak, OptionalInt seasons, int renovationWinter, double metres) {

    public Bush {
        for (int age = 1; age <= Math.max(sick.oldest(), weak.oldest()); age++) {
            if (sick.at(age) + weak.at(age) > stems.at(age)) {
                throw new IllegalArgumentException("more sick and weak stems of age %s than there are stems: %s of %s"
                        .formatted(age, sick.at(age) + weak.at(age), stems.at(age)));
            }
        }
        if (renovationWinter < 1 || !(metres > 0)) {
            throw new IllegalArgumentException("renovation winter " + renovationWinter + ", metres " + metres);
        }
    }

    /** Sound stems, planting year unknown, one metre of row. */
    public static Bush of(Stems stems) {
        return new Bush(stems, Stems.NONE, Stems.NONE, OptionalInt.empty(), 1, 1);
    }

    public Bush with(Stems other) { return new Bush(other, sick, weak, seasons, renovationWinter, metres); }

    public Bush withFaults(Stems sickStems, Stems weakStems) {
        return new Bush(stems, sickStems, weakStems, seasons, renovationWinter, metres);
    }

    public Bush inRenovationWinter(int winter) { return new Bush(stems, sick, weak, seasons, winter, metres); }

    public Bush along(double rowMetres) { return new Bush(stems, sick, weak, seasons, renovationWinter, rowMetres); }

    /** True where it is known that fewer than {@code completed} seasons are completed. */
    boolean isBefore(int completed) {
        return seasons.isPresent() && seasons.getAsInt() < completed;
    }
}
