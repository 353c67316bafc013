package org.oldwood.facts;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
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

    /** The id of a rule's task here, without the number of a repeat. */
    public String task(String rule) {
        return rule + "@" + subject.id() + "@" + season.label();
    }

    /**
     * What is the same for all subjects of one plan.
     *
     * @param made what crafts made once of it
     */
    public record World(GardenState state, Stages stages, Crops crops, Documents documents,
            Map<Class<?>, Object> made) {
        public World(GardenState state, Stages stages, Crops crops, Documents documents) {
            this(state, stages, crops, documents, new HashMap<>());
        }

        public LocalDate today() { return state.date(); }

        /** What a craft makes of it, made when first asked for. */
        public <T> T once(Class<T> kind, Function<World, T> make) {
            Object known = made.get(kind);
            T now = known == null ? make.apply(this) : kind.cast(known);
            made.put(kind, now);
            return now;
        }
    }
}
