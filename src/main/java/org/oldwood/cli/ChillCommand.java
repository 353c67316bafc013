package org.oldwood.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.oldwood.garden.Season;
import org.oldwood.season.ChillModels;
import org.oldwood.season.ChillModels.ChillModel;
import org.oldwood.season.HourlySeries;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Adds up the chill of winters, from a weather file or the garden. */
@Command(
        name = "chill",
        description = {
            "add up the chill of each winter, hour by hour",
            "",
            "A winter is 1 November to 28 February, in the south 1 May to 31 August. Models:",
            "hours-0-7.2, hours-below-7.2, utah, positive-utah, north-carolina, low-chill,",
            "modified-utah, raspberry, dynamic, dynamic-hour-before."
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

    @Override
    Stretch usual(Season season) {
        LocalDate first = season.day(11, 1);
        LocalDate after = season.day(3, 1);
        return new Stretch("winter of season " + season.label(), first, after.minusDays(1));
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
