package org.oldwood.cli.season;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.Spelled;
import org.oldwood.cli.season.SumReport.Measure;
import org.oldwood.season.Season;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.sums.GrowingDegreeHours;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;

/** Adds up heat from a weather file or the garden. */
public final class HeatCommand extends SumCommand {
    private static final List<String> MODELS = List.of("sine", "simple", "hours");

    private String model = "sine";
    private Optional<Double> base = Optional.empty();

    @Override
    public Optional<Spelled> spelled() {
        return Optional.of(addTo(Spelled.command(
                        "heat",
                        "add up the heat of each spring and summer",
                        "oldwood heat --weather station.csv --latitude 46.6 --model sine --base 5",
                        "The stretch is 1 January to 30 June, in the south 1 July to 31 December.",
                        "Models: sine and simple (degree days above --base), hours (growing degree hours)."))
                .value(
                        "--model",
                        "MODEL",
                        "sine, simple or hours; sine otherwise",
                        String.class,
                        given -> model = given)
                .value("--base", "C", "base, °C; 5 otherwise", Double.class, given -> base = Optional.of(given)));
    }

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
        return base.orElseGet(
                () -> SeasonMethods.read(documents).heatSum().base().is());
    }

    @Override
    double[][] totals(HourlySeries series, List<Days> stretches, Documents documents) {
        String model = chosen();
        if (model.equals("hours")) {
            return series.sums(List.of(new GrowingDegreeHours()), stretches);
        }
        double baseC = baseC(documents);
        double[] totals = new double[stretches.size()];
        for (int i = 0; i < totals.length; i++) {
            totals[i] = model.equals("simple")
                    ? series.simpleDegreeDays(baseC, stretches.get(i))
                    : series.degreeDays(baseC, stretches.get(i));
        }
        return new double[][] {totals};
    }

    @Override
    List<Measure> measures(Documents documents) {
        String model = chosen();
        return List.of(new Measure(
                model,
                model.equals("hours")
                        ? "growing degree hours"
                        : "degree days above " + baseC(documents) + " °C (" + model + ")"));
    }

    private String chosen() {
        if (!MODELS.contains(model)) {
            throw usage("there is no heat model \"" + model + "\". " + Nearest.hint(model, MODELS));
        }
        return model;
    }
}
