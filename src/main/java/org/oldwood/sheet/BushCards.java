package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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

/** Looks six seasons ahead for each plant whose stems are known. Plants that are alike share a card. */
final class BushCards {
    private static final int SEASONS = 6;
    private static final double PERCENT = 100;

    private final Ground ground;
    private final Season season;

    BushCards(Ground ground) {
        this.ground = ground;
        this.season = ground.state().season();
    }

    List<BushCard> of(List<PlantState> plants) {
        Map<String, List<PlantState>> alike = new LinkedHashMap<>();
        for (PlantState plant : plants) {
            alike.computeIfAbsent(key(plant), key -> new ArrayList<>()).add(plant);
        }
        return alike.values().stream().map(this::card).filter(card -> card.outlook().size() > 1).toList();
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

    private BushCard card(List<PlantState> alike) {
        PlantState first = alike.get(0);
        Crop crop = ground.world().crops().get(first.plant().crop());
        Optional<PruningCase> found = PruningCase.of(first, crop, season, ground.state());
        return new BushCard(Words.capital(crop.name()), alike.stream().map(BushCards::who).toList(),
                facts(first, found), found.map(this::outlook).orElse(List.of()));
    }

    private static String who(PlantState state) {
        Plant plant = state.plant();
        return plant.id() + plant.cultivar().map(name -> ", " + name).orElse("");
    }

    private List<String> facts(PlantState state, Optional<PruningCase> found) {
        Plant plant = state.plant();
        List<String> facts = new ArrayList<>();
        facts.add(ground.bedName(Optional.of(plant.bed())));
        facts.add("planted " + (plant.about().equals("day") ? Days.day(plant.planted()) + " "
                : plant.about().equals("year") ? "about " : "") + plant.planted().getYear());
        facts.add(plant.form().replace('-', ' '));
        if (plant.lengthM().isPresent()) { facts.add("row of " + Numbers.plain(plant.lengthM().getAsDouble()) + " m"); }
        if (plant.bushes() > 1) { facts.add(plant.bushes() + " alike"); }
        found.filter(it -> it.form().schools().size() > 1).ifPresent(it -> facts.add("way: " + it.school().id()));
        return facts;
    }

    private List<BushCard.Season> outlook(PruningCase one) {
        if (one.bush().isEmpty() || one.basis().isEmpty()) { return List.of(); }
        Bush bush = one.bush().get();
        Outlook.Basis basis = one.basis().get();
        Outlook plan = Outlook.of(bush, Habit.plan(one.school(), one.aim()), basis, SEASONS);
        Outlook none = Outlook.of(bush, Habit.NONE, basis, SEASONS);
        double most = Math.max(most(plan), most(none));
        List<BushCard.Season> seasons = new ArrayList<>();
        for (int i = 0; i < SEASONS; i++) {
            Outlook.Winter winter = plan.winters().get(i);
            String label = season.plus(i).label();
            BushCard.Season next = new BushCard.Season(label, CutWords.byAge(winter.cut().after()),
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
    List<String> rests(List<PlantState> plants) {
        Map<Seen, Set<String>> marks = new TreeMap<>();
        for (PlantState plant : plants) {
            Crop crop = ground.world().crops().get(plant.plant().crop());
            Yield.read(crop).flatMap(Yield::wood).map(WoodAge::seen).filter(seen -> seen != Seen.READ)
                    .ifPresent(seen -> marks.computeIfAbsent(seen, any -> new TreeSet<>()).add(crop.plural()));
        }
        List<String> words = new ArrayList<>();
        marks.forEach((seen, crops) -> words
                .add("How much wood of each age bears is %s for %s: read the range of the crop, not its middle."
                        .formatted(seen.words(), String.join(", ", crops))));
        return words;
    }
}
