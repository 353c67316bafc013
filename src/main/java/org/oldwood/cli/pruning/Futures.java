package org.oldwood.cli.pruning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Habit;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stems;
import org.oldwood.crop.UnprunedBush;
import org.oldwood.crop.Yield;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.words.Texts;
import org.oldwood.words.Words;

/**
 * Where a plant will stand under three habits: with the plan, without pruning, and as the grower did so far.
 *
 * @param newShoots new stems in a year; empty where nothing is known, and then there is no outlook
 * @param done what was taken in past winters, by the season; may be empty
 * @param said what there is to know of {@code newShoots} and {@code done}
 */
record Futures(Optional<Figure> newShoots, SortedMap<String, Stems> done, List<String> said) {
    static final String PLAN = "With the plan";
    static final String NONE = "Without pruning";
    static final String DONE = "As you did";
    private static final Texts TEXTS = Texts.of("pruning");
    private static final int SEASONS = 6;

    /** So many of the last seasons are repeated in turn. */
    private static final int LAST = 3;

    /** The outlooks by the name of the habit. */
    Map<String, Outlook> of(PruningCase one) {
        Map<String, Outlook> all = new LinkedHashMap<>();
        if (newShoots.isEmpty()) { return all; }
        Bush bush = one.bush().orElse(one.blank());
        Outlook.Basis basis = one.basis(newShoots.get());
        all.put(PLAN, Outlook.of(bush, Habit.plan(one.school(), one.aim()), basis, SEASONS));
        all.put(NONE, Outlook.of(bush, Habit.NONE, basis, SEASONS));
        if (!done.isEmpty()) {
            List<Stems> last = List.copyOf(done.values());
            Habit habit = Habit.asDone(last.subList(Math.max(0, last.size() - LAST), last.size()));
            all.put(DONE, Outlook.of(bush, habit, basis, SEASONS));
        }
        return all;
    }

    /** What the outlooks rest on, a sentence each. */
    List<String> notes(Crop crop) {
        List<String> all = new ArrayList<>(said);
        Optional<Yield> yield = Yield.read(crop);
        newShoots.ifPresent(figure -> all.add(TEXTS.get("outlook.shoots", Words.fixed(figure.is(), 1),
                Words.fixed(figure.low(), 1), Words.fixed(figure.high(), 1),
                (figure.unit().endsWith("/m") ? " on a metre" : "") + figure.seen().beside(),
                figure.note().isEmpty() ? "" : Words.capital(figure.note()) + ".")));
        all.add(TEXTS.get("outlook.range"));
        yield.flatMap(Yield::crowding)
                .ifPresent(k -> all.add(TEXTS.get("outlook.crowding", Words.fixed(k.is(), 1), Words.fixed(k.low(), 1),
                        Words.fixed(k.high(), 1), k.seen().words(), k.note().isEmpty() ? "" : ", " + k.note())));
        all.add(TEXTS.get("outlook.gain"));
        yield.flatMap(Yield::unpruned).ifPresent(it -> unpruned(it, all));
        all.add(yield.flatMap(Yield::picking)
                .map(it -> TEXTS.get("outlook.picking", it.plain(), it.seen().words(), it.note()))
                .orElse(TEXTS.get("outlook.picking.none")));
        return all;
    }

    private static void unpruned(UnprunedBush unpruned, List<String> all) {
        all.add(unpruned.words());
        unpruned.crop()
                .ifPresent(crop -> all.add(
                        TEXTS.get("outlook.unpruned", percent(crop.is()), unpruned.winters().orElse(crop).inWords(),
                                percent(crop.low()), percent(crop.high()) + " %" + crop.seen().beside())));
    }

    private static long percent(double share) { return Math.round(100 * share); }

    /** What was taken by the season's name. */
    static SortedMap<String, Stems> labelled(SortedMap<Integer, Stems> taken, Hemisphere hemisphere) {
        SortedMap<String, Stems> past = new TreeMap<>();
        taken.forEach((year, stems) -> past.put(new Season(year, hemisphere).label(), stems));
        return past;
    }

    /** What the third future rests on, or what to note so that there is one. */
    static String said(SortedMap<String, Stems> past) {
        if (past.isEmpty()) { return TEXTS.get("outlook.done.none"); }
        return TEXTS.get("outlook.done", past.entrySet().stream()
                .map(each -> each.getKey() + " " + some(each.getValue())).collect(Collectors.joining("; ")));
    }

    private static String some(Stems taken) {
        String all = IntStream.rangeClosed(1, taken.oldest()).filter(age -> taken.at(age) > 0)
                .mapToObj(age -> taken.label(age) + "=" + taken.at(age)).collect(Collectors.joining(","));
        return all.isEmpty() ? "none" : all;
    }
}
