package org.oldwood.cli.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.craft.feeding.Materials;
import org.oldwood.craft.mulching.MulchTables;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.water.WaterData;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.crop.Stems;
import org.oldwood.facts.Amount;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.facts.water.BedGround;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.StateBuilder;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.season.Season;
import org.oldwood.sheet.round.Wood;
import org.oldwood.words.Wording;

/** Gathers what the page shows. The same record and day give the same view. */
final class PageData {
    /** Classes that a count offers at least; the last takes all that is older. */
    private static final int CLASSES = 4;

    private static final int DAYS_AHEAD = 9;

    private final GardenFolder folder;
    private final GardenPlan plan;
    private final Wording wording;
    private final GardenState state;
    private final Season season;
    private final List<PlantState> walked;

    PageData(GardenFolder folder, GardenPlan plan, Wording wording) {
        this.folder = folder;
        this.plan = plan;
        this.wording = wording;
        this.state = plan.state();
        this.season = state.season();
        this.walked = state.walked();
    }

    PageView view() {
        Map<String, Cut> cuts = new LinkedHashMap<>();
        List<PageView.Bush> bushes = new ArrayList<>();
        walked.forEach(plant -> bushes.add(bush(plant, cuts)));
        return new PageView(state.garden().name(), wording.units().key(), wording.monthFirst(), state.date(),
                rounds(cuts), bushes, materials(), feels(), stages(), words(EntryKind.INSPECTED, "finding"),
                words(EntryKind.VIGOUR, "growth"), noted());
    }

    static String name(Crop crop, PlantState plant) {
        return crop.name() + plant.plant().cultivar().map(name -> " " + name).orElse("");
    }

    /** What is due within the next days, the most urgent first; optional work is not pressed on anybody. */
    private List<PageView.Round> rounds(Map<String, Cut> cuts) {
        LocalDate today = state.date();
        return Rounds.read(folder.documents()).of(plan.plan(), state).stream()
                .filter(round -> round.open() && !round.kind().optional()
                        && !round.day().isAfter(today.plusDays(DAYS_AHEAD)))
                .sorted(Comparator.comparingDouble((Round round) -> -round.urgency(today)))
                .map(round -> new PageView.Round(round.id(), round.title(), round.lastGoodDay(),
                        round.minutes() > 0 ? Optional.of((int) Math.ceil(round.minutes())) : Optional.empty(),
                        round.cautions().stream().findFirst().map(Cautions.Caution::line),
                        round.toDo().stream().map(task -> line(task, cuts)).toList()))
                .toList();
    }

    private PageView.Line line(Task task, Map<String, Cut> cuts) {
        Optional<String> plant = task.subject().kind().equals("plant") ? Optional.of(task.subject().id())
                : Optional.empty();
        boolean cutting = task.amount().filter(amount -> amount.unit().equals("stems")).isPresent();
        Map<String, Integer> planned = cutting ? plant.map(cuts::get).map(PageData::planned).orElse(Map.of())
                : Map.of();
        return new PageView.Line(task.id(), task.title(), task.window().last(),
                Optional.ofNullable(state.begun().get(task.id())).map(entry -> entry.count("percent").orElse(0)), plant,
                task.rule().doneBy().kinds().stream().findFirst().map(EntryKind::key),
                task.amount().map(Amount::words).filter(words -> !words.isEmpty()),
                task.amount().map(Amount::lines).orElse(List.of()), planned);
    }

    private static Map<String, Integer> planned(Cut cut) {
        Map<String, Integer> out = new LinkedHashMap<>();
        Stems stems = cut.before();
        for (int age = 1; age <= stems.oldest(); age++) {
            if (cut.of(age) > 0) { out.put(stems.label(age), cut.of(age)); }
        }
        return out;
    }

    private PageView.Bush bush(PlantState plant, Map<String, Cut> cuts) {
        Crop crop = folder.crops().get(plant.plant().crop());
        Optional<PruningCase> found = PruningCase.of(plant, crop, season, state);
        Optional<Cut> cut = found.flatMap(one -> one.bush().map(one.school()::winter));
        cut.ifPresent(it -> cuts.put(plant.plant().id(), it));
        Stems stems = cut.map(Cut::before).orElse(Stems.NONE);
        String bed = plant.plant().bed();
        return new PageView.Bush(plant.plant().id(), name(crop, plant), bed,
                state.bed(bed).map(it -> it.bed().name()).orElse(bed), crop.inRows(),
                cut.map(it -> Wood.of(it).ages()).orElse(List.of()),
                crop.inRows() ? new TreeMap<>(Map.of("1", stems.at(1), "2", stems.at(2))) : expected(stems),
                cut.flatMap(it -> found.map(one -> CutWords.taken(it, one.form().counted()))));
    }

    private static Map<String, Integer> expected(Stems stems) {
        Map<String, Integer> all = new LinkedHashMap<>();
        int last = Math.max(CLASSES, stems.oldest());
        for (int age = 1; age <= last; age++) {
            boolean open = age == last;
            all.put(open ? age + "+" : Integer.toString(age), open ? stems.from(age) : stems.at(age));
        }
        return all;
    }

    private Map<String, List<PageView.Choice>> materials() {
        return Map.of("fed",
                Materials.read(folder.documents()).feeds().stream()
                        .map(feed -> new PageView.Choice(feed.id(), feed.name())).toList(),
                "mulched", MulchTables.read(folder.documents()).mulches().stream()
                        .map(mulch -> new PageView.Choice(mulch.id(), mulch.name())).toList());
    }

    /** How moist soil feels, in the words for each bed's own ground. */
    private Map<String, List<PageView.Choice>> feels() {
        WaterData data = WaterData.read(folder.crops(), folder.documents());
        Map<String, List<PageView.Choice>> feels = new LinkedHashMap<>();
        state.beds().forEach((id, bed) -> feels.put(id,
                data.soils().guide(BedGround.of(bed.bed(), data).soil()).classes().stream()
                        .map(one -> new PageView.Choice(one.word(), one.word().replace('-', ' ') + ": " + one.text()))
                        .toList()));
        return feels;
    }

    private static List<PageView.Choice> words(EntryKind kind, String key) {
        return kind.field(key).map(EntryField::words).orElse(List.of()).stream()
                .map(word -> new PageView.Choice(word, word.replace('-', ' '))).toList();
    }

    private static List<PageView.Choice> stages() {
        return Stream.of(Stage.values())
                .map(stage -> new PageView.Choice(stage.key(), stage.words() + ": " + stage.look())).toList();
    }

    /** What a tick booked is told with it; a taking back stands for what it took back. */
    private List<PageView.Noted> noted() {
        List<Entry> counting = StateBuilder.counting(folder.journal(), Set.of());
        Set<String> along = Entries.together(folder.journal()).keySet();
        List<PageView.Noted> today = new ArrayList<>();
        counting.stream().filter(entry -> entry.date().equals(state.date()) && entry.text("tick").isEmpty()
                && !along.contains(entry.id())).forEach(entry -> {
                    Entry told = folder.journal().stream().filter(each -> entry.names("wrong", each.id())).findFirst()
                            .orElse(entry);
                    if (told.kind() != EntryKind.WITHDRAWN) {
                        today.add(0,
                                new PageView.Noted(entry.id(), Entries.act(entry.id()), entry.kind().key(),
                                        told.equals(entry) ? words(told) : told.kind().key() + ": " + words(told),
                                        counting.stream().filter(each -> each.names("tick", entry.id()))
                                                .map(each -> each.kind().key() + ": " + words(each)).toList()));
                    }
                });
        return today;
    }

    private String words(Entry entry) {
        return EntryText.cells(entry).entrySet().stream()
                .filter(cell -> !List.of("tick", "planned").contains(cell.getKey()))
                .map(cell -> cell.getKey().equals("task")
                        ? plan.plan().find(cell.getValue()).map(Task::title)
                                .or(() -> plan.planner().title(cell.getValue())).orElse(cell.getValue())
                        : cell.getKey() + " " + cell.getValue())
                .collect(Collectors.joining(", "));
    }
}
