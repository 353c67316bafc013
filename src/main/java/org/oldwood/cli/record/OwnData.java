package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.craft.cuttings.Propagation;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.FeedingTables;
import org.oldwood.craft.feeding.Materials;
import org.oldwood.craft.feeding.liming.Liming;
import org.oldwood.craft.feeding.liming.SulphurTable;
import org.oldwood.craft.mulching.MulchTables;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.craft.water.CropWater;
import org.oldwood.craft.water.Soils;
import org.oldwood.craft.water.Surfaces;
import org.oldwood.craft.water.WaterFigures;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Sources;
import org.oldwood.crop.Yield;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.facts.record.Unlikely;
import org.oldwood.garden.RecordFiles;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.RuleNames;
import org.oldwood.plan.Rules;
import org.oldwood.plan.round.Rounds;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Climate;
import org.oldwood.season.CropStages;
import org.oldwood.season.SeasonMethods;
import org.oldwood.season.sums.ChillModels;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/**
 * Reads the data of a garden's own folder as the crafts read it, so that a wrong crop, rule or material is told by
 * {@code check} before it is needed.
 */
final class OwnData {
    private static final List<String> SECTIONS = List.of("crop", "pruning", "yield", "cuttings", "feeding", "water",
            "stages");
    private static final List<String> TABLES = List.of("acidifying.json", "cautions.json", "countries.json",
            "feeding.json", "keep-apart.json", "liming.json", "mulching.json", "rounds.json", "soils.json",
            "surfaces.json", "unlikely.json", "water.json");
    private static final List<String> MATERIALS = List.of("feeds", "limes", "acidifiers", "mulches", "underlays");
    private static final String JSON = ".json";
    private static final String CROPS = "crops/";

    private final Path folder;
    private final Documents documents;
    private final Problems problems;

    OwnData(Path folder, Problems problems) {
        this.folder = folder;
        this.documents = Documents.with(folder, problems);
        this.problems = problems;
    }

    void check() throws IOException {
        List<String> files = files();
        files.forEach(documents::read);
        files.forEach(this::checkName);
        if (files.isEmpty() || !problems.isEmpty()) { return; }
        Crops crops = new Crops(documents);
        crops.ids().forEach(id -> tried(CROPS + id, () -> crops.get(id)));
        tried("sources", () -> checkSources(files));
        tried("rules", () -> rules(files, crops));
        tables(files);
        if (problems.isEmpty()) { ownCrops(files).forEach(id -> sections(crops.get(id))); }
    }

    /** The JSON files in the folders for data, by name. */
    private List<String> files() throws IOException {
        List<String> names = new ArrayList<>();
        for (String part : RecordFiles.FOLDERS) {
            Path data = folder.resolve(part);
            if (Files.isDirectory(data)) {
                try (Stream<Path> files = Files.walk(data)) {
                    files.filter(file -> file.toString().endsWith(JSON))
                            .map(file -> folder.relativize(file).toString().replace('\\', '/')).forEach(names::add);
                }
            }
        }
        TABLES.stream().filter(table -> Files.isRegularFile(folder.resolve(table))).forEach(names::add);
        names.sort(null);
        return names;
    }

    /** Files in the folders for data that nobody reads: copies that editors keep, what a system leaves, a mere note. */
    static List<Problem> strays(Path folder) {
        return RecordFiles.FOLDERS.stream().flatMap(kind -> strays(folder.resolve(kind), kind)).toList();
    }

    private static Stream<Problem> strays(Path data, String kind) {
        String what = kind.equals("crops") ? "is no crop (a folder with crop.json)" : "is no JSON file (.json)";
        return Stream.ofNullable(data.toFile().list()).flatMap(Stream::of).sorted()
                .filter(name -> !name.startsWith(".") && !Documents.isDocument(data.resolve(name), kind))
                .map(name -> Problem.of("stray-file", Place.of(kind + "/" + name), what));
    }

    private void checkName(String file) {
        String[] parts = file.split("/", -1);
        if (!file.startsWith(CROPS) || parts.length != 3) { return; }
        String section = parts[2].substring(0, parts[2].length() - JSON.length());
        if (!SECTIONS.contains(section)) {
            problems.tell("unknown-section", Place.of(file), Nearest.hint(section, SECTIONS));
        } else if (!Files.isRegularFile(folder.resolve(CROPS + parts[1] + "/crop.json"))
                && documents.read(CROPS + parts[1] + "/crop.json").isEmpty()) {
            problems.tell("missing-document crop", Place.of(file), parts[1]);
        }
    }

    private Set<String> ownCrops(List<String> files) {
        return files.stream().filter(file -> file.startsWith(CROPS)).map(file -> file.split("/", -1))
                .filter(parts -> parts.length == 3).map(parts -> parts[1])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void sections(Crop crop) {
        String name = CROPS + crop.id();
        tried(name + "/pruning.json", () -> Pruning.read(crop));
        tried(name + "/yield.json", () -> Yield.read(crop));
        tried(name + "/cuttings.json", () -> Propagation.of(crop));
        tried(name + "/feeding.json", () -> FeedingProfile.of(crop).ifPresent(FeedingTables.read(documents)::check));
        tried(name + "/water.json", () -> CropWater.of(crop, WaterFigures.read(documents)));
        tried(name + "/stages.json", () -> CropStages.of(crop));
        tried(name + "/stages.json", () -> CalendarStages.check(crop));
    }

    private void tables(List<String> files) {
        tried("materials", () -> Materials.read(documents));
        files.stream().filter(file -> file.startsWith("materials/") && !file.endsWith("index.json"))
                .forEach(this::checkLists);
        tried("mulching.json", () -> MulchTables.read(documents));
        tried("liming.json", () -> Liming.read(documents));
        tried("acidifying.json", () -> SulphurTable.read(documents));
        tried("feeding.json", () -> FeedingTables.read(documents));
        tried("soils.json", () -> Soils.read(documents));
        tried("surfaces.json", () -> Surfaces.read(documents));
        tried("unlikely.json", () -> Unlikely.figures(documents));
        tried("water.json", () -> WaterFigures.read(documents));
        tried("season", () -> SeasonMethods.read(documents));
        tried("season", () -> ChillModels.read(documents));
        for (String file : files) {
            if (file.startsWith("climates/") && !file.endsWith("index.json")) {
                String id = file.substring("climates/".length(), file.length() - JSON.length());
                tried(file, () -> Climate.bundled(id, documents));
            }
        }
    }

    /** Several crafts read a file of materials, each its own lists. */
    private void checkLists(String file) {
        Fields fields = documents.fields(file);
        fields.count("format", 1, 1, 1);
        fields.optionalText("kind");
        fields.optionalText("note");
        MATERIALS.forEach(fields::raw);
        fields.done();
    }

    private void rules(List<String> files, Crops crops) {
        Rules all = Rules.read(documents);
        Cautions cautions = Cautions.read(documents);
        RuleNames names = new RuleNames(all, crops, cautions, new AllCrafts());
        files.stream().filter(file -> file.startsWith("rules/") && !file.endsWith("index.json"))
                .forEach(file -> names.check(documents.fields(file)));
        names.checkCautions(documents.fields("cautions.json"));
        Rounds.read(documents);
        names.checkRounds(documents.fields("rounds.json"));
    }

    private void checkSources(List<String> files) {
        Sources sources = Sources.read(documents);
        files.stream().filter(file -> !file.startsWith("sources/"))
                .forEach(file -> documents.read(file).ifPresent(json -> gather(json, sources)));
    }

    private void gather(Json value, Sources sources) {
        if (value instanceof Json.Obj object) {
            object.members().forEach((key, member) -> {
                if (key.equals("source")) { known(member, sources); }
                gather(member, sources);
            });
        } else if (value instanceof Json.Arr array) { array.items().forEach(item -> gather(item, sources)); }
    }

    private void known(Json value, Sources sources) {
        if (value instanceof Json.Arr array) {
            array.items().forEach(item -> known(item, sources));
        } else if (value instanceof Json.Text text && sources.find(text.value()).isEmpty()) {
            problems.tell("unknown-source", text.place(), text.value());
        }
    }

    /** What follows from a fault that was told already is not told again. */
    private void tried(String name, Runnable reading) {
        int before = problems.count();
        try {
            reading.run();
        } catch (RuntimeException e) {
            if (problems.count() == before) {
                problems.tell(e instanceof RecordException ? "lacks-data" : "unreadable-data", Place.of(name),
                        String.valueOf(e.getMessage()));
            }
        }
    }
}
