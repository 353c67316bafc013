package org.oldwood.pruning;

import java.util.EnumSet;

/** What is done with a bush each winter: the plan, nothing, or what the grower has been doing. */
@FunctionalInterface
public interface Habit {
    /** What comes out of this bush; {@code winter} is 0 for the coming one, 1 for the next. */
    Cut cut(Bush bush, int winter);

    /**
     * The plan of a school. A bush that is cut down at once is built anew by {@code afterwards}.
     */
    static Habit plan(School school, School afterwards) {
        boolean once = school instanceof RenewalSchool renewal && renewal.cutsDown();
        return (bush, winter) -> (once && winter > 0 ? afterwards : school).winter(bush);
    }

    /** Nothing comes out. */
    static Habit none() {
        return (bush, winter) -> Cut.nothing(StageOfLife.BEARING, bush.stems());
    }

    /** Each winter as many stems of each age as were taken last time, or as many as there are. */
    static Habit asDone(Stems takenLastTime) {
        return (bush, winter) -> {
            Cut.Builder cut = new Cut.Builder(bush.stems());
            int oldest = takenLastTime.oldest();
            for (int age = bush.stems().oldest(); age >= 1; age--) {
                boolean older = takenLastTime.isOpen() && age > oldest;
                cut.take(age, takenLastTime.at(older ? oldest : age), Why.OLDEST);
            }
            return new Cut(
                    StageOfLife.BEARING,
                    bush.stems(),
                    cut.taken(),
                    cut.left(),
                    0,
                    cut.left().at(1),
                    EnumSet.noneOf(Cut.Remark.class));
        };
    }
}
