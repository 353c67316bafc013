package org.oldwood.cli.season;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.facts.GardenStages;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Site;
import org.oldwood.season.CropFrost;
import org.oldwood.season.FrostYear;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;
import org.oldwood.season.Stages;
import org.oldwood.season.place.PlaceClimate;
import org.oldwood.store.Documents;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows the stage dates of the garden's crops in the season of the day, or of one crop or plant. */
@Command(name = "stages")
public final class StagesCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "CROP|PLANT")
    Optional<String> which = Optional.empty();

    @Override
    public int run() throws IOException {
        GardenState state = state();
        GardenFolder folder = folder();
        Stages stages = Planning.stages(folder, state);
        stopOnProblems(folder);
        List<Crop> crops = crops(folder, state).stream().map(folder.crops()::get).toList();
        return answer(() -> Answer.of(crops, state.season(), stages), () -> {
            tellOfPlace(state, stages, folder.documents());
            crops.forEach(crop -> tellOf(crop, state.season(), stages));
        });
    }

    private void tellOfPlace(GardenState state, Stages stages, Documents documents) {
        Optional<GardenClimate> climate = stages.climate();
        Site site = state.garden().site();
        if (climate.isEmpty()) {
            out().paragraph(0, """
                    No climate is known here, so the dates are lowland Britain's by the month, moved by what you \
                    noted; chill and frost are not known. %s For this garden's own: %s."""
                    .formatted(PlaceClimate.whyNot(site.spot(), documents), GardenStages.lackingClimate()));
        } else {
            out().paragraph(0, "By the climate of " + climate.get().climate().name() + ".");
            if (climate.get().climate().errorC() > 0) {
                GardenStages.shortWeather(climate.get().weather(), documents).ifPresent(why -> out().paragraph(0, why));
                GardenStages.ofPlace(site, documents).flatMap(PlaceClimate::warning)
                        .ifPresent(warning -> out().paragraph(0, warning));
            }
            out().paragraph(0, FrostLines.ofPlace(new FrostYear(climate.get(), state.season())));
        }
        out().line();
    }

    private List<String> crops(GardenFolder folder, GardenState state) {
        List<String> grown = state.standing().stream().map(each -> each.plant().crop()).distinct().sorted().toList();
        if (which.isEmpty()) { return grown; }
        String wanted = which.get();
        Optional<String> plants = state.plant(wanted).map(each -> each.plant().crop());
        if (plants.isPresent()) { return List.of(plants.get()); }
        if (folder.crops().ids().contains(wanted) || !folder.crops().called(wanted).isEmpty()) {
            return List.of(Planning.crop(wanted, folder.crops(), this).id());
        }
        List<String> known = new ArrayList<>(folder.crops().ids());
        known.addAll(state.plants().keySet());
        throw noSuch("crop or plant", wanted, known);
    }

    private void tellOf(Crop crop, Season season, Stages stages) {
        out().line(crop.name() + ", season " + season.label());
        List<List<String>> rows = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (Stage stage : Stage.values()) {
            StageDate date = stages.date(crop, season, stage);
            rows.add(List.of(stage.bbch(), date.date().toString(),
                    date.plusMinusDays() == 0 ? "" : "± " + date.plusMinusDays() + " d", date.basis().words(),
                    said(date, stages, told)));
        }
        out().columns(2, rows);
        stages.chill(crop, season).map(ChillLines::of).ifPresent(this::note);
        CropFrost.of(crop, season, stages).map(FrostLines::of).ifPresent(all -> all.forEach(this::note));
        out().line();
    }

    /**
     * The climate stands above the dates once, and need not stand beside each; nor what was told of a date before.
     */
    private static String said(StageDate date, Stages stages, Set<String> told) {
        String words = stages.climate()
                .map(each -> date.words().replace(", on the climate of " + each.climate().name(), ""))
                .orElse(date.words());
        List<String> parts = List.of(words.split("; ", -1));
        return parts.stream().filter(part -> told.add(part) || part.equals(parts.get(0)))
                .collect(Collectors.joining("; "));
    }

    private void note(String line) { out().hanging("  ", 4, line); }

    private record Answer(String season, Optional<String> climate, Optional<FrostLines.Year> frost,
            List<CropAnswer> crops) {
        static Answer of(List<Crop> crops, Season season, Stages stages) {
            return new Answer(season.label(), stages.climate().map(climate -> climate.climate().name()),
                    stages.climate().map(climate -> FrostLines.Year.of(new FrostYear(climate, season))),
                    crops.stream().map(crop -> CropAnswer.of(crop, season, stages)).toList());
        }
    }

    private record CropAnswer(String crop, List<OneStage> stages, Optional<ChillLines.Answer> chill,
            Optional<FrostLines.Risk> frost) {
        static CropAnswer of(Crop crop, Season season, Stages stages) {
            return new CropAnswer(crop.id(),
                    Stream.of(Stage.values()).map(stage -> OneStage.of(stage, stages.date(crop, season, stage)))
                            .toList(),
                    stages.chill(crop, season).map(ChillLines.Answer::of),
                    CropFrost.of(crop, season, stages).map(FrostLines.Risk::of));
        }
    }

    private record OneStage(String stage, String bbch, LocalDate date, int plusMinusDays, String basis, String words,
            List<String> sources) {
        static OneStage of(Stage stage, StageDate date) {
            return new OneStage(stage.key(), stage.bbch(), date.date(), date.plusMinusDays(), date.basis().words(),
                    date.words(), date.sources());
        }
    }
}
