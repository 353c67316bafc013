package org.oldwood.cli.season;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherFile;
import org.oldwood.season.weather.WeatherImport;
import org.oldwood.season.weather.WeatherImport.Gap;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a file of daily weather to the garden's {@code weather.csv}: all of it or nothing. */
@Command(name = "weather")
public final class WeatherCommand extends GardenCommand {
    private static final int SHOWN = 20;

    @Parameters(index = "0", paramLabel = "add")
    String action = "";

    @Parameters(index = "1", paramLabel = "FILE")
    Path file = Path.of("");

    @Mixin
    WeatherOptions how = new WeatherOptions();

    @Option(names = "--replace")
    boolean replace;

    @Override
    public int run() throws IOException {
        refuseIf(!action.equals("add"), "weather can only add: oldwood weather add FILE");
        GardenFolder folder = folder();
        stopOnProblems(folder);
        Problems problems = new Problems();
        Optional<WeatherImport> read = how.read(file, Optional.of(folder), this, problems);
        Weather old = WeatherFile.read(folder.path(), today(), problems);
        Weather added = read.map(WeatherImport::weather).orElse(Weather.none());
        Weather all = WeatherFile.together(old, added, replace, problems);
        if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
        WeatherFile.write(folder.path(), all);
        read.ifPresent(each -> answer(() -> Answer.of(each), () -> tellOf(each)));
        tell("Wrote " + folder.path().resolve(WeatherFile.NAME));
        return 0;
    }

    private record Answer(String format, int days, Optional<LocalDate> first, Optional<LocalDate> last, int notMeasured,
            int repeated, List<Gap> gaps) {
        static Answer of(WeatherImport read) {
            Optional<Weather> weather = Optional.of(read.weather()).filter(each -> !each.isEmpty());
            return new Answer(read.format(), read.weather().count(), weather.map(Weather::first),
                    weather.map(Weather::last), read.notMeasured(), read.repeated(), read.gaps());
        }
    }

    private void tellOf(WeatherImport read) {
        Weather weather = read.weather();
        out().paragraph(0, "%s read as %s.".formatted(days(weather.count()), read.format()));
        if (!weather.isEmpty()) { out().paragraph(0, "From %s to %s.".formatted(weather.first(), weather.last())); }
        tellOf(read.gaps());
        if (read.notMeasured() > 0) {
            out().paragraph(0, "%s %s a temperature.".formatted(days(read.notMeasured()),
                    read.notMeasured() == 1 ? "lacks" : "lack"));
        }
        if (read.repeated() > 0) {
            out().paragraph(0, Words.count(read.repeated(), "line", "lines") + " repeated a day.");
        }
    }

    private void tellOf(List<Gap> gaps) {
        if (!gaps.isEmpty()) {
            int out = gaps.stream().mapToInt(Gap::days).sum();
            out().paragraph(0, "%s %s left out, to be filled from the climate's means:".formatted(days(out),
                    out == 1 ? "is" : "are"));
        }
        gaps.stream().limit(SHOWN).forEach(
                gap -> out().paragraph(2, "%s to %s, %s".formatted(gap.first(), gap.last(), days(gap.days()))));
        if (gaps.size() > SHOWN) { out().paragraph(2, "and %s more stretches".formatted(gaps.size() - SHOWN)); }
    }

    private static String days(int count) { return Words.count(count, "day", "days"); }
}
