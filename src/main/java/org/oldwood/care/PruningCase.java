package org.oldwood.care;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Yield;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.Season;
import org.oldwood.garden.StemAges;
import org.oldwood.pruning.Bush;
import org.oldwood.pruning.FormPruning;
import org.oldwood.pruning.Labour;
import org.oldwood.pruning.Outlook;
import org.oldwood.pruning.Pruning;
import org.oldwood.pruning.School;
import org.oldwood.pruning.Stems;

/**
 * One plant as the pruning craft sees it in a season: its stems as the record has them, its age,
 * its way of pruning.
 *
 * @param bush its stems at the winter that opens the season; empty where they were never counted
 * @param unsound stems noted as weak, damaged or low at the last count
 * @param minutes the grower's own minutes for a cut, where noted
 */
public record PruningCase(
        Crop crop,
        Pruning pruning,
        FormPruning form,
        School school,
        Optional<Bush> bush,
        Bush blank,
        int unsound,
        Optional<Double> minutes) {

    /**
     * The case of a plant; empty where the crop has no pruning figures for its form.
     *
     * @param choices what the garden chose: {@code renewal.<plant>}, {@code renewal.<crop>} or
     *     {@code renewal} name a way of pruning; one that this form has not leaves the default
     */
    public static Optional<PruningCase> of(
            PlantState state, Crop crop, Season season, Map<String, String> choices) {
        Optional<Pruning> pruning = Pruning.read(crop);
        return pruning.flatMap(it -> it.form(state.plant().form()))
                .map(
                        form ->
                                of(
                                        state,
                                        crop,
                                        season,
                                        pruning.get(),
                                        form,
                                        chosen(state, crop, form, choices)));
    }

    private static School chosen(
            PlantState state, Crop crop, FormPruning form, Map<String, String> choices) {
        for (String key :
                List.of("renewal." + state.plant().id(), "renewal." + crop.id(), "renewal")) {
            Optional<School> school = form.school(choices.getOrDefault(key, ""));
            if (school.isPresent()) {
                return school.get();
            }
        }
        return form.school();
    }

    private static PruningCase of(
            PlantState state,
            Crop crop,
            Season season,
            Pruning pruning,
            FormPruning form,
            School school) {
        double metres =
                state.plant()
                        .lengthM()
                        .orElseGet(
                                () ->
                                        crop.spacing(form.form())
                                                .map(spacing -> spacing.inRow().is())
                                                .orElse(1.0));
        Bush blank =
                new Bush(
                        Stems.NONE,
                        Stems.NONE,
                        Stems.NONE,
                        OptionalInt.of(Math.max(0, state.plant().seasonsOld(season) - 1)),
                        1 + renovations(state, season),
                        metres);
        Map<String, Integer> counts =
                form.craft().equals("canes") ? canes(state, season) : stems(state, season);
        Optional<Bush> bush =
                counts.isEmpty() ? Optional.empty() : Optional.of(withStems(blank, counts));
        return new PruningCase(
                crop, pruning, form, school, bush, blank, unsound(state), minutes(state));
    }

    private static Bush withStems(Bush blank, Map<String, Integer> counts) {
        return new Bush(
                Stems.from(counts),
                Stems.NONE,
                Stems.NONE,
                blank.seasons(),
                blank.renovationWinter(),
                blank.metres());
    }

    private static Map<String, Integer> stems(PlantState state, Season season) {
        Map<String, Integer> counts = new TreeMap<>();
        if (!state.stems().known()) {
            return counts;
        }
        StemAges ages = state.stems().ages(season.year());
        ages.counts()
                .forEach(
                        (age, count) -> {
                            boolean open =
                                    ages.openFrom().isPresent()
                                            && ages.openFrom().getAsInt() == age;
                            if (age >= 1 && age <= Stems.OLDEST_CLASS) {
                                counts.put(age + (open ? "+" : ""), count);
                            }
                        });
        return counts;
    }

    /** Canes as last counted, if that was since the summer before. */
    private static Map<String, Integer> canes(PlantState state, Season season) {
        Map<String, Integer> counts = new TreeMap<>();
        Optional<Entry> last = Entries.last(state.entries(), EntryKind.CANES);
        if (last.isPresent() && last.get().date().isAfter(season.start().minusDays(SINCE))) {
            last.get().count("fresh").ifPresent(fresh -> counts.put("1", fresh));
            last.get().count("fruited").ifPresent(fruited -> counts.put("2", fruited));
        }
        return counts;
    }

    /** Days before a season's start in which a count of canes still tells of that season. */
    private static final int SINCE = 150;

    /** How many winters before this one in a row a bush was being brought back. */
    private static int renovations(PlantState state, Season season) {
        int winters = 0;
        for (Season before = season.plus(-1); renovated(state, before); before = before.plus(-1)) {
            winters++;
        }
        return winters;
    }

    private static boolean renovated(PlantState state, Season season) {
        return state.entries().stream()
                .anyMatch(
                        entry ->
                                entry.kind() == EntryKind.PRUNED
                                        && season.contains(entry.date())
                                        && entry.text("cut").orElse("").equals("renovation"));
    }

    private static int unsound(PlantState state) {
        Optional<Entry> last = Entries.last(state.entries(), EntryKind.COUNTED);
        return last.map(
                        entry ->
                                entry.count("weak").orElse(0)
                                        + entry.count("damaged").orElse(0)
                                        + entry.count("low").orElse(0))
                .orElse(0);
    }

    private static Optional<Double> minutes(PlantState state) {
        List<Entry> timed =
                Entries.all(state.entries(), EntryKind.PRUNED).stream()
                        .filter(entry -> entry.count("minutes").isPresent())
                        .toList();
        return timed.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        timed.stream()
                                .mapToInt(entry -> entry.count("minutes").orElse(0))
                                .average()
                                .orElse(0));
    }

    /** The productive life of the crop in this form. */
    Optional<Figure> life() {
        return crop.life(form.form());
    }

    /** True where the plant has stood for its productive life. */
    boolean pastLife() {
        return life().map(figure -> blank.seasons().orElse(0) >= figure.is()).orElse(false);
    }

    /** The way that a bush which is cut down is built anew by; else its own. */
    public School aim() {
        return school.target(blank).total() == 0 && form.craft().equals("renewal")
                ? form.school()
                : school;
    }

    /** What an outlook rests on; empty where no figure of new shoots is known. */
    public Optional<Outlook.Basis> basis() {
        return form.newShoots()
                .map(shoots -> new Outlook.Basis(aim(), form.form(), Yield.read(crop), shoots));
    }

    /** Minutes for a time of work: the grower's own, else those of the figures. */
    Optional<Double> minutesFor(String time) {
        return minutes.or(
                () -> form.labour().of(time).map(figure -> Labour.minutes(figure, blank.metres())));
    }
}
