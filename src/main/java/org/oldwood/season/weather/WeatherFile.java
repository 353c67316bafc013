package org.oldwood.season.weather;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import org.oldwood.store.Text;

/** A garden's {@code weather.csv}: reads it, adds to it, writes it whole or not at all. */
public final class WeatherFile {
    public static final String NAME = "weather.csv";

    private WeatherFile() {}

    /** The garden's weather; none where there is no file or it has problems, which are told. */
    public static Weather read(Path folder, LocalDate today, Problems problems) throws IOException {
        Path file = folder.resolve(NAME);
        if (!Text.isThere(file)) { return Weather.none(); }
        return WeatherReader.read(Text.octets(file), NAME, today, WeatherHints.NONE, problems)
                .map(WeatherImport::weather).orElse(Weather.none());
    }

    /**
     * Both together, value by value. A value that both have, differently, is a problem, unless {@code replace} says
     * that the new one counts.
     */
    public static Weather together(Weather old, Weather added, boolean replace, Problems problems) {
        List<WeatherDay> all = new ArrayList<>(old.days());
        for (WeatherDay day : added.days()) {
            Optional<WeatherDay> before = old.on(day.date());
            WeatherDay both = before.map(day::over).orElse(day);
            if (!replace && before.filter(each -> !each.over(day).equals(both)).isPresent()) {
                problems.tell("day-twice", Place.of(NAME), day.date());
            }
            all.add(both);
        }
        return Weather.of(all);
    }

    /** Writes the file beside the old one, makes sure of it, then puts it in its place. */
    public static void write(Path folder, Weather weather) throws IOException {
        StringBuilder text = new StringBuilder("date,tmin,tmax,rain\n");
        for (WeatherDay day : weather.days()) {
            text.append(day.date());
            for (OptionalDouble value : List.of(day.minC(), day.maxC(), day.rainMm())) {
                text.append(',');
                if (value.isPresent()) { text.append(value.getAsDouble()); }
            }
            text.append('\n');
        }
        Output.write(folder.resolve(NAME), text.toString());
    }
}
