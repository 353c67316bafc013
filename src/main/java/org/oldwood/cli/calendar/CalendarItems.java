package org.oldwood.cli.calendar;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Items;
import org.oldwood.calendar.TaskItems;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.garden.Garden;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Zone;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Task;
import org.oldwood.report.TaskWords;

/** What every calendar command starts from: whose calendar, the plan, and its items. */
record CalendarItems(Export.Garden garden, GardenState state, Plan plan, Items items) {

    static CalendarItems of(GardenCommand command) throws IOException {
        GardenFolder folder = command.folder();
        GardenState state = command.state();
        Plan plan = Planning.planner(folder, state).plan();
        command.stopOnProblems(folder);
        Garden garden = folder.garden();
        return new CalendarItems(
                new Export.Garden(
                        garden.id(), garden.name(), Zone.of(garden.site().zoneName()), folder.path()),
                state,
                plan,
                new TaskItems(plan.tasks(), begun(state), state.finished().keySet(), words(Planning.words(folder))));
    }

    private static Map<String, Integer> begun(GardenState state) {
        Map<String, Integer> begun = new HashMap<>();
        state.begun()
                .forEach((task, entry) -> begun.put(task, entry.count("percent").orElse(0)));
        return begun;
    }

    private static TaskItems.Words words(TaskWords words) {
        return new TaskItems.Words() {
            @Override
            public String headline(Task task) {
                return TaskWords.headline(task);
            }

            @Override
            public List<String> lines(Task task) {
                return words.lines(task);
            }
        };
    }
}
