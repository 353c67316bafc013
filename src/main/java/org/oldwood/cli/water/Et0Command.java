package org.oldwood.cli.water;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.oldwood.craft.water.evapotranspiration.ThirstTable;
import org.oldwood.craft.water.evapotranspiration.WindSpeed;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.Site;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how thirsty the weather of a day, or of a file of days, is. Needs no garden. */
@Command(
        name = "et0",
        description = {
            "show the reference evapotranspiration of a day, or of a file of days, by FAO-56",
            "",
            "Humidity, wind and sunshine may be left out; what is taken instead is said."
                    + " In a garden the place may be left out too, and the temperatures: then they"
                    + " are those of its weather.csv, or the mean ones of its climate.",
            "A file has the columns date,tmin,tmax and any of rhmin,rhmax,wind,sun,radiation;"
                    + " wind is in m/s at 2 m."
        },
        footer = {
            "",
            "Example:",
            "  oldwood et0 --at 50.8,4.35 --altitude 100 --on 2026-07-06 --tmin 12.3 \\",
            "    --tmax 21.5 --rh-min 63 --rh-max 84 --wind 2.078 --sun 9.25"
        })
public final class Et0Command extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "FILE", description = "a CSV file of days")
    Optional<Path> file = Optional.empty();

    @Option(
            names = "--at",
            paramLabel = "LAT,LON",
            description = "where, in degrees, south and west negative; the garden's otherwise")
    Optional<String> at = Optional.empty();

    @Option(names = "--altitude", paramLabel = "M", description = "height above the sea, m")
    Optional<Double> altitude = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE", description = "the day; today otherwise")
    Optional<LocalDate> on = Optional.empty();

    @Option(names = "--tmin", paramLabel = "C", description = "lowest temperature, °C")
    Optional<Double> tmin = Optional.empty();

    @Option(names = "--tmax", paramLabel = "C", description = "highest temperature, °C")
    Optional<Double> tmax = Optional.empty();

    @Option(names = "--rh-min", paramLabel = "PERCENT", description = "lowest relative humidity, %%")
    Optional<Double> rhMin = Optional.empty();

    @Option(names = "--rh-max", paramLabel = "PERCENT", description = "highest relative humidity, %%")
    Optional<Double> rhMax = Optional.empty();

    @Option(names = "--wind", paramLabel = "M/S", description = "wind, m/s")
    Optional<Double> wind = Optional.empty();

    @Option(
            names = "--wind-height",
            paramLabel = "M",
            description = "height at which the wind was measured, m; 2 otherwise")
    double windHeightM = 2;

    @Option(names = "--sun", paramLabel = "H", description = "hours of bright sunshine")
    Optional<Double> sun = Optional.empty();

    @Option(names = "--radiation", paramLabel = "MJ", description = "solar radiation, MJ/m² a day")
    Optional<Double> radiation = Optional.empty();

    @Option(names = "--coast", description = "the place lies at a coast")
    boolean coast;

    private final List<String> alsoTaken = new ArrayList<>();

    @Override
    public int run() throws IOException {
        Et0Place place = place();
        if (file.isPresent()) {
            return table(place);
        }
        LocalDate date = on.orElseGet(this::today);
        EvapotranspirationDay day = day(place, date);
        if (json) {
            out().json(writer -> Et0Words.json(writer, date, day, alsoTaken));
        } else {
            Et0Words.print(out(), date, day, alsoTaken);
        }
        return 0;
    }

    private Et0Place place() throws IOException {
        if (altitude.isPresent() && !(altitude.get() >= -430 && altitude.get() <= 9000)) {
            throw usage("--altitude must be from -430 to 9000 m but is " + altitude.get());
        }
        if (at.isPresent()) {
            if (altitude.isEmpty()) {
                alsoTaken.add("height not given: sea level; give --altitude M");
            }
            return new Et0Place(latitude(at.get()), altitude.orElse(0.0));
        }
        Optional<Site> site = folderIfAny().map(GardenFolder::garden).map(garden -> garden.site());
        return site.map(place -> new Et0Place(place.latitude(), altitude.orElse(place.heightM())))
                .orElseThrow(() -> usage(
                        "the place is not known: give --at LAT,LON, for example" + " --at 50.8,4.35, or --garden DIR"));
    }

    private double latitude(String text) {
        String[] parts = text.split(",", -1);
        try {
            double latitude = Double.parseDouble(parts[0].strip());
            double longitude = parts.length < 2 ? 0 : Double.parseDouble(parts[1].strip());
            if (parts.length <= 2 && Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) {
                return latitude;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw usage("--at must be a latitude from -90 to 90 and a longitude, for example 50.8,4.35, but is \"%s\""
                .formatted(text));
    }

    private EvapotranspirationDay day(Et0Place place, LocalDate date) throws IOException {
        Et0Temperatures temperatures = temperatures(date);
        try {
            DayWeather weather = new DayWeather(
                    temperatures.lowest(),
                    temperatures.highest(),
                    Humidity.of(number(rhMin), number(rhMax)),
                    windAtTwoMetres(),
                    new Sunshine(number(sun), number(radiation), coast));
            return place.day(date, weather);
        } catch (IllegalArgumentException e) {
            throw usage(String.valueOf(e.getMessage()));
        }
    }

    private Et0Temperatures temperatures(LocalDate date) throws IOException {
        if (tmin.isPresent() && tmax.isPresent()) {
            return new Et0Temperatures(tmin.get(), tmax.get(), "");
        }
        if (tmin.isPresent() || tmax.isPresent()) {
            throw usage("give both --tmin and --tmax, the day's lowest and highest temperature");
        }
        Optional<GardenFolder> folder = at.isPresent() ? Optional.empty() : folderIfAny();
        Optional<Et0Temperatures> found = Optional.empty();
        if (folder.isPresent()) {
            found = Et0Temperatures.of(folder.get(), today(), date);
            stopOnProblems(folder.get());
        }
        found.ifPresent(known -> alsoTaken.add(known.words()));
        return found.orElseThrow(
                () -> usage("give --tmin and --tmax, the day's lowest and highest temperature, or a FILE of days%s"
                        .formatted(
                                folder.isEmpty()
                                        ? ""
                                        : "; the garden has neither this day in weather.csv" + " nor a climate")));
    }

    private OptionalDouble windAtTwoMetres() {
        if (wind.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!(windHeightM >= 0.5 && windHeightM <= 200)) {
            throw usage("--wind-height must be from 0.5 to 200 m but is " + windHeightM);
        }
        return OptionalDouble.of(windHeightM == 2 ? wind.get() : WindSpeed.atTwoMetres(wind.get(), windHeightM));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private int table(Et0Place place) throws IOException {
        String name = file.orElseThrow().toString();
        Problems problems = new Problems();
        List<String> lines = new String(Files.readAllBytes(readable(name)), StandardCharsets.UTF_8)
                .lines()
                .toList();
        ThirstTable.Days read = ThirstTable.read(lines, name, coast, problems);
        Et0Table table = Et0Table.of(read, place, name, alsoTaken, problems);
        if (!problems.isEmpty()) {
            throw new RecordException(problems.list());
        }
        if (json) {
            out().json(table::json);
        } else {
            table.print(out());
        }
        return 0;
    }
}
