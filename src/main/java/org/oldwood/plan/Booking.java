package org.oldwood.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Subject;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.settle.Share;
import org.oldwood.words.Words;

/** What a task comes to in the journal where it is done: the entries that it stands for, whole, with their subjects. */
public record Booking(Task task, List<Share> chosen, double factor) {
    /** Figures that are shared out among plants, and scaled where more or less was given. */
    private static final Set<String> SHARED = Set.of("grams", "litres");

    /** The entries of all that is still open of a task, as planned. */
    public static List<Amount.Noted> of(Task task) {
        return new Booking(task, task.settled().left(), 1).entries();
    }

    /**
     * The entries of a task that was done to some plants, or with more or less than planned.
     *
     * @param only the plants; empty for all
     * @param amount how much in all, in the task's unit; empty for as planned
     */
    public static List<Amount.Noted> of(Task task, Collection<String> only, Optional<Double> amount) {
        List<Share> left = task.settled().left();
        List<Share> chosen = left.stream().filter(share -> only.isEmpty() || only.contains(share.id())).toList();
        double planned = task.amount().map(Amount::value).orElse(0.0);
        double factor = amount.isPresent() && planned > 0 ? amount.get() * bushes(left) / (planned * bushes(chosen))
                : 1;
        return new Booking(task, chosen, factor).entries();
    }

    /** Whether the entries hold a figure that another amount than the planned one would change. */
    public static boolean scales(Task task) {
        return of(task).stream().anyMatch(entry -> entry.says().keySet().stream().anyMatch(SHARED::contains));
    }

    private List<Amount.Noted> entries() {
        List<Amount.Noted> all = new ArrayList<>();
        for (Amount.Noted noted : task.amount().map(Amount::noted).orElse(List.of())) {
            if (!task.rule().doneBy().kinds().contains(noted.kind()) || chosen.isEmpty()) { continue; }
            if (task.subject() instanceof Subject.Stand stand && !ofTheWholeBed(stand, noted.kind())) {
                // what is weighed is shared out by bushes; the last share takes what rounding left
                double left = bushes(task.settled().left());
                chosen.forEach(share -> all.add(entry(noted, "plant", share.id(), factor * share.bushes() / left)));
            } else {
                task.subject().bed()
                        .ifPresent(bed -> all.add(
                                task.subject() instanceof Subject.OnePlant one ? entry(noted, "plant", one.id(), factor)
                                        : entry(noted, "bed", bed.bed().id(), factor)));
            }
        }
        return all;
    }

    /** An entry of the bed would speak of all that stands in it. */
    private boolean ofTheWholeBed(Subject.Stand stand, EntryKind kind) {
        return kind.field("bed").isPresent() && chosen.size() == stand.plants().size()
                && stand.in().plants().size() == stand.plants().size();
    }

    private Amount.Noted entry(Amount.Noted noted, String key, String id, double part) {
        Map<String, String> says = new LinkedHashMap<>();
        says.put(key, id);
        noted.says().forEach((what, value) -> says.put(what, SHARED.contains(what) ? scaled(value, part) : value));
        for (Map.Entry<String, String> field : task.rule().doneBy().fields().entrySet()) {
            noted.kind().field(field.getKey()).ifPresent(known -> says.putIfAbsent(known.key(), field.getValue()));
        }
        return new Amount.Noted(noted.kind(), says);
    }

    private static String scaled(String value, double part) {
        return Words.fixed(Math.max(0.1, Double.parseDouble(value) * part), part == 1 ? 1 : 2);
    }

    private static int bushes(List<Share> shares) { return Math.max(1, shares.stream().mapToInt(Share::bushes).sum()); }

    /** The plants of a task, for {@code only} and {@code except}; none where it is not done plant by plant. */
    public static List<String> plants(Task task) {
        return task.subject() instanceof Subject.Stand
                ? task.subject().plants().stream().map(plant -> plant.plant().id()).toList()
                : List.of();
    }

    /** What the grower has to note, for only they can tell it: the fields that tell most, as in the kind's example. */
    public static Optional<String> toNote(Task task) {
        if (!of(task).isEmpty() || task.rule().doneBy().kinds().isEmpty()) { return Optional.empty(); }
        EntryKind kind = task.rule().doneBy().kinds().get(0);
        List<String> wanted = kind.fields().stream().map(EntryField::key)
                .filter(key -> kind.example().contains("--" + key + " ")).toList();
        return wanted.isEmpty() ? Optional.empty()
                : Optional.of("note %s (%s)".formatted(kind.key(), String.join(", ", wanted)));
    }
}
