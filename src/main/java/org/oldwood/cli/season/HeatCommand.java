package org.oldwood.cli.season;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.oldwood.season.Season;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.sums.DegreeDays;
import org.oldwood.season.sums.GrowingDegreeHours;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.store.Documents;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Adds up heat from a weather file or the garden. */
@Command(name = "heat")
public final class HeatCommand extends SumCommand {
    private static final List<String> MODELS = List.of("sine", "simple", "hours");

    @Option(names = "--model", paramLabel = "MODEL")
    String model = "sine";

    @Option(names = "--base", paramLabel = "C")
    Optional<Double> base = Optional.empty();

    @Override
    Stretch usual(Season season, SeasonMethods methods) {
        return new Stretch("season " + season.label(), season.day(methods.heatSum().from()),
                season.day(methods.heatSum().before()).minusDays(1));
    }

    @Option(names = "--upper", paramLabel = "C")
    double upper = Double.POSITIVE_INFINITY;

    private double baseC(Documents documents) {
        return base.orElseGet(() -> SeasonMethods.read(documents).heatSum().base().is());
    }

    @Override
    double[][] totals(HourlySeries series, List<Days> stretches, Documents documents) {
        if (model.equals("hours")) { return series.sums(List.of(new GrowingDegreeHours()), stretches); }
        double baseC = baseC(documents);
        refuseIf(upper <= baseC, "--upper must lie above the base, %s °C, but is %s", baseC, upper);
        DoubleBinaryOperator ofDay = model.equals("simple") ? (min, max) -> DegreeDays.simple(min, max, baseC, upper)
                : (min, max) -> DegreeDays.sine(min, max, baseC, upper);
        return new double[][]{stretches.stream().mapToDouble(days -> series.ofDays(ofDay, days)).toArray()};
    }

    @Override
    List<Measure> measures(Documents documents) {
        mustKnow("heat model", Optional.of(model), MODELS);
        return List.of(new Measure(model,
                model.equals("hours") ? "growing degree hours"
                        : "degree days above %s °C%s (%s)".formatted(baseC(documents),
                                upper < 100 ? " to " + upper + " °C" : "", model)));
    }
}
