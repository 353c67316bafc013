package org.oldwood.craft.water.evapotranspiration;

import java.util.List;
import org.oldwood.season.DayLength;

/**
 * One day's reference evapotranspiration with all its terms, for showing the arithmetic.
 *
 * @param extraterrestrial radiation at the top of the air (Ra), MJ/m²
 * @param daylightHours hours of daylight (N)
 * @param solar solar radiation (Rs), a guess at most the clear sky's, MJ/m²
 * @param clearSky solar radiation under a clear sky (Rso), MJ/m²
 * @param netSolar kept of it (Rns), MJ/m²
 * @param netLongwave lost to the sky (Rnl), MJ/m²
 * @param saturation mean saturation vapour pressure (es), kPa
 * @param vapour actual vapour pressure (ea), kPa
 * @param slope slope of the vapour pressure curve, kPa/°C
 * @param gamma psychrometric constant, kPa/°C
 * @param wind wind at 2 m, m/s
 * @param fromRadiation part driven by radiation, mm
 * @param fromAir part driven by wind and dry air, mm
 * @param hargreaves what Hargreaves' equation gives from the temperatures alone, mm
 * @param basis where humidity, wind and radiation come from, one sentence part each
 */
public record EvapotranspirationDay(double extraterrestrial, double daylightHours, double solar, double clearSky,
        double netSolar, double netLongwave, double saturation, double vapour, double slope, double gamma, double wind,
        double fromRadiation, double fromAir, double hargreaves, List<String> basis) {

    /**
     * Works out a day.
     *
     * @param latitude degrees, south negative
     * @param heightM height above the sea, m
     * @param soilHeat heat into the soil (G), MJ/m² a day; 0 for single days (FAO-56 eq. 42)
     * @throws IllegalArgumentException where there was more sun than that day there can have
     */
    public static EvapotranspirationDay of(double latitude, double heightM, int dayOfYear, DayWeather day,
            double soilHeat) {
        double ra = Math.max(0, DayLength.radiationMj(latitude, dayOfYear));
        double daylight = DayLength.hours(latitude, dayOfYear);
        double clear = Radiation.clearSky(heightM, ra);
        double solar = day.sunshine().solar(day.tmin(), day.tmax(), daylight, ra, clear);
        double ea = day.humidity().vapour().applyAsDouble(day.tmin(), day.tmax());
        double es = Vapour.meanSaturation(day.tmin(), day.tmax());
        double lost = Radiation.netLongwave(day.tmin(), day.tmax(), ea, solar, clear);
        double slope = Vapour.slope(day.tmean());
        double gamma = ReferenceEvapotranspiration.psychrometric(ReferenceEvapotranspiration.pressure(heightM));
        double wind = day.windOrMean();
        double energy = Radiation.netSolar(solar) - lost - soilHeat;
        return new EvapotranspirationDay(ra, daylight, solar, clear, Radiation.netSolar(solar), lost, es, ea, slope,
                gamma, wind, ReferenceEvapotranspiration.fromRadiation(slope, gamma, wind, energy),
                ReferenceEvapotranspiration.fromAir(slope, gamma, wind, es - ea, day.tmean()),
                ReferenceEvapotranspiration.hargreaves(day.tmin(), day.tmax(), day.tmean(), ra),
                List.of(day.humidity().inWords(), day.windInWords(), day.sunshine().inWords()));
    }

    /** Net radiation (Rn), MJ/m² (equation 40). */
    public double netRadiation() { return netSolar - netLongwave; }

    /** Reference evapotranspiration by Penman-Monteith, mm; not below 0. */
    public double penmanMonteith() {
        return Math.max(0, fromRadiation + fromAir);
    }
}
