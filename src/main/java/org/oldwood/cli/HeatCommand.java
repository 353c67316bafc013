package org.oldwood.cli;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.oldwood.garden.Season;
import org.oldwood.season.GrowingDegreeHours;
import org.oldwood.season.HourlySeries;
import org.oldwood.season.SeasonMethods;
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
    Optional<Double> base = Optional.empty();

    @Override
    Stretch usual(Season season, SeasonMethods methods) {
        MonthDay from = methods.heatSum().from();
        MonthDay before = methods.heatSum().before();
        return new Stretch(
                "season " + season.label(),
                season.day(from.getMonthValue(), from.getDayOfMonth()),
                season.day(before.getMonthValue(), before.getDayOfMonth()).minusDays(1));
    }

    private double baseC(Documents documents) {
        return base.orElseGet(() -> SeasonMethods.read(documents).heatSum().base().is());
    }

    @Override
    double total(HourlySeries series, LocalDate first, LocalDate last, Documents documents) {
        return switch (chosen()) {
            case "hours" -> series.sum(new GrowingDegreeHours(), first, last);
            case "simple" -> series.simpleDegreeDays(baseC(documents), first, last);
            default -> series.degreeDays(baseC(documents), first, last);
        };
    }

    @Override
    String unit(Documents documents) {
        return chosen().equals("hours")
                ? "growing degree hours"
                : "degree days above " + baseC(documents) + " °C (" + model + ")";
    }

    private String chosen() {
        if (!MODELS.contains(model)) {
            throw usage("there is no heat model \"" + model + "\". " + Nearest.hint(model, MODELS));
        }
        return model;
    }
}
