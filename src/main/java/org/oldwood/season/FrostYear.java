package org.oldwood.season;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.crop.Figure;

/**
 * Frost in a climate's mean year. Each night's least temperature is taken to lie about the normal night's with one
 * spread; it is smaller than the true one because cold nights come together.
 *
 * <p>The middle last frost is the last day after which, up to midsummer, ln 2 = 0.69 frosts are to be expected: half
 * the years then have none. The first of autumn likewise. Checked against thirty observed years of Yakima and
 * the printed dates of Minneapolis. Air
 * temperature in a screen; the ground may freeze while it stands above.
 */
public record FrostYear(GardenClimate climate, Season season) {
    private static final double HALF_THE_YEARS = Math.log(2);
    private static final int LONGEST = 182;

    /** How far both of its dates may be off, days. */
    public Figure plusMinus() {
        return climate.methods().frost().datePlusMinus();
    }

    /** The middle last frost of spring; empty where there is none in most years, or all summer. */
    public Optional<LocalDate> last() {
        return fromMidsummer(-1);
    }

    /** The middle first frost of autumn; empty where there is none in most years, or all summer. */
    public Optional<LocalDate> first() {
        return fromMidsummer(1);
    }

    private Optional<LocalDate> fromMidsummer(int step) {
        LocalDate midsummer = season.day(6, 30);
        double expected = 0;
        for (int i = 1; i <= LONGEST; i++) {
            LocalDate day = midsummer.plusDays((long) step * i);
            expected += chance(day, 0);
            if (expected >= HALF_THE_YEARS) { return i == 1 ? Optional.empty() : Optional.of(day); }
        }
        return Optional.empty();
    }

    /** How many nights at or below a temperature are to be expected, from a day to a day, both included. */
    double expected(double criticalC, LocalDate from, LocalDate to) {
        double expected = 0;
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            expected += chance(day, criticalC);
        }
        return expected;
    }

    private double chance(LocalDate day, double belowC) {
        double mean = climate.normalMinC(SeasonDays.normalDay(day));
        return Bell.below((belowC - mean) / climate.methods().frost().nightSpread().is());
    }
}
