package org.oldwood.facts.record;

import java.util.List;
import java.util.Optional;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.garden.PlantState;
import org.oldwood.garden.StemAges;

/** What the record says of stems by age. */
public final class StemFacts implements Advisor {
    @Override
    public List<String> facts() {
        return List.of("stems-known", "stems-total", "stems-aged");
    }

    @Override
    public List<String> amounts() {
        return List.of();
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation situation) {
        return switch (name) {
            case "stems-known" -> stemsKnown(situation);
            case "stems-total" -> stemsTotal(situation);
            default -> stemsAged(of, situation);
        };
    }

    @Override
    public Optional<Amount> amount(String name, Situation situation) {
        return Optional.empty();
    }

    private static Optional<StemAges> stems(Situation s) {
        List<PlantState> known = s.subject().plants().stream()
                .filter(plant -> plant.stems().known())
                .toList();
        return known.size() == 1 && s.subject().plants().size() == 1
                ? Optional.of(known.get(0).stems().ages(s.season().year()))
                : Optional.empty();
    }

    private static Fact stemsKnown(Situation s) {
        boolean all =
                s.subject().plants().stream().allMatch(plant -> plant.stems().known());
        return Fact.yes(
                "stems-known", all, all ? "the stems were counted" : "the stems were never counted; note counted");
    }

    private static Fact stemsTotal(Situation s) {
        return stems(s).map(ages ->
                        Fact.number("stems-total", ages.total(), ages.total() + " stems (" + ages.inWords() + ")"))
                .orElseGet(() -> Fact.unknown("stems-total", "the stems were never counted; note counted"));
    }

    private static Fact stemsAged(Optional<String> of, Situation s) {
        int age = of.map(Integer::parseInt).orElse(1);
        return stems(s).map(ages -> Fact.number(
                        "stems-aged", ages.atLeast(age), ages.atLeast(age) + " stems of " + age + " seasons or more"))
                .orElseGet(() -> Fact.unknown("stems-aged", "the stems were never counted; note counted"));
    }
}
