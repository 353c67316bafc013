package org.oldwood.facts;

import java.time.LocalDate;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.store.Documents;

/**
 * What a rule looks at: one subject in one season.
 *
 * @param day the day for which facts are asked: the window's first day, or today if that is later
 */
public record Situation(World world, Subject subject, Season season, LocalDate day) {

    /** What is the same for all subjects of one plan. */
    public record World(GardenState state, Stages stages, Crops crops, Documents documents) {
        public LocalDate today() { return state.date(); }
    }
}
