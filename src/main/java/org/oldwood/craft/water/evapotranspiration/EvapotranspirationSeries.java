package org.oldwood.craft.water.evapotranspiration;

import java.time.LocalDate;
import org.oldwood.season.DayLength;

/**
 * Reference evapotranspiration of many days in a row of which only the temperatures are known, by Penman-Monteith with
 * FAO-56's fall-backs (equations 48 and 50). Gives the same value as {@link EvapotranspirationDay} for each day; works
 * on arrays, so that thirty years take milliseconds and one series serves every bed of a garden.
 */
public final class EvapotranspirationSeries {
    private static final int DAYS = 366;

    private final double[] ra = new double[DAYS + 1];
    private final double gamma;
    private final double clearShare;
    private final double adjustment;
    private final double wind;

    /**
     * Prepares a place.
     *
     * @param latitude degrees, south negative
     * @param heightM height above the sea, m
     * @param adjustment kRs of equation 50, {@link Sunshine.FromTemperature#INLAND} for example
     * @param wind wind at 2 m, m/s
     */
    public EvapotranspirationSeries(double latitude, double heightM, double adjustment, double wind) {
        for (int day = 1; day <= DAYS; day++) {
            ra[day] = Math.max(0, DayLength.radiationMj(latitude, day));
        }
        gamma = AirPressure.psychrometric(AirPressure.kilopascals(heightM));
        clearShare = Radiation.clearSky(heightM, 1);
        this.adjustment = adjustment;
        this.wind = wind;
    }

    /** An inland place in the world's mean wind. */
    public static EvapotranspirationSeries inland(double latitude, double heightM) {
        return inland(latitude, heightM, DayWeather.WIND_NOT_KNOWN);
    }

    /** An inland place in a wind, m/s at 2 m. */
    public static EvapotranspirationSeries inland(double latitude, double heightM, double wind) {
        return new EvapotranspirationSeries(latitude, heightM, Sunshine.FromTemperature.INLAND, wind);
    }

    /**
     * Millimetres for each day.
     *
     * @param first the day of the first temperatures
     * @param tmin lowest temperatures, °C
     * @param tmax highest temperatures, °C, as many
     */
    public double[] daily(LocalDate first, double[] tmin, double[] tmax) {
        double[] mm = new double[tmin.length];
        int dayOfYear = first.getDayOfYear();
        int year = first.getYear();
        int length = first.lengthOfYear();
        for (int i = 0; i < mm.length; i++) {
            mm[i] = on(dayOfYear, tmin[i], tmax[i]);
            if (++dayOfYear > length) {
                dayOfYear = 1;
                length = LocalDate.ofYearDay(++year, 1).lengthOfYear();
            }
        }
        return mm;
    }

    /** Millimetres on one day of the year, 1 to 366. */
    public double on(int dayOfYear, double tmin, double tmax) {
        double sky = ra[dayOfYear];
        double clear = clearShare * sky;
        double solar = Math.min(clear, Radiation.solarFromRange(tmin, tmax, sky, adjustment));
        double ea = Vapour.fromDewPoint(tmin);
        double es = (ea + Vapour.saturation(tmax)) / 2;
        double tmean = (tmin + tmax) / 2;
        double slope = Vapour.slope(tmean);
        double energy = Radiation.netSolar(solar) - Radiation.netLongwave(tmin, tmax, ea, solar, clear);
        return Math.max(
                0,
                ReferenceEvapotranspiration.fromRadiation(slope, gamma, wind, energy)
                        + ReferenceEvapotranspiration.fromAir(slope, gamma, wind, es - ea, tmean));
    }
}
