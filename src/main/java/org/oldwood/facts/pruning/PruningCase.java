package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.FormPruning;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.Pruning;
import org.oldwood.craft.pruning.School;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stems;
import org.oldwood.crop.Yield;
import org.oldwood.facts.record.Choices;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.LeafFalls;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * One plant as the pruning craft sees it in a season: its stems as the record has them, its age, its way of pruning.
 *
 * @param bush its stems at the winter that opens the season; empty where they were never counted
 * @param cut what comes out in that winter; of a plant without stems where they were not counted
 */
public record PruningCase(Crop crop, Pruning pruning, FormPruning form, School school, Optional<Bush> bush, Bush blank,
        Cut cut, StemFaults faults, List<Entry> entries, LeafFalls falls) {

    /** The case of a plant of which no garden keeps a record; {@code bush} is empty where its stems were not counted. */
    public static PruningCase given(Crop crop, Pruning pruning, FormPruning form, Optional<Bush> bush, Bush blank) {
        return new PruningCase(crop, pruning, form, form.school(), bush, blank,
                form.school().winter(bush.orElse(blank)), StemFaults.NONE, List.of(), new LeafFalls(Hemisphere.NORTH));
    }

    /** The case of a plant; empty where the crop has no pruning figures for its form. */
    public static Optional<PruningCase> of(PlantState state, Crop crop, Season season, GardenState garden) {
        return Pruning.read(crop).flatMap(pruning -> of(state, crop, pruning, season, garden));
    }

    static Optional<PruningCase> of(PlantState state, Crop crop, Pruning pruning, Season season, GardenState garden) {
        FormPruning form = pruning.forms().get(state.plant().form());
        if (form == null) { return Optional.empty(); }
        School school = chosen(state, form, garden.garden().choices());
        Bush blank = blank(state, crop, season, renovations(state, school, season, garden));
        boolean canes = form.craft().equals("canes");
        Stems stems = canes ? canes(state, season) : state.stems().in(season.year()).inWinter();
        StemFaults faults = canes ? StemFaults.ofCanes(state, stems)
                : StemFaults.of(state, crop, season, garden.leafFalls(), stems);
        Optional<Bush> bush = stems.oldest() == 0 ? Optional.empty()
                : Optional.of(blank.with(stems).withFaults(faults.sick(), faults.weak()));
        return Optional.of(new PruningCase(crop, pruning, form, school, bush, blank, school.winter(bush.orElse(blank)),
                faults, state.entries(), garden.leafFalls()));
    }

    /** The same plant pruned another way. */
    public PruningCase by(School other) {
        return new PruningCase(crop, pruning, form, other, bush, blank, other.winter(bush.orElse(blank)), faults,
                entries, falls);
    }

    /** What to know of the counts that the cut rests on: a sentence each. */
    public List<String> noted() {
        List<String> lines = new ArrayList<>(faults.inWords());
        Optional<String> guessed = Optional.empty();
        for (Entry entry : entries) {
            switch (entry.kind()) {
                case COUNTED, CANES -> guessed = Optional.empty();
                case PRUNED -> guessed = entry.stems().isEmpty() ? guessed : entry.unmeasured();
                default -> {
                }
            }
        }
        guessed.ifPresent(words -> lines.add(Words.capital(words) + "."));
        return lines;
    }

    /** What the grower did to it before: worked out when asked for, which few plans do. */
    public PastPruning past() {
        return PastPruning.of(entries, crop, falls);
    }

    private static School chosen(PlantState state, FormPruning form, Map<String, String> choices) {
        List<String> keys = choices.isEmpty() ? List.of() : Choices.renewalKeys(state);
        return keys.stream().flatMap(key -> form.school(choices.getOrDefault(key, "")).stream()).findFirst()
                .orElseGet(form::school);
    }

    /** The plant with its age and room, and no stems. */
    private static Bush blank(PlantState state, Crop crop, Season season, int renovations) {
        return new Bush(Stems.NONE, Stems.NONE, Stems.NONE,
                OptionalInt.of(Math.max(0, state.plant().seasonsOld(season) - 1)), 1 + renovations,
                metres(state, crop));
    }

    /** Length of a row, or the room of a plant in its row. */
    static double metres(PlantState plant, Crop crop) {
        return plant.plant().lengthM().orElseGet(() -> crop.inRowM(plant.plant().form()));
    }

    /** Canes as last counted, if that was since the summer before; else none. */
    private static Stems canes(PlantState state, Season season) {
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        Optional<Entry> last = Entries.last(state.entries(), EntryKind.CANES);
        if (last.isPresent() && last.get().date().isAfter(season.start().minusDays(SINCE))) {
            last.get().count("fresh").ifPresent(fresh -> counts.put(1, fresh));
            last.get().count("fruited").ifPresent(fruited -> counts.put(2, fruited));
            state.entries().stream()
                    .filter(entry -> entry.kind() == EntryKind.PRUNED && !entry.date().isBefore(last.get().date()))
                    .forEach(entry -> takeOut(entry, counts));
        }
        return Stems.from(counts, OptionalInt.empty());
    }

    /** Canes that were cut since they were counted; where their number was not noted, all that the cut takes. */
    private static void takeOut(Entry cut, SortedMap<Integer, Integer> counts) {
        SortedMap<Integer, Integer> taken = cut.stems().byAge();
        taken.forEach((age, number) -> counts.computeIfPresent(age, (any, left) -> Math.max(0, left - number)));
        boolean all = taken.isEmpty() && cut.number("metres").isEmpty();
        if (all && cut.names("cut", "down")) {
            counts.replaceAll((age, left) -> 0);
        } else if (all && cut.names("cut", "canes")) { counts.computeIfPresent(2, (age, left) -> 0); }
    }

    /** Days before a season's start in which a count of canes still tells of that season. */
    private static final int SINCE = 150;

    /**
     * How many winters before this one in a row a bush was being brought back. Where the way has a renovation for
     * crowded plants they count from the winter in which it was so crowded.
     */
    private static int renovations(PlantState state, School school, Season season, GardenState garden) {
        int inRow = 0;
        for (Season before = season.plus(-1); renovation(state, before).isPresent(); before = before.plus(-1)) {
            inRow++;
        }
        if (school.staged().isEmpty()) { return inRow; }
        int staged = 0;
        for (int ago = inRow; ago >= 1; ago--) {
            Season then = season.plus(-ago);
            Bush bush = then(state, renovation(state, then).orElseThrow(), then, garden);
            boolean goesOn = school.winter(bush.inRenovationWinter(1 + staged)).staged().isPresent();
            staged = goesOn ? staged + 1 : 0;
        }
        return staged;
    }

    /** The stems just before a cut, as the record then had them. */
    private static Bush then(PlantState state, Entry cut, Season season, GardenState garden) {
        return Bush.of(state.with(Entries.before(state.entries(), cut), garden.leafFalls()).stems().in(season.year())
                .inWinter());
    }

    /** The first cut of a renovation in a season. */
    private static Optional<Entry> renovation(PlantState state, Season season) {
        return state.entries().stream().filter(entry -> entry.kind() == EntryKind.PRUNED
                && season.contains(entry.date()) && entry.names("cut", "renovation")).findFirst();
    }

    public Optional<Figure> life() { return crop.life(form.form()); }

    /** True where the plant has stood for its productive life. */
    public boolean pastLife() {
        return life().map(figure -> blank.seasons().orElse(0) >= figure.is()).orElse(false);
    }

    /** The way that a bush which is cut down is built anew by; else its own. */
    public School aim() {
        return school.target(blank).total() == 0 && form.craft().equals("renewal") ? form.school() : school;
    }

    /** How many stems, canes or branches are to stay; 0 where all go, or no number is aimed at. */
    public int toLeave() {
        return school.target(blank).total();
    }

    /** What to do with a plant whose stems or canes were not counted. */
    public String toDo() {
        return isTooYoung() ? CutWords.young() : CutWords.uncounted(form, school, school.target(blank));
    }

    /** Whether no sound wood of it is cut yet. */
    boolean isTooYoung() { return school.isTooYoung(blank); }

    /** What an outlook rests on; empty where no figure of new shoots is known. */
    public Optional<Outlook.Basis> basis() {
        return form.newShoots().map(past()::shoots).map(this::basis);
    }

    /** What an outlook rests on, with so many new shoots a year. */
    public Outlook.Basis basis(Figure newShoots) {
        return new Outlook.Basis(aim(), form, Yield.read(crop), newShoots);
    }
}
