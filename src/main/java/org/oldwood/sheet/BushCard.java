package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Habit;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Range;
import org.oldwood.crop.Seen;
import org.oldwood.crop.WoodAge;
import org.oldwood.crop.Yield;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.garden.Plant;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * What one bush bears in the coming seasons, or several that are alike.
 *
 * @param outlook the six coming seasons, those alike that follow each other in one
 */
record BushCard(Ground ground, List<PlantState> alike, Crop crop, Optional<PruningCase> one, List<Ahead> outlook) {
    private static final int SEASONS = 6;
    private static final double PERCENT = 100;

    /** A card for each plant whose stems are known; plants that are alike share one. */
    static List<BushCard> of(Ground ground, List<PlantState> plants) {
        return plants.stream().collect(Collectors.groupingBy(BushCard::key, LinkedHashMap::new, Collectors.toList()))
                .values().stream().map(each -> of(each, ground)).filter(card -> card.outlook.size() > 1).toList();
    }

    private static BushCard of(List<PlantState> alike, Ground ground) {
        Crop crop = ground.world().crops().get(alike.get(0).plant().crop());
        Season season = ground.state().season();
        Optional<PruningCase> found = PruningCase.of(alike.get(0), crop, season, ground.state());
        return new BushCard(ground, alike, crop, found, found.map(it -> outlook(it, season)).orElse(List.of()));
    }

    private static String key(PlantState state) {
        Plant plant = state.plant();
        return String.join("|", plant.bed(), plant.crop(), plant.form(), Integer.toString(plant.bushes()),
                plant.lengthM().toString(), plant.planted().toString(), state.stems().toString(), state
                        .entries().stream().filter(it -> !it.stems().isEmpty() || it.count("fresh").isPresent()).map(
                                it -> it.date() + it.kind().key()
                                        + Stream.of("stems", "dead", "weak", "damaged", "low")
                                                .map(key -> it.stems(key).toString()).toList())
                        .reduce("", String::concat));
    }

    String title() { return Words.capital(crop.name()); }

    /** The plants' ids, with their varieties. */
    List<String> who() {
        return alike.stream().map(each -> each.plant().idAndCultivar()).toList();
    }

    /** Where, since when, how grown. */
    List<String> facts() {
        Plant plant = alike.get(0).plant();
        List<String> facts = new ArrayList<>();
        facts.add(ground.bedName(Optional.of(plant.bed())));
        facts.add("planted " + (plant.about().equals("day") ? Shown.day(plant.planted()) + " "
                : plant.about().equals("year") ? "about " : "") + plant.planted().getYear());
        facts.add(plant.form().replace('-', ' '));
        if (plant.lengthM().isPresent()) { facts.add("row of " + Shown.plain(plant.lengthM().getAsDouble()) + " m"); }
        if (plant.bushes() > 1) { facts.add(plant.bushes() + " alike"); }
        one.filter(it -> it.form().schools().size() > 1).ifPresent(it -> facts.add("way: " + it.school().id()));
        return facts;
    }

    private static List<Ahead> outlook(PruningCase one, Season season) {
        if (one.bush().isEmpty() || one.basis().isEmpty()) { return List.of(); }
        Bush bush = one.bush().get();
        Outlook.Basis basis = one.basis().get();
        Outlook plan = Outlook.of(bush, Habit.plan(one.school(), one.aim()), basis, SEASONS);
        Outlook none = Outlook.of(bush, Habit.NONE, basis, SEASONS);
        double most = Math.max(most(plan), most(none));
        List<Ahead> seasons = new ArrayList<>();
        for (int i = 0; i < SEASONS; i++) {
            Outlook.Winter winter = plan.winters().get(i);
            String label = season.plus(i).label();
            Ahead next = new Ahead(label, CutWords.byAge(winter.cut().after()),
                    Math.round(PERCENT * winter.bearingShare()), winter.kg().map(kg -> KgBar.of(kg, most)),
                    none.winters().get(i).kg().map(kg -> KgBar.of(kg, most)));
            int last = seasons.size() - 1;
            if (last >= 0 && seasons.get(last).sameAs(next)) {
                seasons.set(last, seasons.get(last).until(label));
            } else {
                seasons.add(next);
            }
        }
        return seasons;
    }

    private static double most(Outlook outlook) {
        return outlook.winters().stream().flatMap(it -> it.kg().stream()).mapToDouble(Range::high).max().orElse(0);
    }

    /** What the outlooks rest on, where that was not read in print: each thing once. */
    static List<String> rests(Ground ground, List<PlantState> plants) {
        Map<Seen, Set<String>> marks = new TreeMap<>();
        for (PlantState plant : plants) {
            Crop crop = ground.world().crops().get(plant.plant().crop());
            Yield.read(crop).flatMap(Yield::wood).map(WoodAge::seen).filter(seen -> seen != Seen.READ)
                    .ifPresent(seen -> marks.computeIfAbsent(seen, any -> new TreeSet<>()).add(crop.plural()));
        }
        return marks.entrySet().stream()
                .map(each -> "How much wood of each age bears is %s for %s: read the range of the crop, not its middle."
                        .formatted(each.getKey().words(), String.join(", ", each.getValue())))
                .toList();
    }

    /**
     * One of the coming seasons.
     *
     * @param label the season, or the first and last of several
     * @param stems what stands after its winter's cut
     * @param bearing share of them that bears well, per cent
     * @param plan the crop with the plan; absent without figures
     * @param none the crop without pruning; absent without figures
     */
    record Ahead(String label, String stems, long bearing, Optional<KgBar> plan, Optional<KgBar> none) {

        boolean sameAs(Ahead other) {
            return stems.equals(other.stems) && bearing == other.bearing
                    && plan.map(KgBar::inShort).equals(other.plan.map(KgBar::inShort))
                    && none.map(KgBar::inShort).equals(other.none.map(KgBar::inShort));
        }

        Ahead until(String last) {
            return new Ahead("%s to %s".formatted(label.split(" to ", 2)[0], last), stems, bearing, plan, none);
        }
    }
}
