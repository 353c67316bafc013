package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What was noted of a lot so far.
 *
 * @param struck how many were struck, at least 1
 * @param alive the last known number alive, from 0 to {@code struck}; {@code struck} where none was counted
 * @param countedOn when it was counted; the day of striking where it never was
 */
public record LotCounts(int struck, LocalDate struckOn, int alive, LocalDate countedOn, Optional<LocalDate> liftedOn,
        Optional<LocalDate> plantedOutOn) {
    public LotCounts {
        if (struck < 1 || alive < 0 || alive > struck) {
            throw new IllegalArgumentException("of " + struck + " struck cuttings " + alive + " cannot be alive");
        }
    }

    /** A lot of which nothing was noted since it was struck. */
    public static LotCounts struck(int number, LocalDate on) {
        return new LotCounts(number, on, number, on, Optional.empty(), Optional.empty());
    }

    /** The same lot after {@code number} were counted alive. */
    public LotCounts counted(int number, LocalDate on) {
        return new LotCounts(struck, struckOn, number, on, liftedOn, plantedOutOn);
    }

    /** The same lot after {@code number} were lifted, fit to plant. */
    public LotCounts lifted(int number, LocalDate on) {
        return new LotCounts(struck, struckOn, number, on, Optional.of(on), plantedOutOn);
    }

    /** The same lot after {@code number} were planted out. */
    public LotCounts plantedOut(int number, LocalDate on) {
        return new LotCounts(struck, struckOn, number, on, liftedOn.or(() -> Optional.of(on)), Optional.of(on));
    }

    public boolean wasCounted() { return alive < struck || countedOn.isAfter(struckOn); }
}
