package org.oldwood.cli;

import java.time.LocalDate;
import java.util.List;
import org.oldwood.garden.Season;
import org.oldwood.season.GrowingDegreeHours;
import org.oldwood.season.HourlySeries;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Adds up heat from a weather file or the garden. */
@Command(
        name = "heat",
        description = {
            "add up the heat of each spring and summer",
            "",
            "The stretch is 1 January to 30 June, in the south 1 July to 31 December.",
            "Models: sine and simple (degree days above --base), hours (growing degree hours)."
        },
        footer = {
            "",
            "Example:",
            "  oldwood heat --weather station.csv --latitude 46.6 --model sine --base 5"
        })
final class HeatCommand extends SumCommand {
    private static final List<String> MODELS = List.of("sine", "simple", "hours");

    @Option(
            names = "--model",
            paramLabel = "MODEL",
            description = "sine, simple or hours; sine otherwise")
    String model = "sine";

    @Option(names = "--base", paramLabel = "C", description = "base, °C; 5 otherwise")
    double baseC = 5;

    @Override
    Stretch usual(Season season) {
        return new Stretch(
                "season " + season.label(), season.day(1, 1), season.day(7, 1).minusDays(1));
    }

    @Override
    double total(HourlySeries series, LocalDate first, LocalDate last, Documents documents) {
        return switch (chosen()) {
            case "hours" -> series.sum(new GrowingDegreeHours(), first, last);
            case "simple" -> series.simpleDegreeDays(baseC, first, last);
            default -> series.degreeDays(baseC, first, last);
        };
    }

    @Override
    String unit(Documents documents) {
        return chosen().equals("hours")
                ? "growing degree hours"
                : "degree days above " + baseC + " °C (" + model + ")";
    }

    private String chosen() {
        if (!MODELS.contains(model)) {
            throw usage("there is no heat model \"" + model + "\". " + Nearest.hint(model, MODELS));
        }
        return model;
    }
}
