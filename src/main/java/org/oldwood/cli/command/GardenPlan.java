package org.oldwood.cli.command;

import java.util.List;
import org.oldwood.cli.year.NextTask;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Planner;
import org.oldwood.plan.round.Rounds;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;

/** A garden's plan, and what a command needs to ask the crafts about single beds and stands. */
public record GardenPlan(GardenState state, Situation.World world, Planner planner, Plan plan) {

    /** Plans the garden's year; stops where its records have problems. */
    public static GardenPlan of(GardenCommand command, GardenFolder folder) {
        GardenState state = command.state();
        Stages stages = Planning.stages(folder, state);
        Planner planner = new Planner(state, stages, folder.crops(), folder.documents(), new AllCrafts());
        Plan whole = planner.plan();
        Plan plan = whole.part(whole.tasks(), Rounds.read(folder.documents()).wanted(whole.missed(), state.wishes()));
        command.stopOnProblems(folder);
        return new GardenPlan(state, new Situation.World(state, stages, folder.crops(), folder.documents()), planner,
                plan);
    }

    /** A bed or stand in a season, as of the state's own day. */
    public Situation situation(Subject subject, Season season) {
        return new Situation(world, subject, season, world.today());
    }

    public Situation situation(Subject subject) { return situation(subject, state.season()); }

    /** When the plan next gives the subject one of the amounts, or why it does not. */
    public NextTask next(Subject subject, List<String> amounts) {
        return new NextTask(planner, plan, subject, amounts);
    }
}
