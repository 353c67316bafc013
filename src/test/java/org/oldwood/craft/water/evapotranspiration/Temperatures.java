package org.oldwood.craft.water.evapotranspiration;

import java.util.OptionalDouble;

public final class Temperatures {
    private Temperatures() {}

    /** A day of which only the temperatures are known. */
    public static DayWeather only(double tmin, double tmax) {
        return new DayWeather(tmin, tmax, Humidity.UNKNOWN, OptionalDouble.empty(), Sunshine.UNKNOWN);
    }
}
