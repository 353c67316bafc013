package org.oldwood.cli.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.weather.WeatherHints;
import org.oldwood.season.weather.WeatherImport;
import org.oldwood.season.weather.WeatherReader;
import org.oldwood.season.weather.WeatherUnits;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine.Option;

/** How a file of weather is to be read that does not say it itself. */
final class WeatherOptions {
    @Option(names = "--columns", paramLabel = "OURS=THEIRS", split = ",")
    Map<String, String> columns = new TreeMap<>();

    @Option(names = "--degrees", paramLabel = "UNIT")
    Optional<String> units = Optional.empty();

    @Option(names = "--dates", paramLabel = "ORDER")
    Optional<String> dates = Optional.empty();

    /**
     * What a file holds; empty, or without its days, where {@code problems} tells of any.
     *
     * @param here the garden where it was measured, beside whose climate its degrees are looked at
     */
    Optional<WeatherImport> read(Path file, Optional<GardenFolder> here, GardenCommand command, Problems problems)
            throws IOException {
        Path path = command.path(file);
        if (!Files.isReadable(path)) { throw command.usage("cannot read " + file); }
        Optional<WeatherImport> read = WeatherReader.read(Files.readAllBytes(path), file.toString(), command.today(),
                hints(command), problems);
        Optional<String> why = here.filter(garden -> units.isEmpty())
                .flatMap(garden -> Planning.climate(garden, garden.on(command.today()))).flatMap(place -> read
                        .flatMap(each -> WeatherUnits.mayBeFahrenheit(each.weather(), place.climate().meanC())));
        why.ifPresent(words -> problems.tell("wrong-units maybe", Place.of(file.toString()), words));
        return why.isPresent() ? Optional.empty() : read;
    }

    private WeatherHints hints(GardenCommand command) {
        columns.keySet().forEach(ours -> command.mustKnow("column", Optional.of(ours), WeatherHints.COLUMNS));
        command.mustKnow("unit", units, WeatherUnits.keys());
        command.mustKnow("order", dates, List.of("day-first", "month-first"));
        return new WeatherHints(columns, units.map(WeatherUnits::of), dates.map("day-first"::equals));
    }
}
