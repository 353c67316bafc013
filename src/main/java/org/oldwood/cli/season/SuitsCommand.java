package org.oldwood.cli.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.cli.command.AnyPlace;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.Basis;
import org.oldwood.season.CropFrost;
import org.oldwood.season.FrostYear;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Months;
import org.oldwood.season.Season;
import org.oldwood.season.Sightings;
import org.oldwood.season.StageDate;
import org.oldwood.season.place.PlaceClimate;
import org.oldwood.season.place.Spot;
import org.oldwood.season.sums.ChillReport;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says before anything is planted what crops would find at one place or several. */
@Command(name = "suits")
public final class SuitsCommand extends GardenCommand {
    @Parameters(arity = "0..*", paramLabel = "CROP")
    List<String> wanted = List.of();

    @Option(names = "--at", required = true, paramLabel = "LAT,LON[,M]")
    List<String> at = List.of();

    private record CropThere(String crop, String ripe, int ripePlusMinusDays, String firstFlower,
            int firstFlowerPlusMinusDays, Optional<String> chill, String chillAnswer,
            Optional<Double> yearsInHundredFrostInFlower, List<String> words) {}

    /** A place: where its climate comes from, or why it is not known, its mean year, and the crops there. */
    private record There(String place, String climate, double springErrorC, Map<String, double[]> months,
            List<CropThere> crops) {}

    private record Answer(List<There> places) {}

    @Override
    public int run() {
        units();
        Documents documents = Documents.bundled();
        Crops crops = new Crops(documents);
        List<Crop> chosen = (wanted.isEmpty() ? crops.ids() : wanted).stream().map(id -> Planning.crop(id, crops, this))
                .toList();
        List<There> places = at.stream().map(text -> there(text, chosen, documents)).toList();
        return answer(() -> new Answer(places), () -> places.forEach(this::tellOf));
    }

    private There there(String text, List<Crop> chosen, Documents documents) {
        Spot spot = AnyPlace.spot(text, this);
        Optional<PlaceClimate> place = PlaceClimate.at(spot, documents);
        if (place.isEmpty()) { return new There(text, PlaceClimate.whyNot(spot, documents), 0, Map.of(), List.of()); }
        PlaceClimate found = place.get();
        GardenClimate climate = new GardenClimate(spot.latitude(), found.climate(), Weather.none(), documents);
        Season season = Season.containing(today(), Hemisphere.of(spot.latitude()));
        ModelledStages stages = new ModelledStages(climate, Sightings.none(), documents);
        String from = "By the climate of %s. %s %s".formatted(found.climate().name(), found.warning().orElse(""),
                FrostLines.ofPlace(new FrostYear(climate, season))).replace("  ", " ");
        List<CropThere> crops = chosen.stream().map(crop -> of(crop, season, stages)).toList();
        return new There(text, from, found.errorC(), months(found), crops);
    }

    private static Map<String, double[]> months(PlaceClimate place) {
        Map<String, double[]> months = new TreeMap<>();
        months.put("meanMaxC", tenths(place.maximum()));
        months.put("meanMinC", tenths(place.minimum()));
        months.put("rainMm", tenths(place.rain()));
        months.put("dewPointC", tenths(place.dewPoint()));
        place.sunPercent().ifPresent(sun -> months.put("sunPercent", tenths(sun)));
        return months;
    }

    private static double[] tenths(Months months) {
        return Arrays.stream(months.toArray()).map(value -> Math.round(10 * value) / 10.0).toArray();
    }

    private static CropThere of(Crop crop, Season season, ModelledStages stages) {
        StageDate flower = stages.date(crop, season, Stage.FIRST_FLOWER);
        StageDate ripe = stages.date(crop, season, Stage.RIPE);
        Optional<ChillReport> chill = stages.chill(crop, season);
        Optional<CropFrost> frost = CropFrost.of(crop, season, stages);
        List<String> words = new ArrayList<>();
        chill.map(ChillLines::of).ifPresent(words::add);
        StageDate burst = stages.date(crop, season, Stage.BUD_BURST);
        if (burst.basis() == Basis.CALENDAR) { words.add(burst.words() + "."); }
        words.add(ripe.words() + ".");
        frost.map(FrostLines::of).ifPresent(lines -> words.add(lines.get(lines.size() - 1)));
        return new CropThere(crop.id(), ripe.date().toString(), ripe.plusMinusDays(), flower.date().toString(),
                flower.plusMinusDays(), chill.map(ChillReport::verdict),
                chill.map(ChillReport::answer).orElse(ChillReport.Answer.UNKNOWN).words(),
                frost.flatMap(CropFrost::bloomRisk).map(risk -> Math.round(1000 * risk) / 10.0), words);
    }

    private void tellOf(There there) {
        out().line(there.place());
        out().paragraph(2, there.climate());
        for (CropThere crop : there.crops()) {
            out().line("  %s: flowers from %s ± %s d, ripe from %s ± %s d".formatted(crop.crop(), crop.firstFlower(),
                    crop.firstFlowerPlusMinusDays(), crop.ripe(), crop.ripePlusMinusDays()));
            crop.words().forEach(line -> out().hanging("    ", 6, line));
        }
        out().line();
    }
}
