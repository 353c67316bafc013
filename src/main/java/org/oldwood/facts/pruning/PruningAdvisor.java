package org.oldwood.facts.pruning;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.CaneSchool;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.craft.pruning.Why;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.words.Words;

/** What the pruning craft tells the rules. */
public final class PruningAdvisor extends Advisor {
    private static final String COUNT = "the stems were not counted; note counted with the stems by age";
    /** The time of year whose steps go with each amount. */
    private static final Map<String, String> TIMES = Map.of("winter-cut", "winter", "renovation-cut", "renovation",
            "leader-cut", "winter", "spur-cut-winter", "winter", "spur-cut-summer", "summer", "planting-cut",
            "planting", "canes-out", "canes", "canes-kept", "canes", "canes-thin", "winter", "canes-down", "winter");

    public PruningAdvisor() {
        knows("spent-stems", s -> fact(s, PruningAdvisor::spent));
        knows("stems-out", s -> fact(s, PruningAdvisor::stemsOut));
        knows("all-sick", s -> fact(s, PruningAdvisor::allSick));
        knows("life-stage", s -> fact(s, PruningAdvisor::lifeStage));
        knows("past-life", s -> fact(s, PruningAdvisor::pastLife));
        knows("surplus-canes", s -> fact(s, PruningAdvisor::surplus));
        TIMES.forEach((name, time) -> measures(name,
                s -> first(s).filter(one -> isDoneBy(one, name)).map(one -> amount(name, time, one, s))));
        measures("grub", s -> Optional.of(grub(s)));
        // one that must go is gone once that is done; an old one may have been kept
        measures("grub-sick",
                s -> Optional.of(grub(s).withNoted(List.of(new Amount.Noted(EntryKind.GRUBBED, Map.of())))));
    }

    private Fact fact(Situation situation, Function<PruningCase, Fact> fact) {
        return first(situation).map(fact)
                .orElseGet(() -> Fact.unknown("no pruning figures are known for this crop in this form"));
    }

    private Amount amount(String name, String time, PruningCase one, Situation situation) {
        List<PlantState> plants = situation.subject().plants();
        PruningMinutes minutes = situation.world().once(PruningMinutes.class, of -> new PruningMinutes(of.state()));
        Optional<Double> together = minutes.of(plants, one.crop(), one.form(), time);
        return new PruningAmounts(one, situation.subject().bushes(), together).of(name, time);
    }

    /** Where all canes go in winter none is thinned, tied in or cut out after picking; else none. */
    private static boolean isDoneBy(PruningCase one, String name) {
        boolean all = one.school() instanceof CaneSchool canes && canes.all();
        return switch (name) {
            case "canes-down" -> all;
            case "canes-out", "canes-kept", "canes-thin" -> !all;
            default -> true;
        };
    }

    private static Amount grub(Situation situation) {
        int bushes = situation.subject().bushes();
        double metres = situation.subject().metres();
        String words = metres > 0 ? Words.one(metres) + " m of row" : bushes + (bushes == 1 ? " plant" : " plants");
        return Amount.of(metres > 0 ? metres : bushes, "plants", words, List.of(), List.of());
    }

    /** The case of the subject's plant; of the first of several. */
    private Optional<PruningCase> first(Situation situation) {
        List<PlantState> plants = situation.subject().plants();
        if (plants.isEmpty()) { return Optional.empty(); }
        PlantState state = plants.get(0);
        Optional<Crop> crop = situation.world().crops().find(state.plant().crop());
        return crop.isEmpty() ? Optional.empty()
                : PruningCases.of(state, crop.get(), situation.season(), situation.world());
    }

    private static Fact spent(PruningCase one) {
        if (one.bush().isEmpty()) { return Fact.unknown(COUNT); }
        Cut cut = one.cut();
        int spent = cut.of(Why.SPENT) + cut.of(Why.OLDEST) + cut.heldBack();
        return Fact
                .number(spent, "%s spent %s among %s".formatted(spent, one.form().counted(), one.bush().get().stems()))
                .from(sources(one));
    }

    /** Stems or branches of two years and more that come out, whatever for. */
    private static Fact stemsOut(PruningCase one) {
        if (one.bush().isEmpty()) { return Fact.unknown(COUNT); }
        int out = one.cut().number() - one.cut().of(1);
        return Fact.number(out, CutWords.taken(one.cut(), one.form().counted())).from(sources(one));
    }

    private static Fact allSick(PruningCase one) {
        if (one.bush().isEmpty()) { return Fact.unknown(COUNT); }
        Bush bush = one.bush().get();
        int all = bush.stems().total();
        boolean sick = all > 0 && bush.sick().total() == all;
        String words = sick ? "all " + all + " are noted as dead or diseased" : "not all are noted as dead or diseased";
        return Fact.yes(sick, words);
    }

    private static List<String> sources(PruningCase one) { return one.school().teaching().sources(); }

    private static Fact lifeStage(PruningCase one) {
        Cut cut = one.cut();
        StageOfLife life = cut.life();
        boolean bearing = life == StageOfLife.BEARING;
        if (bearing && one.pastLife()) {
            life = StageOfLife.AGEING;
        } else if (bearing && one.bush().isEmpty()) { return Fact.unknown(COUNT); }
        if (life == StageOfLife.NEGLECTED) {
            String words = cut.staged().map(CutWords::stagedInShort)
                    .orElse("more spent wood than can go in one winter");
            return Fact.text(life.words(), words).from(sources(one));
        }
        return Fact.text(life.words(), "by its age and wood it is " + life.words()).from(sources(one));
    }

    private static Fact pastLife(PruningCase one) {
        return one.life()
                .map(life -> Fact
                        .yes(one.pastLife(),
                                "%s seasons completed; a productive life is about %s"
                                        .formatted(one.blank().seasons().orElse(0), life.inWords()))
                        .from(life.sources()))
                .orElseGet(() -> Fact.unknown("no figure for the crop's productive life is known"));
    }

    private static Fact surplus(PruningCase one) {
        if (one.bush().isEmpty() || !one.bush().get().stems().knows(1)) {
            return Fact.unknown("the canes were not counted; note canes");
        }
        Cut cut = one.cut();
        int surplus = cut.of(Why.CROWDED) + cut.of(Why.WEAK);
        return Fact.number(surplus, cut.before().at(1) + " new canes, " + cut.youngToLeave() + " may stand")
                .from(sources(one));
    }
}
