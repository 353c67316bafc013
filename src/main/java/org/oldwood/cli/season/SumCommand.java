package org.oldwood.cli.season;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.facts.GardenStages;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What {@code chill} and {@code heat} have in common: sums over stretches of days. */
abstract class SumCommand extends GardenCommand {
    @Option(names = "--weather", paramLabel = "FILE")
    Optional<Path> file = Optional.empty();

    @Mixin
    WeatherOptions how = new WeatherOptions();

    @Option(names = "--latitude", paramLabel = "DEGREES")
    Optional<Double> latitude = Optional.empty();

    @Option(names = "--from", paramLabel = "DATE")
    Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DATE")
    Optional<LocalDate> to = Optional.empty();

    /** What is added up: its key among the models, and its unit in words. */
    record Measure(String key, String unit) {}

    /** What was found for one stretch: a total for each measure. */
    record Line(Stretch stretch, List<Double> totals, int filled) {}

    private record Answer(Optional<String> unit, List<Sum> sums, Optional<List<ChillWants.Told>> crops) {}

    private record Sum(LocalDate from, LocalDate to, Optional<Double> total, Optional<List<Total>> totals,
            int filledDays) {}

    private record Total(String model, String unit, double total) {}

    record Stretch(String label, Days days) {
        Stretch(String label, LocalDate first, LocalDate last) { this(label, new Days(first, last)); }

        LocalDate first() { return days.first(); }

        LocalDate last() { return days.last(); }
    }

    abstract Stretch usual(Season season, SeasonMethods methods);

    /** What is asked for, one or more. */
    abstract List<Measure> measures(Documents documents);

    /** The totals by measure and stretch. */
    abstract double[][] totals(HourlySeries series, List<Days> stretches, Documents documents);

    /** What a garden's crops want, to be told beside the sums; empty where that is not the question. */
    Optional<List<ChillWants>> wants(Optional<HourlySeries> series, List<Days> stretches,
            Optional<GardenFolder> folder) {
        return Optional.empty();
    }

    @Override
    public int run() throws IOException {
        Optional<GardenFolder> folder = folderIfAny();
        Documents documents = documents();
        List<Measure> measures = measures(documents);
        double at = latitude(folder);
        Weather weather = weather(folder);
        Optional<GardenClimate> climate = here(folder).flatMap(each -> climate(each, weather));
        SeasonMethods methods = SeasonMethods.read(documents);
        List<Stretch> stretches = stretches(weather, climate.isPresent(), Hemisphere.of(at), methods);
        List<Days> days = stretches.stream().map(Stretch::days).toList();
        Optional<HourlySeries> series = stretches.isEmpty() ? Optional.empty()
                : Optional.of(series(at, weather, climate, stretches));
        List<Line> lines = series.map(each -> lines(each, stretches, totals(each, days, documents))).orElse(List.of());
        Optional<List<ChillWants>> wants = wants(series, days, folder);
        Optional<String> unit = measures.size() == 1 ? Optional.of(measures.get(0).unit()) : Optional.empty();
        return answer(() -> new Answer(unit, lines.stream().map(line -> sum(line, measures)).toList(),
                wants.map(all -> all.stream().map(ChillWants::told).toList())), () -> {
                    if (lines.isEmpty()) { tell("No whole season lies in the record; give --from and --to."); }
                    lines.forEach(line -> print(line, measures));
                    wants.orElse(List.of()).forEach(each -> out().hanging("", 2, each.inWords()));
                });
    }

    private static Sum sum(Line line, List<Measure> measures) {
        List<Total> totals = IntStream.range(0, measures.size()).mapToObj(
                i -> new Total(measures.get(i).key(), measures.get(i).unit(), Words.rounded(line.totals().get(i), 4)))
                .toList();
        boolean one = totals.size() == 1;
        return new Sum(line.stretch().first(), line.stretch().last(),
                Optional.of(totals.get(0).total()).filter(any -> one), Optional.of(totals).filter(any -> !one),
                line.filled());
    }

    /** Several sums stand below each other. */
    private void print(Line line, List<Measure> measures) {
        String label = line.stretch().label();
        String filled = line.filled() == 0 ? "" : ", " + line.filled() + " days not measured";
        List<String> totals = IntStream.range(0, measures.size())
                .mapToObj(i -> String.format(Locale.ROOT, "%9.1f %s", line.totals().get(i), measures.get(i).unit()))
                .toList();
        if (totals.size() == 1) {
            out().line("%-24s  %s%s".formatted(label, totals.get(0), filled));
        } else {
            out().line(label + filled);
            totals.forEach(total -> out().line("  " + total));
        }
    }

    /** The garden whose climate is the record's; a file with a latitude of its own is from elsewhere. */
    private Optional<GardenFolder> here(Optional<GardenFolder> folder) {
        return folder.filter(each -> file.isEmpty() || latitude.isEmpty());
    }

    private static Optional<GardenClimate> climate(GardenFolder folder, Weather weather) {
        Problems problems = new Problems();
        Optional<GardenClimate> climate = GardenStages.climate(folder.garden(), weather, folder.documents(), problems);
        if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
        return climate;
    }

    private static List<Line> lines(HourlySeries series, List<Stretch> stretches, double[][] totals) {
        return IntStream.range(0, stretches.size()).mapToObj(at -> new Line(stretches.get(at),
                Arrays.stream(totals).map(total -> total[at]).toList(), series.filled(stretches.get(at).days())))
                .toList();
    }

    private HourlySeries series(double latitude, Weather weather, Optional<GardenClimate> climate,
            List<Stretch> stretches) {
        LocalDate first = stretches.get(0).first();
        // what the models remember comes from measured days alone, or from a mean year's
        LocalDate begin = weather.isEmpty() ? first.minusDays(31) : Collections.min(List.of(first, weather.first()));
        LocalDate last = stretches.get(stretches.size() - 1).last();
        LocalDate end = weather.on(last.plusDays(1)).isPresent() ? last.plusDays(1) : last;
        return HourlySeries.of(latitude, weather, climate, begin, end).orElseThrow(
                () -> usage("there is neither weather nor climate. Give --weather FILE, or for a garden: %s."
                        .formatted(GardenStages.lackingClimate())));
    }

    private double latitude(Optional<GardenFolder> folder) {
        double at = latitude.or(() -> folder.map(each -> each.garden().site().latitude()))
                .orElseThrow(() -> usage("give --latitude, or --garden DIR"));
        if (!(at >= -90 && at <= 90)) { throw usage("--latitude must be from -90 to 90 degrees but is " + at); }
        return at;
    }

    private Weather weather(Optional<GardenFolder> folder) throws IOException {
        if (file.isEmpty()) { return folder.isEmpty() ? Weather.none() : Planning.weather(folder.get(), today()); }
        Problems problems = new Problems();
        return how.read(file.get(), here(folder), this, problems)
                .orElseThrow(() -> new RecordException(problems.list())).weather();
    }

    private List<Stretch> stretches(Weather weather, boolean climate, Hemisphere hemisphere, SeasonMethods methods) {
        refuseIf(from.isPresent() != to.isPresent(), "give --from and --to together");
        if (from.isPresent() && to.isPresent()) {
            refuseIf(from.get().isAfter(to.get()), "--from must not lie after --to");
            return List.of(new Stretch(from.get() + " to " + to.get(), from.get(), to.get()));
        }
        List<Stretch> all = whole(weather, hemisphere, methods);
        boolean byMeans = file.isEmpty() && (climate || weather.isEmpty());
        if (all.isEmpty() && byMeans) { return List.of(usual(Season.containing(today(), hemisphere), methods)); }
        return all;
    }

    /** The seasons whose stretch lies wholly in the record. */
    private List<Stretch> whole(Weather weather, Hemisphere hemisphere, SeasonMethods methods) {
        List<Stretch> all = new ArrayList<>();
        if (weather.isEmpty()) { return all; }
        Season season = Season.containing(weather.first(), hemisphere);
        for (Stretch one = usual(season, methods); !one.last().isAfter(weather.last()); one = usual(season, methods)) {
            if (!one.first().isBefore(weather.first())) { all.add(one); }
            season = season.plus(1);
        }
        return all;
    }
}
