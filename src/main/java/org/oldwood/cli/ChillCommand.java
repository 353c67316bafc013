package org.oldwood.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.Season;
import org.oldwood.season.ChillModels;
import org.oldwood.season.ChillModels.ChillModel;
import org.oldwood.season.HourlySeries;
import org.oldwood.season.SeasonMethods;
import org.oldwood.store.Documents;
import org.oldwood.store.JsonWriter;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Adds up the chill of winters, from a weather file or the garden. */
@Command(
        name = "chill",
        description = {
            "add up the chill of each winter, hour by hour",
            "",
            "A winter is 1 October to the end of February, in the south 1 April to 31 August.",
            "Much in print counts from 1 November or 1 May: give --from and --to. Models:",
            "hours-0-7.2, hours-below-7.2, utah, positive-utah, north-carolina, low-chill,",
            "modified-utah, raspberry, dynamic, dynamic-hour-before. Of a garden it tells",
            "what each crop wants beside it."
        },
        footer = {
            "",
            "Example:",
            "  oldwood chill --weather station.csv --latitude 46.6 --model dynamic"
        })
final class ChillCommand extends SumCommand {
    @Option(
            names = "--model",
            paramLabel = "MODEL",
            description = "the chill model; dynamic otherwise")
    Optional<String> model = Optional.empty();

    private List<ChillWants> wants = List.of();

    @Override
    Stretch usual(Season season, SeasonMethods methods) {
        return new Stretch(
                "winter of season " + season.label(),
                methods.chillFirst(season),
                methods.chillLast(season));
    }

    @Override
    void beside(HourlySeries series, List<Line> lines, GardenFolder folder) {
        if (wholeSeasons()) {
            wants = ChillWants.of(folder, folder.on(today()), series, lines);
            stopOnProblems(folder);
        }
    }

    @Override
    void tellBeside() {
        wants.forEach(each -> out().hanging("", 2, each.inWords()));
    }

    @Override
    void writeBeside(JsonWriter json) {
        json.array("crops");
        wants.forEach(each -> each.write(json));
        json.endArray();
    }

    @Override
    double total(HourlySeries series, LocalDate first, LocalDate last, Documents documents) {
        return series.sum(chosen(documents).begin(), first, last);
    }

    @Override
    String unit(Documents documents) {
        return chosen(documents).name();
    }

    private ChillModel chosen(Documents documents) {
        ChillModels models = ChillModels.read(documents);
        String key = model.orElse("dynamic");
        return models.find(key)
                .orElseThrow(
                        () ->
                                usage(
                                        "there is no chill model \""
                                                + key
                                                + "\". "
                                                + Nearest.hint(key, models.keys())));
    }
}
