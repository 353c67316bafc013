package org.oldwood.cli.water;

import java.time.LocalDate;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;

/**
 * Where days are worked out for.
 *
 * @param latitude degrees, south negative
 * @param heightM height above the sea, m
 */
record Et0Place(double latitude, double heightM) {
    /**
     * The day's terms there.
     *
     * @throws IllegalArgumentException where there was more sun than that day there can have
     */
    EvapotranspirationDay day(LocalDate date, DayWeather weather) {
        return EvapotranspirationDay.of(latitude, heightM, date.getDayOfYear(), weather, 0);
    }
}
