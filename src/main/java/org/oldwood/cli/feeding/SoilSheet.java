package org.oldwood.cli.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.feeding.Household;
import org.oldwood.craft.feeding.liming.PhPlan;
import org.oldwood.facts.feeding.SoilStuff;
import org.oldwood.plan.Cautions;
import org.oldwood.words.Words;

/**
 * What lime or sulphur for one piece of ground comes to, for people and as JSON.
 *
 * @param facts what is known: pH measured and wanted, what was given; a line each
 * @param plan need and doses
 * @param areaM2 the area, m²
 * @param given what was given since the test, g/m², as limestone or sulphur
 * @param next when the plan has it, in a garden
 */
record SoilSheet(String title, Optional<String> bed, List<String> facts, SoilStuff stuff, PhPlan plan, double areaM2,
        double given, Optional<String> next) implements GroundSheet {
    @Override
    public void print(Out out) {
        out.hanging("", 2, title);
        facts.forEach(line -> out.hanging("  ", 4, line));
        out.hanging("  ", 4, headline());
        doses().forEach(line -> out.hanging("  ", 4, line));
        plan.notes().forEach(line -> out.hanging("  ", 4, line));
        next.filter(words -> plan.refused().filter(words::contains).isEmpty())
                .ifPresent(words -> out.hanging("  Next ", 7, words));
        out.section("  How it was reckoned", plan.lines());
        out.line();
    }

    private String headline() {
        if (plan.refused().isPresent()) { return plan.refused().get(); }
        return plan.nothingToDo() ? "Nothing to give."
                : "%s of %s in all, in %s.".formatted(Words.weight(plan.totalGrams()), stuff.name(),
                        Words.count(plan.dosesGrams().size(), "dose", "doses"));
    }

    private List<String> doses() {
        List<Double> all = plan.portions();
        if (all.isEmpty()) { return List.of(); }
        List<String> lines = new ArrayList<>();
        lines.add((all.size() == 1 ? "Give " : "First ") + dose(all.get(0)) + ".");
        if (all.size() > 1) {
            double last = all.get(all.size() - 1);
            lines.add("Then %s, %s; the last %s.".formatted(Words.count(all.size() - 1L, "more dose", "more doses"),
                    plan.apart(), dose(last)));
        }
        return lines;
    }

    private String dose(double grams) {
        return "%s (%s g/m²%s)".formatted(Words.weight(grams), Words.amount(grams / areaM2),
                Household.inWords(grams, stuff.density()).map(it -> ", " + it).orElse(""));
    }

    @Override
    public List<Cautions.Job> jobs() {
        return plan.nothingToDo() ? List.of() : List.of(Cautions.Job.of(stuff.work(), stuff.tags(), stuff.cautions()));
    }

    private record Answer(Optional<String> bed, String title, String material, String name, String refused,
            double givenSinceTestGPerM2, double gPerM2, double totalGrams, int doses, List<Dose> portions,
            double monthsBetween, List<String> facts, Optional<String> next, List<String> arithmetic,
            List<String> notes, List<String> cautions, List<String> sources) {}

    private record Dose(double grams, double gPerM2) {}

    @Override
    public Record answer(List<String> cautions) {
        return new Answer(bed, title, stuff.id(), stuff.name(), plan.refused().orElse(""), Words.rounded(given, 2),
                Words.rounded(plan.gPerM2(), 2), Words.rounded(plan.totalGrams(), 2), plan.dosesGrams().size(),
                plan.portions().stream()
                        .map(grams -> new Dose(Words.rounded(grams, 2), Words.rounded(grams / areaM2, 2))).toList(),
                plan.monthsBetween(), facts, next, plan.lines(), plan.notes(), cautions, plan.sources());
    }
}
