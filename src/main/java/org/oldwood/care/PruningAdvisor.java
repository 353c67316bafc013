package org.oldwood.care;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.crop.Decimals;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.pruning.CaneSchool;
import org.oldwood.pruning.Cut;
import org.oldwood.pruning.StageOfLife;
import org.oldwood.pruning.StagedWords;
import org.oldwood.pruning.Why;

/** What the pruning craft tells the rules. */
final class PruningAdvisor implements Advisor {
    private static final String COUNT =
            "the stems were not counted; note counted with the stems by age";
    private static final String GRUB = "grub";
    private static final Map<String, String> TIMES = new HashMap<>();

    static {
        TIMES.put("winter-cut", "winter");
        TIMES.put("renovation-cut", "renovation");
        TIMES.put("leader-cut", "winter");
        TIMES.put("spur-cut-winter", "winter");
        TIMES.put("spur-cut-summer", "summer");
        TIMES.put("planting-cut", "planting");
        TIMES.put("canes-out", "canes");
        TIMES.put("canes-kept", "canes");
        TIMES.put("canes-thin", "winter");
        TIMES.put("canes-down", "winter");
    }

    private final PruningCases cases;
    private @Nullable PruningMinutes minutes;
    private @Nullable GardenState minutesOf;

    PruningAdvisor(PruningCases cases) {
        this.cases = cases;
    }

    @Override
    public List<String> facts() {
        return List.of("spent-stems", "life-stage", "past-life", "surplus-canes");
    }

    @Override
    public List<String> amounts() {
        return List.of(
                "winter-cut",
                "renovation-cut",
                "leader-cut",
                "spur-cut-winter",
                "spur-cut-summer",
                "planting-cut",
                "canes-out",
                "canes-kept",
                "canes-thin",
                "canes-down",
                GRUB);
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation situation) {
        Optional<PruningCase> one = first(situation);
        if (one.isEmpty()) {
            return Fact.unknown(name, "no pruning figures are known for this crop in this form");
        }
        return switch (name) {
            case "spent-stems" -> spent(one.get());
            case "life-stage" -> lifeStage(one.get());
            case "past-life" -> pastLife(one.get());
            default -> surplus(one.get());
        };
    }

    @Override
    public Optional<Amount> amount(String name, Situation situation) {
        if (name.equals(GRUB)) {
            return Optional.of(grub(situation));
        }
        String time = TIMES.getOrDefault(name, "winter");
        List<PlantState> plants = situation.subject().plants();
        return first(situation)
                .filter(one -> isDoneBy(one, name))
                .map(
                        one ->
                                new PruningAmounts(
                                                one,
                                                bushes(situation),
                                                minutes(situation.world().state())
                                                        .of(plants, one.crop(), one.form(), time))
                                        .of(name, time));
    }

    /**
     * Where all canes go in winter none is thinned, tied in or cut out after picking; else none.
     */
    private static boolean isDoneBy(PruningCase one, String name) {
        boolean all = one.school() instanceof CaneSchool canes && canes.all();
        return switch (name) {
            case "canes-down" -> all;
            case "canes-out", "canes-kept", "canes-thin" -> !all;
            default -> true;
        };
    }

    private static Amount grub(Situation situation) {
        int bushes = bushes(situation);
        double metres =
                situation.subject().plants().stream()
                        .mapToDouble(plant -> plant.plant().lengthM().orElse(0))
                        .sum();
        String words =
                metres > 0
                        ? Decimals.one(metres) + " m of row"
                        : bushes + (bushes == 1 ? " plant" : " plants");
        return Amount.of(metres > 0 ? metres : bushes, "plants", words, List.of(), List.of());
    }

    /** What the journal tells of minutes, read once for a garden's state. */
    @SuppressWarnings("ReferenceEquality") // the very same state, not an equal one
    private PruningMinutes minutes(GardenState state) {
        if (minutes == null || minutesOf != state) {
            minutes = new PruningMinutes(state);
            minutesOf = state;
        }
        return minutes;
    }

    private static int bushes(Situation situation) {
        return situation.subject().plants().stream().mapToInt(p -> p.plant().bushes()).sum();
    }

    /** The case of the subject's plant; of the first of several. */
    private Optional<PruningCase> first(Situation situation) {
        List<PlantState> plants = situation.subject().plants();
        if (plants.isEmpty()) {
            return Optional.empty();
        }
        PlantState state = plants.get(0);
        return situation
                .world()
                .crops()
                .find(state.plant().crop())
                .flatMap(
                        crop ->
                                cases.of(
                                        state,
                                        crop,
                                        situation.season(),
                                        situation.world().state()));
    }

    private static Fact spent(PruningCase one) {
        if (one.bush().isEmpty()) {
            return Fact.unknown("spent-stems", COUNT);
        }
        Cut cut = one.school().winter(one.bush().get());
        int spent = cut.of(Why.SPENT) + cut.of(Why.OLDEST) + cut.heldBack();
        return Fact.number(
                "spent-stems",
                spent,
                spent + " spent stems among " + one.bush().get().stems(),
                sources(one));
    }

    private static String[] sources(PruningCase one) {
        return one.school().teaching().sources().toArray(String[]::new);
    }

    private static Fact lifeStage(PruningCase one) {
        Cut cut = one.school().winter(one.bush().orElse(one.blank()));
        StageOfLife life = cut.life();
        boolean bearing = life == StageOfLife.BEARING;
        if (bearing && one.pastLife()) {
            life = StageOfLife.AGEING;
        } else if (bearing && one.bush().isEmpty()) {
            return Fact.unknown("life-stage", COUNT);
        }
        String words =
                life == StageOfLife.NEGLECTED
                        ? cut.staged()
                                .map(StagedWords::inShort)
                                .orElse("more spent wood than can go in one winter")
                        : "by its age and wood it is " + life.words();
        return Fact.text("life-stage", life.words(), words, sources(one));
    }

    private static Fact pastLife(PruningCase one) {
        if (one.life().isEmpty()) {
            return Fact.unknown("past-life", "no figure for the crop's productive life is known");
        }
        boolean past = one.pastLife();
        return Fact.yes(
                "past-life",
                past,
                one.blank().seasons().orElse(0)
                        + " seasons completed; a productive life is about "
                        + one.life().get().inWords(),
                one.life().get().sources().toArray(String[]::new));
    }

    private static Fact surplus(PruningCase one) {
        if (one.bush().isEmpty() || !one.bush().get().stems().knows(1)) {
            return Fact.unknown("surplus-canes", "the canes were not counted; note canes");
        }
        Cut cut = one.school().winter(one.bush().get());
        int surplus = cut.of(Why.CROWDED) + cut.of(Why.WEAK);
        return Fact.number(
                "surplus-canes",
                surplus,
                cut.before().at(1) + " new canes, " + cut.youngToLeave() + " may stand",
                sources(one));
    }
}
