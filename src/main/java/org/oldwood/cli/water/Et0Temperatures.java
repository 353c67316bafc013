package org.oldwood.cli.water;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.cli.command.Planning;
import org.oldwood.craft.water.evapotranspiration.MeanTemperatures;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.Climate;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.season.weather.WeatherFile;

/**
 * A day's temperatures, °C.
 *
 * @param words where they come from; empty where they were given
 */
record Et0Temperatures(double lowest, double highest, String words) {
    /** A garden's of a day: as measured, else its climate's means; empty where it has neither. */
    static Optional<Et0Temperatures> of(GardenFolder folder, LocalDate today, LocalDate date) {
        Weather weather = Planning.weather(folder, today);
        Optional<WeatherDay> day = weather.on(date)
                .filter(one -> one.minC().isPresent() && one.maxC().isPresent());
        if (day.isPresent()) {
            return Optional.of(new Et0Temperatures(
                    day.get().minC().getAsDouble(),
                    day.get().maxC().getAsDouble(),
                    "temperatures from " + WeatherFile.NAME));
        }
        return folder.garden()
                .climate()
                .flatMap(json -> Climate.of(json, folder.documents(), folder.problems()))
                .map(climate -> ofMeans(climate, date));
    }

    private static Et0Temperatures ofMeans(Climate climate, LocalDate date) {
        MeanTemperatures means = new MeanTemperatures(climate);
        return new Et0Temperatures(
                means.lowest(date),
                means.highest(date),
                "temperatures not given and not in %s: the mean ones of that day of the year, %s"
                        .formatted(WeatherFile.NAME, climate.name()));
    }
}
