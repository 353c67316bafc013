package org.oldwood.cli.season;

import java.util.List;
import java.util.Optional;
import org.oldwood.garden.GardenFolder;
import org.oldwood.season.Season;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.season.sums.ChillModels.ChillModel;
import org.oldwood.season.sums.HourlySeries;
import org.oldwood.season.sums.HourlySeries.Days;
import org.oldwood.store.Documents;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Adds up the chill of winters, from a weather file or the garden. */
@Command(name = "chill")
public final class ChillCommand extends SumCommand {
    private static final String ALL = "all";

    @Option(names = "--model", paramLabel = "MODEL")
    Optional<String> model = Optional.empty();

    @Override
    Stretch usual(Season season, SeasonMethods methods) {
        return new Stretch("winter of season " + season.label(), methods.chillFirst(season), methods.chillLast(season));
    }

    /** Of whole winters, and not of days that were asked for. */
    @Override
    Optional<List<ChillWants>> wants(Optional<HourlySeries> series, List<Days> winters, Optional<GardenFolder> folder) {
        if (from.isPresent() || series.isEmpty() || folder.isEmpty()) { return Optional.of(List.of()); }
        List<ChillWants> wants = ChillWants.of(folder.get(), folder.get().on(today()), series.get(), winters);
        stopOnProblems(folder.get());
        return Optional.of(wants);
    }

    @Override
    double[][] totals(HourlySeries series, List<Days> stretches, Documents documents) {
        return series.sums(chosen(documents).stream().map(ChillModel::begin).toList(), stretches);
    }

    @Override
    List<Measure> measures(Documents documents) {
        return chosen(documents).stream().map(each -> new Measure(each.key(), each.name())).toList();
    }

    private List<ChillModel> chosen(Documents documents) {
        ChillModels models = ChillModels.read(documents);
        String key = model.orElse("dynamic");
        if (key.equals(ALL)) { return models.keys().stream().map(models::get).toList(); }
        return List.of(models.find(key).orElseThrow(() -> noSuch("chill model", key, models.keys())));
    }
}
