package org.oldwood.season;

import java.time.LocalDate;
import java.util.stream.LongStream;
import org.oldwood.season.SeasonDays.Place;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;

public final class GardenClimate {
    private final Climate climate;
    private final SeasonMethods methods;
    private final Documents documents;
    private final Place place;

    /**
     * @param latitude the garden's, degrees, south negative
     * @param weather measured days; may be none
     */
    public GardenClimate(double latitude, Climate climate, Weather weather, Documents documents) {
        this.climate = climate;
        this.methods = SeasonMethods.read(documents);
        this.documents = documents;
        this.place = new Place(new SunYear(latitude), climate.meanMinC().curve(), climate.meanMaxC().curve(),
                methods.spreadC(climate), weather);
    }

    public Climate climate() { return climate; }

    /** The days that were measured; may be none. */
    public Weather weather() { return place.weather(); }

    public SeasonMethods methods() { return methods; }

    SeasonClimate season(Season season) {
        return new SeasonClimate(new SeasonDays(season, place), climate, methods, documents);
    }

    /** Standard deviation of daily means about the normal day, °C. */
    public double spreadC() {
        return place.spreadC();
    }

    /** The normal day's greatest temperature on a day of a year of 365, °C. */
    public double normalMaxC(int day) {
        return place.dailyMaxC().on(day % 365);
    }

    /** Whether the ground is as a rule frozen on a day: hard frost is over some weeks before it opens. */
    public boolean freezesGround(LocalDate date) {
        return LongStream.rangeClosed(0, Math.round(methods.frost().groundOpensAfter().is()))
                .anyMatch(before -> freezes(date.minusDays(before)));
    }

    /** Whether a day as a rule has hard frost. */
    public boolean freezes(LocalDate date) {
        int day = SeasonDays.normalDay(date);
        return (normalMinC(day) + normalMaxC(day)) / 2 < methods.frost().groundBelow().is();
    }

    /** The normal night's least temperature on a day of a year of 365, °C. */
    public double normalMinC(int day) {
        return place.dailyMinC().on(day % 365);
    }
}
