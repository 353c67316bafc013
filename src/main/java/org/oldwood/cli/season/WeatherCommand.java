package org.oldwood.cli.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherFile;
import org.oldwood.season.weather.WeatherImport;
import org.oldwood.season.weather.WeatherReader;
import org.oldwood.store.JsonWriter;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a file of daily weather to the garden's {@code weather.csv}: all of it or nothing. */
@Command(
        name = "weather",
        description = {
            "add a file of daily weather to the garden",
            "",
            "Reads the columns date,tmin,tmax,rain in °C and mm, or NOAA GHCN-Daily CSV in tenths.",
            "A file with any problem is not taken over at all."
        },
        footer = {"", "Example:", "  oldwood weather add station.csv --garden demo-data/terrace-school"})
public final class WeatherCommand extends GardenCommand {
    private static final int SHOWN = 20;

    @Parameters(index = "0", paramLabel = "add", description = "the word add")
    String action = "";

    @Parameters(index = "1", paramLabel = "FILE", description = "the file of daily weather")
    Path file = Path.of("");

    @Option(names = "--replace", description = "where both have a day, take the new file's")
    boolean replace;

    @Override
    public int run() throws IOException {
        if (!action.equals("add")) {
            throw usage("weather can only add: oldwood weather add FILE");
        }
        GardenFolder folder = folder();
        stopOnProblems(folder);
        Path path = path(file);
        if (!Files.isReadable(path)) {
            throw usage("cannot read " + file);
        }
        Problems problems = new Problems();
        Optional<WeatherImport> read = WeatherReader.read(Files.readAllBytes(path), file.toString(), today(), problems);
        Weather old = WeatherFile.read(folder.path(), today(), problems);
        Weather added = read.map(WeatherImport::weather).orElse(Weather.none());
        Weather all = WeatherFile.together(old, added, replace, problems);
        if (!problems.isEmpty()) {
            throw new RecordException(some(problems.list()));
        }
        WeatherFile.write(folder.path(), all);
        if (json) {
            read.ifPresent(each -> out().json(writer -> write(writer, each)));
        } else {
            read.ifPresent(this::tellOf);
        }
        tell("Wrote " + folder.path().resolve(WeatherFile.NAME));
        return 0;
    }

    /** A file in other units has a problem a line; the one about the whole file comes last. */
    private static List<Problem> some(List<Problem> all) {
        if (all.size() <= SHOWN) {
            return all;
        }
        List<Problem> some = new java.util.ArrayList<>(all.subList(0, SHOWN));
        all.stream()
                .skip(SHOWN)
                .filter(each -> each.name().equals("wrong-units"))
                .forEach(some::add);
        return some;
    }

    private static void write(JsonWriter json, WeatherImport read) {
        Weather weather = read.weather();
        json.object().put("format", read.format()).put("days", (long) weather.count());
        if (!weather.isEmpty()) {
            json.put("first", weather.first().toString())
                    .put("last", weather.last().toString());
        }
        json.put("notMeasured", (long) read.notMeasured()).put("repeated", (long) read.repeated());
        json.array("gaps");
        for (WeatherImport.Gap gap : read.gaps()) {
            json.object()
                    .put("first", gap.first().toString())
                    .put("last", gap.last().toString())
                    .endObject();
        }
        json.endArray().endObject();
    }

    private void tellOf(WeatherImport read) {
        Weather weather = read.weather();
        out().paragraph(0, days(weather.count()) + " read as " + read.format() + ".");
        if (!weather.isEmpty()) {
            out().paragraph(0, "From " + weather.first() + " to " + weather.last() + ".");
        }
        List<WeatherImport.Gap> gaps = read.gaps();
        if (!gaps.isEmpty()) {
            out().paragraph(
                            0,
                            days(read.gapDays())
                                    + (read.gapDays() == 1 ? " is" : " are")
                                    + " left out, to be filled from the climate's means:");
        }
        for (WeatherImport.Gap gap : gaps.subList(0, Math.min(SHOWN, gaps.size()))) {
            out().paragraph(2, gap.first() + " to " + gap.last() + ", " + days(gap.days()));
        }
        if (read.notMeasured() > 0) {
            out().paragraph(
                            0,
                            days(read.notMeasured())
                                    + (read.notMeasured() == 1 ? " lacks" : " lack")
                                    + " a temperature.");
        }
        if (read.repeated() > 0) {
            out().paragraph(0, read.repeated() + " lines repeated a day.");
        }
    }

    private static String days(int count) {
        return count + (count == 1 ? " day" : " days");
    }
}
