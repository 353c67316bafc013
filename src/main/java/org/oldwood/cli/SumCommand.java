package org.oldwood.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.Hemisphere;
import org.oldwood.garden.Season;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.GardenStages;
import org.oldwood.season.HourlySeries;
import org.oldwood.season.Weather;
import org.oldwood.season.WeatherImport;
import org.oldwood.season.WeatherReader;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Option;

/** What {@code chill} and {@code heat} have in common: sums over stretches of days. */
abstract class SumCommand extends GardenCommand {
    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "daily weather; the garden's weather.csv and climate otherwise")
    Optional<Path> file = Optional.empty();

    @Option(
            names = "--latitude",
            paramLabel = "DEGREES",
            description = "where, south negative; the garden's otherwise")
    Optional<Double> latitude = Optional.empty();

    @Option(names = "--from", paramLabel = "DATE", description = "first day, included")
    Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DATE", description = "last day, included")
    Optional<LocalDate> to = Optional.empty();

    /** A stretch of days, both ends included, and what it is called. */
    record Stretch(String label, LocalDate first, LocalDate last) {}

    /** One line of the answer. */
    record Line(Stretch stretch, double total, int filled) {}

    /** The usual stretch of a season. */
    abstract Stretch usual(Season season);

    abstract double total(
            HourlySeries series, LocalDate first, LocalDate last, Documents documents);

    abstract String unit(Documents documents);

    @Override
    int run() throws IOException {
        Optional<GardenFolder> folder = folderIfAny();
        Documents documents = folder.map(GardenFolder::documents).orElseGet(Documents::bundled);
        String unit = unit(documents);
        double at = latitude(folder);
        Weather weather = weather(folder);
        Problems problems = new Problems();
        Optional<GardenClimate> climate =
                folder.flatMap(
                        each -> GardenStages.climate(each.garden(), weather, documents, problems));
        if (!problems.isEmpty()) {
            throw new RecordException(problems.list());
        }
        List<Line> lines = new ArrayList<>();
        List<Stretch> stretches = stretches(weather, Hemisphere.of(at));
        if (!stretches.isEmpty()) {
            LocalDate first = stretches.get(0).first().minusDays(31);
            LocalDate begin =
                    weather.isEmpty() || first.isBefore(weather.first()) ? first : weather.first();
            LocalDate end = stretches.get(stretches.size() - 1).last();
            HourlySeries series =
                    HourlySeries.of(at, weather, climate, begin, end)
                            .orElseThrow(
                                    () ->
                                            usage(
                                                    "there is neither weather nor climate. Give"
                                                            + " --weather FILE, or put a climate into"
                                                            + " garden.json."));
            for (Stretch one : stretches) {
                lines.add(
                        new Line(
                                one,
                                total(series, one.first(), one.last(), documents),
                                series.filled(one.first(), one.last())));
            }
        }
        print(lines, unit);
        return 0;
    }

    private double latitude(Optional<GardenFolder> folder) {
        double at =
                latitude.or(() -> folder.map(each -> each.garden().site().latitude()))
                        .orElseThrow(() -> usage("give --latitude, or --garden DIR"));
        if (!(at >= -90 && at <= 90)) {
            throw usage("--latitude must be from -90 to 90 degrees but is " + at);
        }
        return at;
    }

    private Weather weather(Optional<GardenFolder> folder) throws IOException {
        if (file.isEmpty()) {
            return folder.isEmpty() ? Weather.none() : Planning.weather(folder.get(), today());
        }
        Path path = path(file.get());
        if (!Files.isReadable(path)) {
            throw usage("cannot read " + file.get());
        }
        Problems problems = new Problems();
        Optional<WeatherImport> read =
                WeatherReader.read(
                        Files.readAllBytes(path), file.get().toString(), today(), problems);
        return read.orElseThrow(() -> new RecordException(problems.list())).weather();
    }

    private List<Stretch> stretches(Weather weather, Hemisphere hemisphere) {
        if (from.isPresent() != to.isPresent()) {
            throw usage("give --from and --to together");
        }
        if (from.isPresent() && to.isPresent()) {
            if (from.get().isAfter(to.get())) {
                throw usage("--from must not lie after --to");
            }
            return List.of(new Stretch(from.get() + " to " + to.get(), from.get(), to.get()));
        }
        if (weather.isEmpty()) {
            return List.of(usual(Season.containing(today(), hemisphere)));
        }
        List<Stretch> all = new ArrayList<>();
        Season season = Season.containing(weather.first(), hemisphere);
        while (!usual(season).first().isAfter(weather.last())) {
            Stretch stretch = usual(season);
            if (!stretch.first().isBefore(weather.first())
                    && !stretch.last().isAfter(weather.last())) {
                all.add(stretch);
            }
            season = season.plus(1);
        }
        return all;
    }

    private void print(List<Line> lines, String unit) {
        if (json) {
            out().json(
                            writer -> {
                                writer.object().put("unit", unit).array("sums");
                                for (Line line : lines) {
                                    writer.object()
                                            .put("from", line.stretch().first().toString())
                                            .put("to", line.stretch().last().toString())
                                            .put("total", rounded(line.total()))
                                            .put("filledDays", (long) line.filled())
                                            .endObject();
                                }
                                writer.endArray().endObject();
                            });
            return;
        }
        if (lines.isEmpty()) {
            tell("No whole season lies in the record; give --from and --to.");
        }
        for (Line line : lines) {
            out().line(
                            String.format(
                                    Locale.ROOT,
                                    "%-24s  %9.1f %s%s",
                                    line.stretch().label(),
                                    line.total(),
                                    unit,
                                    line.filled() == 0
                                            ? ""
                                            : ", " + line.filled() + " days not measured"));
        }
    }

    private static double rounded(double value) {
        return Math.round(value * 1e4) / 1e4;
    }
}
