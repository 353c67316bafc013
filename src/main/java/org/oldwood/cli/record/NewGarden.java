package org.oldwood.cli.record;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.oldwood.cli.record.Stock.Planting;
import org.oldwood.cli.record.WishesAsked.Answers;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryWriter;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenReader;
import org.oldwood.garden.Site;
import org.oldwood.store.Json;
import org.oldwood.store.JsonText;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/** Makes the two files of a new garden from the few facts that its owner has to tell. */
final class NewGarden {
    private static final Place PLACE = Place.of("new garden");

    private final Crops crops;
    private final Map<String, Double> areas = new LinkedHashMap<>();
    private final List<String> assumed = new ArrayList<>();
    private final List<String> journal = new ArrayList<>();
    private String previousId = "";

    NewGarden(Crops crops) { this.crops = crops; }

    /** The beds' areas in square metres, by id; filled by {@link #plant}. */
    Map<String, Double> areas() {
        return areas;
    }

    /** What was taken for want of better knowledge, in sentences. */
    List<String> assumed() { return assumed; }

    List<String> journal() { return journal; }

    /** Notes the planting of bushes one by one, of canes by the row. */
    void plant(List<Planting> plantings, Function<Planting, LocalDate> usual) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (Planting planting : plantings) {
            Crop crop = crops.get(planting.crop());
            Crop.Spacing spacing = spacing(crop, planting);
            double ground = planting.lengthM().map(length -> spacing.areaM2() * length / spacing.inRow().is())
                    .orElse(spacing.areaM2() * planting.number());
            areas.merge(planting.bedId(), ground, Double::sum);
            int entries = crop.inRows() || planting.id().isPresent() ? 1 : planting.number();
            for (int i = 0; i < entries; i++) {
                String id = planting.id().orElseGet(() -> nextId(crop, numbers, plantings));
                note(planting, id, planting.planted().orElseGet(() -> usual.apply(planting)), spacing);
            }
            if (crop.inRows() && planting.lengthM().isEmpty()) {
                assumed.add("%s: one row of %s m, %s at %s.".formatted(
                        planting.id().orElse(crop.id() + "-" + numbers.get(crop.id())),
                        tenths(length(planting, spacing)), Words.count(planting.number(), "plant", "plants"),
                        spacing.inRow().inWords()));
            }
        }
    }

    /** The crop's next number that no line of the table has as a plant's id. */
    private static String nextId(Crop crop, Map<String, Integer> numbers, List<Planting> plantings) {
        String id = crop.id() + "-" + numbers.merge(crop.id(), 1, Integer::sum);
        boolean taken = plantings.stream().anyMatch(other -> other.id().filter(id::equals).isPresent());
        return taken ? nextId(crop, numbers, plantings) : id;
    }

    private static Crop.Spacing spacing(Crop crop, Planting planting) {
        String form = planting.form().orElse(crop.form());
        return crop.spacing(form).or(() -> crop.forms().stream().flatMap(any -> crop.spacing(any).stream()).findFirst())
                .orElseThrow(() -> new IllegalStateException(crop.id() + " has no spacing"));
    }

    private static double length(Planting planting, Crop.Spacing spacing) {
        return planting.lengthM().orElse(planting.number() * spacing.inRow().is());
    }

    private void note(Planting planting, String id, LocalDate planted, Crop.Spacing spacing) {
        Map<String, Json> values = new LinkedHashMap<>();
        values.put("plant", text(id));
        values.put("crop", text(planting.crop()));
        values.put("bed", text(planting.bedId()));
        planting.form().ifPresent(form -> values.put("form", text(form)));
        planting.cultivar().ifPresent(cultivar -> values.put("cultivar", text(cultivar)));
        if (crops.get(planting.crop()).inRows()) {
            values.put("lengthM", number(tenths(length(planting, spacing))));
        } else if (planting.id().isPresent() && planting.number() > 1) {
            values.put("bushes", number(Integer.toString(planting.number())));
        }
        if (planting.planted().isEmpty()) { values.put("about", text("year")); }
        previousId = EntryWriter.id(previousId, EntryWriter.line(planted, EntryKind.PLANTED, values, PLACE));
        journal.add(JsonText.line(EntryWriter.entry(previousId, planted, EntryKind.PLANTED, values, PLACE)));
    }

    private static Json text(String value) { return new Json.Text(PLACE, value); }

    private static Json number(String written) { return new Json.Num(PLACE, Double.parseDouble(written), written); }

    /** Rounded to a tenth, without a needless {@code .0}. */
    static String tenths(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : tenths / 10 + "." + tenths % 10;
    }

    /** The text of {@code garden.json}, in the order in which the format describes it. */
    static String gardenJson(String name, UUID id, LocalDate since, Site site, Map<String, Double> areas,
            Optional<String> units, Answers answers) {
        List<NewBed> beds = areas.entrySet().stream()
                .map(each -> new NewBed(each.getKey(), Double.parseDouble(tenths(each.getValue())))).toList();
        NewSite place = new NewSite(site.latitude(), site.longitude(), site.heightM(), site.zoneName());
        return JsonText.indented(new NewFile(GardenReader.FORMAT, name, id, since, place, beds, units, answers)) + "\n";
    }

    /** Stops where the folder already holds one of the two files. */
    static void refuseOverwriting(Path folder) {
        for (String name : List.of(GardenFolder.GARDEN_FILE, GardenFolder.JOURNAL_FILE)) {
            if (Files.exists(folder.resolve(name))) {
                throw stop(folder.resolve(name), "is there already and is not overwritten");
            }
        }
    }

    /**
     * Writes both files or neither; the journal first, because it is {@code garden.json} that makes a folder a garden.
     */
    static void write(Path folder, String garden, String journal) throws IOException {
        Path gardenFile = folder.resolve(GardenFolder.GARDEN_FILE);
        Path journalFile = folder.resolve(GardenFolder.JOURNAL_FILE);
        refuseOverwriting(folder);
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw stop(folder, "is a file, not a folder");
        }
        boolean done = false;
        try {
            Output.write(journalFile, journal);
            Output.write(gardenFile, garden);
            done = true;
        } finally {
            if (!done) {
                Files.deleteIfExists(journalFile);
                Files.deleteIfExists(gardenFile);
            }
        }
    }

    private static RecordException stop(Path file, String message) {
        return new RecordException(Problem.of("already-there", Place.of(file.toString()), message));
    }

    private record NewFile(int format, String name, UUID id, LocalDate since, NewSite site, List<NewBed> beds,
            Optional<String> units, @JsonUnwrapped Answers answers) {}

    private record NewSite(double latitude, double longitude, double heightM, String zone) {}

    private record NewBed(String id, double areaM2) {}
}
