package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.oldwood.crop.Stems;

/**
 * What comes out of a bush this winter, and what stays.
 *
 * @param life where the bush stands, seen from its wood
 * @param heldBack spent stems that stay for a later winter
 * @param youngToLeave how many stems of age 1 to leave at most; what the thinning aims at, also where they were not
 *     counted
 * @param staged this winter's part, where a crowded plant is brought back over some winters
 */
public record Cut(StageOfLife life, Stems before, List<Taken> taken, Stems after, int heldBack, int youngToLeave,
        Set<Remark> remarks, Optional<StagedRenovation.Part> staged) {

    /** Something to tell with the cut list. */
    public enum Remark {
        /** The limit of a season kept back wood that would otherwise come out. */
        LIMITED,
        /** Every stem is dead or diseased. */
        NONE_SOUND,
        /** Bearing wood stays because fewer young stems came up than would go. */
        NO_MORE_THAN_CAME_UP,
        /** Old wood stays because it is the last that bears. */
        LAST_BEARING_WOOD,
        /** More new shoots are kept than usual, since the bush is short of stems. */
        FILLED_UP,
        /** Some ages were not counted; they were taken as none. */
        NOT_ALL_COUNTED,
        /** The oldest class holds stems of several ages; the thickest of them come out. */
        OPEN_CLASS,
        /** Too early for pruning; dead, diseased, weak and damaged wood only. */
        TOO_YOUNG,
        /** The school's own hard way: the limit of a season is not kept. */
        HARD,
        /** A branch past its age stays until a young low shoot can follow it. */
        NO_SUCCESSOR
    }

    /** Nothing comes out. */
    static Cut nothing(StageOfLife life, Stems stems) {
        return new Builder(stems).build(life, 0, stems.at(1));
    }

    /** How many stems come out. */
    public int number() { return sum(one -> true); }

    /** How many stems of a class come out. */
    public int of(int age) { return sum(one -> one.age() == age); }

    /** How many stems come out for a reason. */
    public int of(Why why) { return sum(one -> one.why() == why); }

    private int sum(Predicate<Taken> which) { return taken.stream().filter(which).mapToInt(Taken::number).sum(); }

    /**
     * Which winter of bringing it back the next one is, after this one was the {@code winter}-th; 1 where nothing is
     * left to do.
     *
     * @param school the way by which this cut was decided
     */
    int nextRenovationWinter(School school, int winter) {
        if (staged.isPresent()) { return staged.get().next(); }
        boolean goesOn = life == StageOfLife.NEGLECTED && heldBack > 0;
        return goesOn && school.staged().isEmpty() ? winter + 1 : 1;
    }

    /** Gathers what comes out while it is being decided. */
    static final class Builder {
        private final Stems before;
        private final List<Taken> taken = new ArrayList<>();
        private final Set<Remark> remarks = EnumSet.noneOf(Remark.class);
        private Stems left;

        Builder(Stems before) {
            this.before = before;
            this.left = before;
        }

        Stems left() { return left; }

        /** Takes up to {@code most} of a class, as many as there are; returns how many. */
        int take(int age, int most, Why why) {
            int number = Math.min(Math.max(0, most), left.at(age));
            if (number > 0) {
                left = left.without(age, number);
                taken.add(new Taken(age, number, why));
            }
            return number;
        }

        /** Takes up to {@code most} stems of age {@code from} and older, the oldest first; returns how many. */
        int takeOldest(int most, int from, Why why) {
            int gone = 0;
            for (int age = left.oldest(); age >= from && gone < most; age--) {
                gone += take(age, most - gone, why);
            }
            return gone;
        }

        /** Takes the dead and diseased stems, all of them. */
        void takeSick(Bush bush) {
            for (int age = bush.sick().oldest(); age >= 1; age--) {
                take(age, bush.sick().at(age), Why.SICK);
            }
            if (before.total() > 0 && left.total() == 0) { remark(Remark.NONE_SOUND); }
        }

        /** Takes the weak, damaged and low stems, but not the last older stem nor the last shoot to follow one. */
        void takeWeak(Bush bush) {
            int older = bush.weak().from(2);
            int going = Math.min(older, Math.max(0, left.from(2) - 1));
            if (going < older) { remark(Remark.LAST_BEARING_WOOD); }
            for (int age = bush.weak().oldest(); age >= 2; age--) {
                going -= take(age, Math.min(bush.weak().at(age), going), Why.WEAK);
            }
            take(1, Math.min(bush.weak().at(1), left.at(1) - 1), Why.WEAK);
        }

        void remark(Remark remark) { remarks.add(remark); }

        Cut build(StageOfLife life, int heldBack, int youngToLeave) {
            return build(life, heldBack, youngToLeave, Optional.empty());
        }

        Cut build(StageOfLife life, int heldBack, int youngToLeave, Optional<StagedRenovation.Part> staged) {
            return new Cut(life, before, List.copyOf(taken), left, heldBack, youngToLeave, remarks, staged);
        }
    }

    /** Stems of one age that come out for one reason. */
    public record Taken(int age, int number, Why why) {}
}
