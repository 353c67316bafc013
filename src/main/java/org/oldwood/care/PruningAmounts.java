package org.oldwood.care;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.pruning.Bush;
import org.oldwood.pruning.Cut;
import org.oldwood.pruning.CutWords;
import org.oldwood.pruning.Habit;
import org.oldwood.pruning.Look;
import org.oldwood.pruning.Outlook;
import org.oldwood.pruning.School;
import org.oldwood.pruning.StageOfLife;
import org.oldwood.pruning.Stems;
import org.oldwood.pruning.Step;

/** Words a plant's cut as the amount of a task. */
final class PruningAmounts {
    private final PruningCase one;
    private final School school;
    private final int bushes;

    PruningAmounts(PruningCase one, int bushes) {
        this.one = one;
        this.school = one.school();
        this.bushes = bushes;
    }

    Amount of(String name, String time) {
        Cut cut = school.winter(one.bush().orElse(one.blank()));
        return switch (name) {
            case "winter-cut", "renovation-cut", "canes-thin", "canes-down" ->
                    one.bush().isPresent() ? counted(cut, time) : uncounted(cut, time);
            case "canes-out" -> work(cut, time, "canes", "all fruited canes");
            case "canes-kept" -> kept(cut, time);
            default -> work(cut, time, "plants", bushes == 1 ? "one plant" : bushes + " plants");
        };
    }

    private Amount counted(Cut cut, String time) {
        String words = CutWords.taken(cut);
        List<String> lines = new ArrayList<>(CutWords.remarks(cut));
        lines.addAll(unaged(one.faults()));
        if (cut.life() == StageOfLife.NEGLECTED && cut.heldBack() > 0) {
            schedule(one.bush().orElse(one.blank())).ifPresent(lines::add);
        }
        lines.addAll(looks());
        return amount(cut, time, cut.number(), stems(), words, lines)
                .withLines(lines(lines, cut, time));
    }

    /** Sick and weak stems whose ages were not noted cannot be counted off; they are told. */
    private static List<String> unaged(StemFaults faults) {
        List<String> lines = new ArrayList<>();
        if (faults.sickInAll() > 0) {
            lines.add(
                    "Noted without their age: "
                            + faults.sickInAll()
                            + " dead or diseased. They come out first, all of them; what they are of"
                            + " these numbers is done with them.");
        }
        if (faults.weakInAll() > 0) {
            lines.add(
                    "Noted without their age: "
                            + faults.weakInAll()
                            + " weak, damaged or low. Take them first of these numbers.");
        }
        return lines;
    }

    private Optional<String> schedule(Bush bush) {
        return one.basis()
                .map(
                        basis ->
                                "Over the winters: "
                                        + CutWords.parts(
                                                Outlook.of(
                                                        bush,
                                                        Habit.plan(school, one.aim()),
                                                        basis,
                                                        WINTERS))
                                        + " of the oldest stems.");
    }

    private static final int WINTERS = 6;

    private Amount uncounted(Cut cut, String time) {
        Stems target = school.target(one.blank());
        String words =
                target.total() == 0
                        ? "see how many are spent"
                        : "leave " + target.total() + " (by age " + target + "), oldest out first";
        List<String> lines = new ArrayList<>();
        lines.add("Not counted yet: count by age, and the cut list names the number of each age.");
        lines.addAll(looks());
        return amount(cut, time, target.total(), stems() + " to leave", words, lines)
                .withLines(lines(lines, cut, time));
    }

    private Amount kept(Cut cut, String time) {
        int keep = school.target(one.blank()).total();
        String words = "keep the " + keep + " strongest new canes";
        return amount(cut, time, keep, "canes", words, List.of())
                .withLines(lines(List.of(), cut, time));
    }

    private Amount work(Cut cut, String time, String unit, String words) {
        boolean canes = unit.equals("canes");
        double value = canes ? cut.before().from(2) : bushes;
        String said = canes && value > 0 ? words + ", " + (int) value + " counted" : words;
        return amount(cut, time, value, unit, said, List.of())
                .withLines(lines(List.of(), cut, time));
    }

    private String stems() {
        return one.form().craft().equals("canes") ? "canes" : "stems";
    }

    private List<String> looks() {
        List<String> all = new ArrayList<>();
        for (Look look : one.pruning().looks("spent")) {
            all.add("Spent wood: " + look.words());
        }
        return all;
    }

    private List<String> lines(List<String> first, Cut cut, String time) {
        List<String> all = new ArrayList<>(first);
        for (Step step : one.form().steps(school, time, cut.life())) {
            all.add(step.inWords());
        }
        return all;
    }

    private Amount amount(
            Cut cut, String time, double value, String unit, String words, List<String> lines) {
        Set<String> sources = new LinkedHashSet<>(school.teaching().sources());
        for (Step step : one.form().steps(school, time, cut.life())) {
            sources.addAll(step.sources());
        }
        if (!lines.isEmpty()) {
            one.pruning().looks("spent").forEach(look -> sources.addAll(look.sources()));
        }
        List<String> arithmetic = new ArrayList<>();
        arithmetic.add("way of pruning: " + school.id() + ". " + school.teaching().words());
        if (cut.before().oldest() > 0) {
            arithmetic.add("stems by age: " + CutWords.beforeAndAfter(cut));
        }
        Amount amount = Amount.of(value, unit, words, arithmetic, List.copyOf(sources));
        Optional<Double> each = one.minutesFor(time);
        return each.isPresent() ? amount.withMinutes(each.get() * Math.max(1, bushes)) : amount;
    }
}
