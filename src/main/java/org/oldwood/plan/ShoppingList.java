package org.oldwood.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;
import org.oldwood.garden.Garden;

/**
 * What the open tasks of a plan take of feeds, limes, acidifiers, mulches and paper, added up by material. A plain
 * record for commands and sheets to show.
 *
 * @param from the plan's first day, included
 * @param until the plan's last day, included
 * @param items the materials, the one needed first in front
 * @param lacking what tasks want that no material at hand brings
 */
public record ShoppingList(LocalDate from, LocalDate until, List<Item> items, List<String> lacking) {

    /**
     * One material.
     *
     * @param total all that the tasks take
     * @param uses where it goes
     * @param kept whether the garden names it among its materials; another was taken as usual
     */
    public record Item(Purchase total, List<Use> uses, boolean kept) {
        /** The first day on which some of it is needed. */
        public LocalDate neededBy() { return uses.get(0).day(); }
    }

    /**
     * What one task takes.
     *
     * @param amount how much, in the unit of the total
     */
    public record Use(String task, LocalDate day, String bed, double amount) {}

    /** The list of a plan; the tasks of a plan stand in the order of their days. */
    public static ShoppingList of(Plan plan, Garden garden) {
        Map<String, Purchase> totals = new LinkedHashMap<>();
        Map<String, List<Use>> uses = new LinkedHashMap<>();
        Set<String> lacking = new LinkedHashSet<>();
        for (Task task : plan.tasks()) {
            if (task.state() == Task.State.OPEN && task.amount().isPresent()) {
                Amount amount = task.amount().get();
                for (Purchase each : amount.buys()) {
                    String key = each.material() + " " + each.unit();
                    totals.merge(key, each, Purchase::plus);
                    uses.computeIfAbsent(key, none -> new ArrayList<>()).add(new Use(task.id(), task.day(),
                            task.subject().bed().map(in -> in.bed().name()).orElse(""), each.amount()));
                }
                amount.lacks().forEach(words -> lacking.add(task.title() + ": " + words));
            }
        }
        List<Item> items = new ArrayList<>();
        totals.forEach((key, total) -> items.add(new Item(total, List.copyOf(uses.getOrDefault(key, List.of())),
                garden.materials().contains(total.material()))));
        return new ShoppingList(plan.from(), plan.until(), items, List.copyOf(lacking));
    }
}
