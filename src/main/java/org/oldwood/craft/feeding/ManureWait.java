package org.oldwood.craft.feeding;

import java.time.LocalDate;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;

/**
 * How long before picking raw manure must have been given, because of the germs in it. A US organic rule that is
 * advised for home plots too; print has longer waits, and longer is safer.
 *
 * @param hanging days where the fruit hangs off the soil, as on bushes and canes
 * @param touching days where fruit touches the soil
 */
public record ManureWait(@Key("manureWait") Figure hanging, @Key("manureWaitTouching") Figure touching) {
    /** The last day for raw manure before a first picking, included. */
    public LocalDate latest(LocalDate firstPicking, boolean touchesSoil) {
        return firstPicking.minusDays((long) (touchesSoil ? touching : hanging).is());
    }
}
