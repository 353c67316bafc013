package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.crop.Stage;

/**
 * How far a lot has come: the phase it is in, and the fraction of that phase that is over.
 *
 * @param fraction from 0 to 1
 */
public record LotPosition(Phase phase, double fraction) {

    /** Where a lot stood when it was last counted. */
    static LotPosition of(LotCounts lot, Timeline line) {
        LocalDate day = lot.countedOn();
        if (lot.plantedOutOn().isPresent()) {
            LocalDate end = line.growth()
                    .stages()
                    .date(line.inPlace(), Stage.LEAF_FALL_BEGINS)
                    .date();
            return new LotPosition(
                    Phase.PLANTING_OUT, fraction(lot.plantedOutOn().get(), day, end));
        }
        if (lot.liftedOn().isPresent()) {
            return new LotPosition(Phase.PLANTING_OUT, 0);
        }
        if (day.isBefore(line.rooted().date())) {
            return new LotPosition(
                    Phase.ROOTING,
                    fraction(line.tells().date(), day, line.rooted().date()));
        }
        return new LotPosition(
                Phase.NURSERY,
                fraction(line.rooted().date(), day, line.liftFrom().date()));
    }

    private static double fraction(LocalDate start, LocalDate day, LocalDate end) {
        double whole = ChronoUnit.DAYS.between(start, end);
        double over = ChronoUnit.DAYS.between(start, day);
        return whole <= 0 ? (over >= 0 ? 1 : 0) : Math.max(0, Math.min(1, over / whole));
    }
}
