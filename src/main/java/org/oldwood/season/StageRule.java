package org.oldwood.season;

import java.time.MonthDay;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stage;

/**
 * How a crop comes to a stage. A crop's rules stand in its {@code stages} section under {@code models}; the kinds are
 * these.
 */
public sealed interface StageRule {
    /** This rule's own error, one standard deviation, days. */
    Figure plusMinus();

    /**
     * Heat above a base adds up from the day on which heat begins to count.
     *
     * @param baseC base temperature, °C
     * @param dayLength whether each day's heat is weighted by the square of (day length/12 h)
     * @param sum the heat that the stage needs, °C·d
     * @param window the stage is held between two days of the year, written for the north
     * @param warmSummer what holds where summers are too warm for the sum
     */
    record Heat(@Key(least = -20, most = 30) double baseC, boolean dayLength, Figure sum, Figure plusMinus,
            Optional<Window> window, Optional<WarmSummer> warmSummer) implements StageRule {}

    /** A number of days after another stage, or before it where the number is negative. */
    record Days(Stage of, Figure days, Figure plusMinus) implements StageRule {}

    /**
     * Heat above a base adds up from another stage on; the days it takes stay within the figure's range.
     *
     * @param early the sum for early cultivars, where they differ
     * @param late the sum for late cultivars
     */
    record HeatAfter(Stage of, @Key(least = -20, most = 30) double baseC, Figure sum, Figure days, Figure plusMinus,
            Optional<Figure> early, Optional<Figure> late) implements StageRule {}

    /** The daily mean rises to a temperature in spring. */
    record MeanRises(Figure aboveC, Figure plusMinus) implements StageRule {}

    /**
     * A day of the year, which is one position of the sun, that slides with the mean of the autumn.
     *
     * @param north the day of the northern year at {@code atC}
     * @param atC mean of the autumn at which it holds
     * @param perC days later for each degree above it
     * @param unseenPlusMinus the ± where no such autumn was ever looked at: warmer ones, and the south
     */
    record LeafFall(MonthDay north, Figure atC, Figure perC, Figure plusMinus,
            Figure unseenPlusMinus) implements StageRule {}

    /** From a day to a day of the northern year, both included. */
    record Window(MonthDay notBefore, MonthDay notAfter) {}

    /** Where the warmest month's mean is above this, the day of the northern year that holds. */
    record WarmSummer(Figure warmestMonthC, MonthDay then) {}
}
