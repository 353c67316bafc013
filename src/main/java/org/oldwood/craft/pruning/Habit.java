package org.oldwood.craft.pruning;

import java.util.List;
import org.oldwood.crop.Stems;

/** What is done with a bush each winter: the plan, nothing, or what the grower has been doing. */
@FunctionalInterface
public interface Habit {
    /** What comes out of this bush; {@code winter} is 0 for the coming one, 1 for the next. */
    Cut cut(Bush bush, int winter);

    /** The plan of a school. A bush that is cut down at once is built anew by {@code afterwards}. */
    static Habit plan(School school, School afterwards) {
        boolean once = school instanceof RenewalSchool renewal && renewal.cutsDown();
        return (bush, winter) -> (once && winter > 0 ? afterwards : school).winter(bush);
    }

    /** Nothing comes out. */
    Habit NONE = (bush, winter) -> Cut.nothing(StageOfLife.BEARING, bush.stems());

    /**
     * What was taken in past winters, one after the other and then again from the first; as many stems of each age, or
     * as many as there are.
     */
    static Habit asDone(List<Stems> takenBefore) {
        return (bush, winter) -> asDone(bush, takenBefore.get(winter % takenBefore.size()));
    }

    private static Cut asDone(Bush bush, Stems taken) {
        Cut.Builder cut = new Cut.Builder(bush.stems());
        int lumped = taken.isOpen() ? taken.oldest() : Stems.OLDEST_CLASS + 1;
        int old = taken.from(lumped);
        for (int age = bush.stems().oldest(); age >= 1; age--) {
            boolean openHere = bush.stems().isOpen() && age == bush.stems().oldest();
            int here = openHere ? taken.between(age, lumped - 1) : age < lumped ? taken.at(age) : 0;
            cut.take(age, here, Why.OLDEST);
            if (age >= lumped || openHere) { old -= cut.take(age, old, Why.OLDEST); }
        }
        return cut.build(StageOfLife.BEARING, 0, cut.left().at(1));
    }
}
