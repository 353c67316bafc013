package org.oldwood.cli.water;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.oldwood.cli.command.AnyPlace;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.craft.water.evapotranspiration.DayWeather;
import org.oldwood.craft.water.evapotranspiration.EvapotranspirationDay;
import org.oldwood.craft.water.evapotranspiration.Humidity;
import org.oldwood.craft.water.evapotranspiration.ReferenceEvapotranspiration;
import org.oldwood.craft.water.evapotranspiration.Sunshine;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.SeasonDays;
import org.oldwood.season.place.Spot;
import org.oldwood.season.weather.WeatherDay;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how thirsty the weather of a day, or of a file of days, is. Needs no garden. */
@Command(name = "et0")
public final class Et0Command extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "FILE")
    Optional<Path> file = Optional.empty();

    @Option(names = "--at", paramLabel = "LAT,LON")
    Optional<String> at = Optional.empty();

    @Option(names = "--altitude", paramLabel = "M")
    Optional<Double> altitude = Optional.empty();

    @Option(names = "--on", paramLabel = "DATE")
    Optional<LocalDate> on = Optional.empty();

    @Option(names = "--tmin", paramLabel = "C")
    Optional<Double> tmin = Optional.empty();

    @Option(names = "--tmax", paramLabel = "C")
    Optional<Double> tmax = Optional.empty();

    @Option(names = "--rh-min", paramLabel = "PERCENT")
    Optional<Double> rhMin = Optional.empty();

    @Option(names = "--rh-max", paramLabel = "PERCENT")
    Optional<Double> rhMax = Optional.empty();

    @Option(names = "--wind", paramLabel = "M/S")
    Optional<Double> wind = Optional.empty();

    @Option(names = "--wind-height", paramLabel = "M")
    double windHeightM = 2;

    @Option(names = "--sun", paramLabel = "H")
    Optional<Double> sun = Optional.empty();

    @Option(names = "--radiation", paramLabel = "MJ")
    Optional<Double> radiation = Optional.empty();

    @Option(names = "--coast")
    boolean coast;

    private final List<String> alsoTaken = new ArrayList<>();

    @Override
    public int run() throws IOException {
        Spot spot = spot();
        if (file.isPresent()) { return table(spot, file.get().toString()); }
        LocalDate date = on.orElseGet(this::today);
        EvapotranspirationDay day = day(spot, date);
        return answer(() -> Et0Words.Terms.of(date, day, alsoTaken), () -> Et0Words.print(out(), date, day, alsoTaken));
    }

    private Spot spot() {
        if (altitude.isPresent() && !(altitude.get() >= -430 && altitude.get() <= 9000)) {
            throw usage("--altitude must be from -430 to 9000 m but is " + altitude.get());
        }
        Spot spot = at.isPresent() ? AnyPlace.spot(at.get(), this)
                : folderIfAny().map(folder -> folder.garden().site().spot()).orElseThrow(() -> usage(
                        "the place is not known: give --at LAT,LON, for example --at 50.8,4.35, or --garden DIR"));
        if (at.isPresent() && altitude.isEmpty() && spot.heightM() == 0) {
            alsoTaken.add("height not given: sea level; give --altitude M");
        }
        return new Spot(spot.latitude(), spot.longitude(), altitude.orElse(spot.heightM()));
    }

    private EvapotranspirationDay day(Spot spot, LocalDate date) {
        WeatherDay temperatures = temperatures(date);
        try {
            DayWeather weather = new DayWeather(temperatures.minC().orElseThrow(), temperatures.maxC().orElseThrow(),
                    Humidity.of(number(rhMin), number(rhMax)), windAtTwoMetres(),
                    new Sunshine(number(sun), number(radiation), coast));
            return EvapotranspirationDay.of(spot.latitude(), spot.heightM(), date.getDayOfYear(), weather, 0);
        } catch (IllegalArgumentException e) {
            throw usage(String.valueOf(e.getMessage()));
        }
    }

    /** As given, else the garden's as measured that day, else its climate's means of that day of the year. */
    private WeatherDay temperatures(LocalDate date) {
        refuseIf(tmin.isPresent() != tmax.isPresent(),
                "give both --tmin and --tmax, the day's lowest and highest temperature");
        if (tmin.isPresent()) { return new WeatherDay(date, number(tmin), number(tmax), OptionalDouble.empty()); }
        Optional<GardenFolder> folder = at.isPresent() ? Optional.empty() : folderIfAny();
        refuseIf(folder.isEmpty(),
                "give --tmin and --tmax, the day's lowest and highest temperature, or a FILE of days");
        Optional<WeatherDay> measured = Planning.weather(folder.get(), today()).on(date)
                .filter(WeatherDay::hasTemperatures);
        if (measured.isPresent()) {
            alsoTaken.add("temperatures from weather.csv");
            return measured.get();
        }
        Optional<GardenClimate> climate = Planning.climate(folder.get(), state());
        stopOnProblems(folder.get());
        GardenClimate means = climate.orElseThrow(() -> usage("give --tmin and --tmax, the day's lowest and highest"
                + " temperature, or a FILE of days; the garden has neither this day in weather.csv nor a climate"));
        alsoTaken.add("temperatures not given and not in weather.csv: the mean ones of that day of the year, "
                + means.climate().name());
        int day = SeasonDays.normalDay(date);
        return new WeatherDay(date, OptionalDouble.of(means.normalMinC(day)), OptionalDouble.of(means.normalMaxC(day)),
                OptionalDouble.empty());
    }

    private OptionalDouble windAtTwoMetres() {
        if (wind.isEmpty()) { return OptionalDouble.empty(); }
        refuseIf(!(windHeightM >= 0.5 && windHeightM <= 200), "--wind-height must be from 0.5 to 200 m but is %s",
                windHeightM);
        return OptionalDouble.of(
                windHeightM == 2 ? wind.get() : ReferenceEvapotranspiration.windAtTwoMetres(wind.get(), windHeightM));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private int table(Spot spot, String name) throws IOException {
        Problems problems = new Problems();
        Et0Table table = Et0Table.read(text(name), name, spot, coast, alsoTaken, problems);
        if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
        return answer(() -> table, () -> table.print(out()));
    }
}
