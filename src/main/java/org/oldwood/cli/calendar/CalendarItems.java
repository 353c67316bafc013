package org.oldwood.cli.calendar;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;

/**
 * What every calendar command starts from.
 *
 * @param items the rounds that are wanted, and their tasks where each is to have a to-do of its own
 * @param known the rounds and all their tasks, which a calendar of before may hold one by one
 * @param leftOut what optional rounds that were not asked for would do
 */
record CalendarItems(Export.Garden garden, GardenState state, Plan plan, List<Item> items, List<Item> known,
        Set<String> leftOut, List<Entry> journal) {

    static CalendarItems of(GardenCommand command, boolean taskByTask) {
        GardenFolder folder = command.folder();
        GardenPlan planned = GardenPlan.of(command, folder);
        GardenState state = planned.state();
        Garden garden = folder.garden();
        RoundItems rounds = new RoundItems(state.begun(), command.wording());
        List<Item> items = new ArrayList<>();
        List<Item> known = new ArrayList<>();
        Set<String> leftOut = new LinkedHashSet<>();
        for (Round round : Rounds.read(folder.documents()).of(planned.plan(), state)) {
            List<Item> parts = new ArrayList<>();
            parts.add(rounds.round(round));
            round.all().forEach(task -> parts.add(rounds.task(task, round)));
            known.addAll(parts);
            if (round.wanted(garden.wishes())) {
                items.addAll(taskByTask ? parts : parts.subList(0, 1));
            } else if (round.open() && round.kind().optional()) { leftOut.add(round.title().split("[:,]", 2)[0]); }
        }
        return new CalendarItems(new Export.Garden(garden.id(), garden.name(), ZoneId.of(garden.site().zoneName()),
                folder.path(), came(state)), state, planned.plan(), items, known, leftOut, folder.journal());
    }

    private static Map<String, Item.Progress> came(GardenState state) {
        Map<String, Item.Progress> came = new HashMap<>();
        state.finished().forEach((task, entries) -> {
            Entry last = entries.get(entries.size() - 1);
            came.put(task, last.kind() == EntryKind.DONE ? Item.Progress.done(last.date()) : Item.Progress.SKIPPED);
        });
        return came;
    }
}
