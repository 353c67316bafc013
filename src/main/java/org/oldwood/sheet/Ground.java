package org.oldwood.sheet;

import java.util.Optional;
import org.oldwood.crop.Sources;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subjects;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Plan;
import org.oldwood.season.Stages;

/**
 * What a sheet is made from.
 *
 * @param world the garden on the day, its stage dates, its crops and the data
 * @param plan the year's tasks
 * @param subjects what tasks are done to
 */
public record Ground(Situation.World world, Plan plan, Subjects subjects, GardenWater water, Sources sources) {

    GardenState state() { return world.state(); }

    Stages stages() { return world.stages(); }

    String bedName(Optional<String> id) { return id.flatMap(state()::bed).map(bed -> bed.bed().name()).orElse(""); }
}
