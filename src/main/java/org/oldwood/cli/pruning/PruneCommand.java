package org.oldwood.cli.pruning;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Out;
import org.oldwood.cli.command.Planning;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.craft.pruning.School;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stems;
import org.oldwood.facts.Subject;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.facts.pruning.PruningMinutes;
import org.oldwood.facts.record.Choices;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.Cautions;
import org.oldwood.report.TaskWords;
import org.oldwood.season.Season;
import org.oldwood.store.Problems;
import org.oldwood.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what to take out of each bush, and what becomes of it. */
@Command(name = "prune")
public final class PruneCommand extends GardenCommand {
    @Parameters(arity = "0..1", paramLabel = "PLANT|BED")
    Optional<String> which = Optional.empty();

    @Option(names = "--crop", paramLabel = "CROP")
    Optional<String> crop = Optional.empty();

    @Option(names = "--form", paramLabel = "FORM")
    Optional<String> form = Optional.empty();

    @Option(names = "--stems", paramLabel = "COUNTS")
    Optional<String> stems = Optional.empty();

    @Option(names = "--sick", paramLabel = "COUNTS")
    Optional<String> sick = Optional.empty();

    @Option(names = "--weak", paramLabel = "COUNTS")
    Optional<String> weak = Optional.empty();

    @Option(names = "--seasons", paramLabel = "N")
    Optional<Integer> seasons = Optional.empty();

    @Option(names = "--metres", paramLabel = "M")
    Optional<Double> metres = Optional.empty();

    @Option(names = "--variant", paramLabel = "NAME")
    Optional<String> variant = Optional.empty();

    @Option(names = "--done", paramLabel = "COUNTS")
    Optional<String> done = Optional.empty();

    @Option(names = "--new-shoots", paramLabel = "N")
    Optional<Integer> newShoots = Optional.empty();

    @Option(names = "--outlook")
    boolean outlook;

    @Override
    public int run() throws IOException {
        Stream<PruneSheet> sheets = crop.isPresent() ? Stream.of(given()) : fromGarden();
        if (json) {
            out().json(PruneJson.of(sheets, outlook));
            return 0;
        }
        Map<String, Crop> crops = new LinkedHashMap<>();
        DoubleSummaryStatistics minutes = new DoubleSummaryStatistics();
        List<String> names = new ArrayList<>();
        String told = "";
        // the sheets are let go one by one: those of a large garden would take more room than its record
        for (PruneSheet sheet : (Iterable<PruneSheet>) sheets::iterator) {
            String page = page(sheet);
            if (!page.equals(told)) {
                print(names, told);
                names.clear();
                told = page;
            }
            names.add(sheet.title());
            crops.put(sheet.one().crop().id(), sheet.one().crop());
            minutes.accept(sheet.minutes().orElse(0.0));
        }
        print(names, told);
        if (minutes.getCount() > 1 && minutes.getSum() > 0) {
            out().paragraph(0, "The winter's work on all %s takes %s; tasks spreads it over the days you work."
                    .formatted(minutes.getCount(), TaskWords.minutes(minutes.getSum())));
        }
        Cautions.Job job = new Cautions.Job(List.of("prune"), List.of("blade", "saw"), List.of(), crops.values(),
                folderIfAny().map(folder -> folder.garden().site()), Optional.empty());
        Cautions.lines(Cautions.read(documents()).of(job)).forEach(line -> tell("Take care: " + line));
        return 0;
    }

    /** All but the name, so that plants one after another of which the same is said are told once. */
    private String page(PruneSheet sheet) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Out page = new Out(bytes);
        page.tellIn(wording());
        sheet.print(page, outlook);
        page.flush();
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private void print(List<String> names, String page) {
        int end = page.indexOf('\n');
        if (end >= 0) {
            out().paragraph(0, Words.names(names) + (names.size() > 1 ? ", each" : "") + page.substring(0, end))
                    .write(page.substring(end + 1));
        }
    }

    private PruneSheet given() {
        Crops crops = new Crops(documents());
        Crop of = Planning.crop(crop.orElse(""), crops, this);
        Pruning pruning = Pruning.read(of).orElseThrow(() -> usage("no pruning figures for " + of.name()));
        String asked = form.orElse(of.form());
        FormPruning grown = pruning.form(asked).orElseThrow(() -> noSuch("form", asked, pruning.forms().keySet()));
        boolean branches = grown.craft().equals("spur");
        refuseIf(stems.isEmpty() && !branches, "--stems is missing; count the stems by age, --stems 1=5,2=4,3=4,4+=3");
        Bush bush = bush(of, grown);
        return sheet(of.name() + " as " + grown.form(),
                PruningCase.given(of, pruning, grown, stems.map(counted -> bush), bush),
                grown.labour().flatMap(labour -> labour.of("winter"))
                        .map(it -> FormPruning.Labour.minutes(it, bush.metres())),
                new TreeMap<>(), List.of());
    }

    /**
     * The sheet of a plant, with a garden or without.
     *
     * @param past what was taken in past winters, by the season's name
     * @param said what there is to know of that
     */
    private PruneSheet sheet(String title, PruningCase found, Optional<Double> minutes, SortedMap<String, Stems> past,
            List<String> said) {
        PruningCase one = variant.isPresent() ? found.by(school(found.form())) : found;
        Optional<Figure> shoots = one.form().newShoots().map(one.past()::shoots)
                .map(it -> newShoots.map(number -> own(it, Math.max(0, number))).orElse(it));
        return new PruneSheet(title, one, minutes,
                new Futures(shoots, done.isPresent() ? new TreeMap<>(Map.of("given", taken(done.get()))) : past,
                        done.isPresent() ? List.of() : said));
    }

    private static Figure own(Figure printed, int number) {
        return new Figure(number, number, number, "shoots", printed.sources(), printed.seen(), "given");
    }

    private Bush bush(Crop of, FormPruning grown) {
        double room = metres.orElseGet(() -> of.inRowM(grown.form()));
        refuseIf(!(room > 0 && room <= 1000) || seasons.orElse(0) < 0 || seasons.orElse(0) > 100,
                "--metres must be more than 0 and at most 1000, --seasons 0 to 100");
        OptionalInt completed = seasons.map(OptionalInt::of).orElseGet(OptionalInt::empty);
        try {
            return new Bush(counts(stems), counts(sick), counts(weak), completed, 1, room);
        } catch (IllegalArgumentException e) {
            throw usage(e.getMessage() == null ? "wrong counts" : e.getMessage());
        }
    }

    private static Stems counts(Optional<String> given) { return given.map(Stems::parse).orElse(Stems.NONE); }

    private Stems taken(String given) {
        try {
            return Stems.parse(given);
        } catch (IllegalArgumentException e) {
            throw usage("--done: " + e.getMessage());
        }
    }

    private School school(FormPruning grown) {
        String way = variant.orElse("");
        return grown.school(way).orElseThrow(() -> noSuch("way", way, grown.schoolIds()));
    }

    /** The sheets of the plants asked for, each made when it is told. */
    private Stream<PruneSheet> fromGarden() {
        GardenFolder folder = folder();
        GardenState state = state();
        Season now = Season.containing(today(), state.garden().hemisphere());
        PruningMinutes minutes = new PruningMinutes(state);
        Map<Boolean, List<PlantState>> byKnown = state.plants().values().stream()
                .filter(plant -> plant.gone().isEmpty() && chosen(plant))
                .collect(Collectors.partitioningBy(plant -> Pruning.read(folder.crops().get(plant.plant().crop()))
                        .flatMap(it -> it.form(plant.plant().form())).isPresent()));
        byKnown.getOrDefault(false, List.of())
                .forEach(plant -> tell("No pruning figures are known for " + plant.plant().id()));
        List<PlantState> plants = byKnown.getOrDefault(true, List.of());
        if (plants.isEmpty()) { throw usage("there is no plant or bed \"" + which.orElse("") + "\" in this garden"); }
        state.questions().forEach(question -> tell("Question: " + question));
        wrongChoices(folder, state);
        return plants.stream()
                .flatMap(plant -> PruningCase.of(plant, folder.crops().get(plant.plant().crop()), now, state)
                        .map(one -> sheet(plant, one, minutes, state)).stream());
    }

    /** A choice that names nothing known leaves the default: that is not passed over in silence. */
    private void wrongChoices(GardenFolder folder, GardenState state) {
        Problems problems = new Problems();
        new Choices(state, folder.crops(), problems).check(folder.documents());
        problems.list().forEach(problem -> tell(problem.inWords()));
    }

    private PruneSheet sheet(PlantState plant, PruningCase one, PruningMinutes minutes, GardenState state) {
        SortedMap<String, Stems> past = Futures.labelled(one.past().taken(), state.garden().hemisphere());
        return sheet(new Subject.OnePlant(plant, one.crop(), state.bed(plant.plant().bed()).orElseThrow()).words(), one,
                minutes.of(List.of(plant), one.crop(), one.form(),
                        one.cut().life() == StageOfLife.PLANTING_YEAR ? "planting" : "winter"),
                past, List.of(Futures.said(past)));
    }

    private boolean chosen(PlantState plant) {
        return which.isEmpty() || plant.plant().id().equals(which.get()) || plant.plant().bed().equals(which.get());
    }
}
