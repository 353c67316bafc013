package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stems;

/**
 * Spur pruning of a permanent frame: an open bush on a leg, or a cordon. The branches stay for years; each winter their
 * side shoots are cut to spurs and each summer checked, as the steps of the teaching say. Only branches past their age,
 * or too many, come out.
 *
 * @param permanent true where the branches are the plant, as the arms of a cordon: none goes but a dead one
 * @param branchLife age at which a branch is replaced; empty where it is never replaced
 * @param buildYears seasons until the frame stands
 */
public record SpurSchool(@Key(Key.HERE) Teaching teaching, Figure branches, boolean permanent,
        Optional<Figure> branchLife, SeasonLimit limit, @Key(least = 1, most = 10) int buildYears,
        Optional<Renovation> renovation) implements School {

    @Override
    public Cut winter(Bush bush) { return new Winter(bush, this).decide(); }

    @Override
    public Stems target(Bush bush) { return Stems.ofOpen(0, (int) branches.is()); }

    @Override
    public int bearing(Stems stems) { return stems.from(2); }

    @Override
    public int fold() { return branchLife.map(age -> (int) age.is()).orElse(2); }

    /**
     * The branches that come out of a spur-pruned bush in winter: dead and diseased ones, weak and damaged ones, then those
     * past their age as far as a young low shoot stands ready to follow each, then those above the number of the form.
     * Stems of age 1 in the count are low young shoots, older ones are branches. Of the shoots as many stay as there is
     * room for. Arms that are the plant, as those of a cordon, stay unless they are dead. A frame too crowded for the limit
     * of a season is brought back in the parts of a {@link StagedRenovation}, where its school has one. The spur cut itself
     * is the same on every branch and stands in the school's steps.
     *
     * <p>Checked against {@code reference/spur-cut.csv}.
     */
    private static final class Winter {
        private final Bush bush;
        private final SpurSchool school;
        private final Cut.Builder cut;
        private final int lifeYears;
        private int limit;
        private int mayGo;
        private boolean staged;

        private Winter(Bush bush, SpurSchool school) {
            this.bush = bush;
            this.school = school;
            this.cut = new Cut.Builder(bush.stems());
            this.lifeYears = school.branchLife().map(age -> (int) age.is()).orElse(Stems.OLDEST_CLASS + 1);
        }

        private Cut decide() {
            if (bush.isBefore(1)) { return Cut.nothing(StageOfLife.PLANTING_YEAR, bush.stems()); }
            cut.takeSick(bush);
            if (school.permanent()) { return cut.build(life(0), 0, cut.left().at(1)); }
            cut.takeWeak(bush);
            int branches = cut.left().from(2);
            int past = cut.left().from(lifeYears);
            int surplus = surplus();
            limit = branches < 2 ? 0 : school.limit().of(branches);
            Optional<Integer> part = school.staged().flatMap(it -> it.part(surplus, bush.renovationWinter(), limit));
            staged = part.isPresent();
            mayGo = part.orElse(limit);
            StageOfLife life = life(Math.max(past, surplus));
            int replaced = takePast(past, Math.max(cut.left().at(1), surplus));
            if (surplus - replaced > mayGo) { limited(); }
            take(Math.min(surplus - replaced, mayGo), Why.CROWDED);
            cut.take(1, cut.left().at(1) - shootsToLeave(), Why.CROWDED);
            return cut.build(life, past - replaced, cut.left().at(1), told(surplus));
        }

        /** Branches above the greatest number of the form. */
        private int surplus() {
            return Math.max(0, cut.left().from(2) - most());
        }

        private int most() { return (int) school.branches().high(); }

        private Optional<StagedRenovation.Part> told(int surplus) {
            int now = surplus - surplus();
            return staged ? school.staged().map(it -> it.told(surplus, bush.renovationWinter(), now))
                    : Optional.empty();
        }

        /** Each branch past its age goes when a shoot can follow it, or when there are too many. */
        private int takePast(int past, int successors) {
            int going = Math.min(Math.min(past, successors), mayGo);
            if (going < Math.min(past, mayGo)) {
                cut.remark(Cut.Remark.NO_SUCCESSOR);
            } else if (mayGo < past) { limited(); }
            return take(going, Why.SPENT);
        }

        private void limited() { if (!staged) { cut.remark(Cut.Remark.LIMITED); } }

        private int take(int number, Why why) {
            int taken = cut.takeOldest(number, 2, why);
            mayGo -= taken;
            return taken;
        }

        /** Young low shoots that may stay: those that fill the frame up. */
        private int shootsToLeave() {
            return Math.max(0, most() - cut.left().from(2));
        }

        private StageOfLife life(int due) {
            if (bush.isBefore(school.buildYears() + 1)) { return StageOfLife.YOUNG; }
            return due > limit ? StageOfLife.NEGLECTED : StageOfLife.BEARING;
        }
    }
}
