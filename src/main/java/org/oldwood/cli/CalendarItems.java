package org.oldwood.cli;

import java.io.IOException;
import java.util.List;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.TaskItems;
import org.oldwood.care.Plan;
import org.oldwood.garden.Entry;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.report.TaskWords;

/** What every calendar command starts from: whose calendar, the plan, and its items. */
record CalendarItems(Export.Garden garden, GardenState state, Plan plan, List<Item> items) {

    static CalendarItems of(GardenCommand command) throws IOException {
        GardenFolder folder = command.folder();
        GardenState state = command.state();
        Plan plan = Planning.planner(folder, state).plan();
        command.stopOnProblems(folder);
        TaskWords words = Planning.words(folder);
        Garden garden = folder.garden();
        return new CalendarItems(
                new Export.Garden(garden.id(), garden.name(), garden.site().zone(), folder.path()),
                state,
                plan,
                TaskItems.of(plan.tasks(), TaskWords::headline, words::lines).stream()
                        .map(item -> begun(item, state))
                        .toList());
    }

    private static Item begun(Item item, GardenState state) {
        Entry begun = state.begun().get(item.identity());
        boolean isOpen = item.progress().state() == Item.State.OPEN;
        return begun == null || !isOpen
                ? item
                : item.with(Item.Progress.begun(begun.count("percent").orElse(0)));
    }
}
