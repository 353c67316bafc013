package org.oldwood.cli;

import java.util.List;
import org.oldwood.care.Advisors;
import org.oldwood.care.Planner;
import org.oldwood.crop.Sources;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.report.TaskWords;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Stages;

/** Wires a garden's state to its stage dates, rules and crafts. */
final class Planning {
    private Planning() {}

    /** The stage dates of a garden. */
    static Stages stages(GardenFolder folder, GardenState state) {
        return new CalendarStages();
    }

    static Planner planner(GardenFolder folder, GardenState state) {
        return new Planner(
                state,
                stages(folder, state),
                folder.crops(),
                folder.documents(),
                Advisors.standard());
    }

    static TaskWords words(GardenFolder folder) {
        return new TaskWords(Sources.read(folder.documents()));
    }

    /** Notices on standard error, one paragraph each; a long list is cut, and says so. */
    static void tellNotices(GardenCommand command, List<String> notices) {
        int shown = Math.min(notices.size(), 12);
        notices.subList(0, shown).forEach(notice -> command.tell("Note: " + notice));
        if (shown < notices.size()) {
            command.tell(
                    "And "
                            + (notices.size() - shown)
                            + " more notes; oldwood tasks --json has them all.");
        }
    }
}
