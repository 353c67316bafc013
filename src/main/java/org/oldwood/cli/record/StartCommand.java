package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.oldwood.cli.command.AnyPlace;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.KnownGardens;
import org.oldwood.cli.record.Stock.Planting;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.GardenStages;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.SharedBed;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenReader;
import org.oldwood.garden.Site;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.season.place.PlaceClimate;
import org.oldwood.season.place.Spot;
import org.oldwood.store.Csv;
import org.oldwood.store.Documents;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import org.oldwood.words.Dates;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Begins a new garden's folder from five facts; whatever else is wanted becomes a task later. */
@Command(name = "start")
public final class StartCommand extends GardenCommand {
    private static final int MARCH = 3;

    @Parameters(paramLabel = "DIR")
    @Nullable
    Path dir;

    @Option(names = "--name", required = true, paramLabel = "NAME")
    String name = "";

    @Option(names = "--at", required = true, paramLabel = "LAT,LON[,M]")
    String at = "";

    @Option(names = "--plants", paramLabel = "CROP=N,..")
    Optional<String> plants = Optional.empty();

    @Option(names = "--stock", paramLabel = "FILE")
    Optional<String> stock = Optional.empty();

    @Option(names = "--planted", paramLabel = "YEAR")
    Optional<Integer> planted = Optional.empty();

    @Option(names = "--bed-area", paramLabel = "M2")
    Optional<Double> bedArea = Optional.empty();

    @Option(names = "--zone", paramLabel = "ZONE")
    Optional<String> zone = Optional.empty();

    @Override
    protected boolean makesGarden() { return true; }

    @Override
    public int run() throws IOException {
        Path folder = path(dir == null ? Path.of("") : dir);
        NewGarden.refuseOverwriting(folder);
        Site site = site();
        Problems problems = new Problems();
        Crops crops = new Crops(Documents.bundled());
        List<Planting> plantings = plantings(new Stock(crops, problems), problems);
        if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
        planted.ifPresent(year -> plantedIn(year, site));
        if (planted.isPresent()
                && plantings.stream().anyMatch(each -> each.planted().isPresent() || each.year().isPresent())) {
            tell("What the column planted says wins; --planted %s is for the lines without.".formatted(planted.get()));
        }
        NewGarden garden = new NewGarden(crops);
        Set<LocalDate> taken = new TreeSet<>();
        garden.plant(plantings, each -> {
            LocalDate day = plantedIn(each.year().or(() -> planted).orElseThrow(
                    () -> usage("say with --planted in which year it was planted; a guess will do")), site);
            taken.add(day);
            return day;
        });
        taken.stream().findFirst().map(Dates::shortDay)
                .ifPresent(day -> tell(
                        "A year alone is taken as the end of its planting season, %s; oldwood correct sets it right."
                                .formatted(day)));
        sayAreas(garden);
        sayClashes(plantings, crops);
        WishesAsked.Answers answers = new WishesAsked(this).ask(Documents.bundled());
        String text = NewGarden.gardenJson(name.strip(), UUID.randomUUID(), today(), site, garden.areas(), givenUnits,
                answers);
        NewGarden.write(folder, text, String.join("\n", garden.journal()) + "\n");
        sayClimate(site);
        report(folder, garden, plantings);
        return 0;
    }

    private void sayClashes(List<Planting> plantings, Crops crops) {
        FeedingBooks books = new FeedingBooks(Documents.bundled());
        Map<String, List<Crop>> beds = new LinkedHashMap<>();
        plantings.forEach(
                each -> beds.computeIfAbsent(each.bedId(), bed -> new ArrayList<>()).add(crops.get(each.crop())));
        beds.forEach((bed, there) -> SharedBed.clash(books, there).ifPresent(words -> tell(bed + ": " + words)));
    }

    private Site site() {
        refuseIf(name.isBlank(), "--name must not be blank");
        Spot spot = AnyPlace.spot(at, this);
        return new Site(spot.latitude(), spot.longitude(), spot.heightM(), zoneName());
    }

    /** Where the garden's climate comes from, or why none is known. */
    private void sayClimate(Site site) {
        Documents documents = Documents.bundled();
        Optional<PlaceClimate> place = GardenStages.ofPlace(site, documents);
        tell(place.map(each -> "Climate of %s.".formatted(each.climate().name()))
                .orElseGet(() -> PlaceClimate.whyNot(site.spot(), documents)
                        + " Dates are lowland Britain's until garden.json has a \"climate\"."));
        place.flatMap(PlaceClimate::warning).ifPresent(this::tell);
    }

    private String zoneName() {
        String wanted = zone.orElseGet(() -> ZoneId.systemDefault().getId());
        refuseIf(zone.isPresent() && !ZoneId.getAvailableZoneIds().contains(wanted),
                "--zone must be a time zone such as Europe/London but is \"%s\"", wanted);
        if (zone.isEmpty()) { tell("Time zone " + wanted + " taken from this machine; correct site.zone if need be."); }
        return wanted;
    }

    /** The end of that year's dormant season, when bushes are set; never after today. */
    private LocalDate plantedIn(int year, Site site) {
        LocalDate today = today();
        refuseIf(year < 1900 || year > today.getYear(), "planted must be a year from 1900 to %s but is %s",
                today.getYear(), year);
        Hemisphere where = site.hemisphere();
        int season = where == Hemisphere.NORTH ? year : year + 1;
        LocalDate day = new Season(season, where).day(MARCH, 1);
        return day.isAfter(today) ? today : day;
    }

    private List<Planting> plantings(Stock reader, Problems problems) throws IOException {
        refuseIf(plants.isPresent() == stock.isPresent(),
                "say what stands in the garden, with --plants or with --stock FILE");
        if (plants.isPresent()) { return reader.words(plants.get()); }
        String file = stock.get();
        return reader.table(Csv.read(text(file), file, problems), file);
    }

    private void sayAreas(NewGarden garden) {
        if (bedArea.isPresent()) {
            double area = bedArea.get();
            refuseIf(!(area >= 0.1 && area <= 100_000), "--bed-area must be from 0.1 to 100000 m² but is %s", area);
            garden.areas().replaceAll((bed, taken) -> area);
            return;
        }
        List<String> beds = new ArrayList<>();
        garden.areas().forEach((bed, area) -> beds.add(bed + " " + NewGarden.tenths(area) + " m²"));
        tell("Areas taken from the plants' usual spacing: %s. Measure the beds and correct areaM2: amounts per m² depend on it."
                .formatted(String.join(", ", beds)));
    }

    private void report(Path folder, NewGarden garden, List<Planting> plantings) throws IOException {
        garden.assumed().forEach(this::tell);
        answer(() -> new Answer(folder.toString(), garden.areas().keySet(), garden.journal().size()),
                () -> plantings.forEach(each -> out().line(each.bedId() + ": " + each.number() + " " + each.crop())));
        tell("Wrote %s and %s.".formatted(folder.resolve(GardenFolder.GARDEN_FILE),
                folder.resolve(GardenFolder.JOURNAL_FILE)));
        boolean usual = isUsual(folder.toAbsolutePath().normalize());
        if (!quiet) {
            err().line(usual ? "Next: oldwood, and oldwood calendar" : "Next: oldwood calendar --garden " + folder);
        }
    }

    /** Keeps a first garden as the one that is meant where none is given. */
    private boolean isUsual(Path folder) throws IOException {
        Map<String, String> environment = around().environment();
        KnownGardens known = KnownGardens.of(environment);
        String id = String.valueOf(folder.getFileName()).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        boolean first = known.folders().isEmpty() && GardenReader.isId(id)
                && KnownGardens.file(environment).isPresent();
        if (first) {
            tell("This is your usual garden now, named %s (%s).".formatted(id,
                    known.with(id, folder).keep(environment)));
        }
        return first;
    }

    private record Answer(String folder, Set<String> beds, int plants) {}
}
