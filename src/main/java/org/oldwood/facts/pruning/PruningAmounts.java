package org.oldwood.facts.pruning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.Habit;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.StageOfLife;
import org.oldwood.facts.Amount;
import org.oldwood.garden.EntryKind;

/** Words a plant's cut as the amount of a task. */
record PruningAmounts(PruningCase one, int bushes, Optional<Double> minutes) {
    private static final int WINTERS = 20;

    Amount of(String name, String time) {
        Cut cut = one.cut();
        return switch (name) {
            case "winter-cut", "renovation-cut", "canes-thin", "canes-down" ->
                one.bush().isPresent() ? counted(cut, time) : uncounted(cut, time);
            case "canes-out" -> work(cut, time, "canes", "all fruited canes");
            case "canes-kept" -> kept(cut, time);
            default -> work(cut, time, "plants", bushes + (bushes == 1 ? " plant" : " plants"));
        };
    }

    private Amount counted(Cut cut, String time) {
        String words = CutWords.taken(cut, one.form().counted());
        List<String> lines = new ArrayList<>(CutWords.remarks(cut));
        lines.addAll(one.noted());
        boolean told = cut.staged().isPresent();
        if (cut.life() == StageOfLife.NEGLECTED && cut.heldBack() > 0 && !told) {
            schedule(one.bush().orElse(one.blank())).ifPresent(lines::add);
        }
        lines.addAll(looks());
        return amount(cut, time, cut.number(), one.form().counted(), words, lines).withNoted(noted(cut));
    }

    /** The stems that come out by age; none where none do. */
    private static List<Amount.Noted> noted(Cut cut) {
        Map<String, Integer> byAge = new TreeMap<>();
        cut.taken().forEach(one -> byAge.merge(cut.before().label(one.age()), one.number(), Integer::sum));
        String stems = byAge.entrySet().stream().map(each -> each.getKey() + "=" + each.getValue())
                .collect(Collectors.joining(","));
        return List.of(new Amount.Noted(EntryKind.PRUNED, byAge.isEmpty() ? Map.of() : Map.of("stems", stems)));
    }

    private Optional<String> schedule(Bush bush) {
        return one.basis().map(it -> new Outlook.Basis(it.school(), it.form().undying(), it.yield(), it.newShoots()))
                .map(basis -> "Over the winters: %s of the oldest stems.".formatted(
                        CutWords.parts(Outlook.of(bush, Habit.plan(one.school(), one.aim()), basis, WINTERS))));
    }

    private Amount uncounted(Cut cut, String time) {
        List<String> lines = new ArrayList<>();
        int leave = one.isTooYoung() ? 0 : one.toLeave();
        if (leave > 0) { lines.add("Not counted yet: note the count, and the cut list says how many go."); }
        lines.addAll(looks());
        return amount(cut, time, leave, one.form().counted() + " to leave", one.toDo(), lines)
                .withNoted(List.of(new Amount.Noted(EntryKind.PRUNED, Map.of())));
    }

    private Amount kept(Cut cut, String time) {
        int keep = one.school().target(one.blank()).total();
        return amount(cut, time, keep, "canes", "keep the " + keep + " strongest new canes", List.of());
    }

    private Amount work(Cut cut, String time, String unit, String words) {
        boolean canes = unit.equals("canes");
        double value = canes ? cut.before().from(2) : bushes;
        String said = canes && value > 0 ? words + ", " + (int) value + " counted" : words;
        Map<String, String> stems = canes && value > 0 ? Map.of("stems", "2=" + (int) value) : Map.of();
        return amount(cut, time, value, unit, said, List.of())
                .withNoted(List.of(new Amount.Noted(EntryKind.PRUNED, stems)));
    }

    private List<String> looks() {
        return one.pruning().looks("spent").stream().map(look -> "Spent wood: " + look.words() + look.seen().beside())
                .toList();
    }

    private Amount amount(Cut cut, String time, double value, String unit, String words, List<String> first) {
        List<String> lines = new ArrayList<>(first);
        Set<String> sources = new LinkedHashSet<>(one.school().teaching().sources());
        cut.staged().ifPresent(part -> sources.addAll(part.renovation().sources()));
        one.form().steps(one.school(), time, cut.life()).forEach(step -> {
            lines.add(step.inWords());
            sources.addAll(step.sources());
        });
        if (!first.isEmpty()) { one.pruning().looks("spent").forEach(look -> sources.addAll(look.sources())); }
        List<String> arithmetic = new ArrayList<>();
        arithmetic.add("way of pruning: " + one.school().id() + ". " + one.school().teaching().words());
        if (cut.before().oldest() > 0) {
            arithmetic.add(one.form().counted() + " by age: " + CutWords.beforeAndAfter(cut));
            arithmetic.add("the default is %s: %s".formatted(one.form().school().id(), one.form().why()));
            arithmetic.addAll(CutWords.others(one.form(), one.school(), one.bush().orElse(one.blank())));
        }
        return Amount.of(value, unit, words, arithmetic, List.copyOf(sources)).withMinutes(minutes).withLines(lines);
    }
}
