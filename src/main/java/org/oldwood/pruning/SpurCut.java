package org.oldwood.pruning;

/**
 * The branches that come out of a spur-pruned bush in winter: dead and diseased ones, then those
 * past their age as far as a young low shoot stands ready to follow each, then those above the
 * number of the form. Stems of age 1 in the count are low young shoots, older ones are branches.
 * The spur cut itself is the same on every branch and stands in the school's steps.
 *
 * <p>Checked against {@code reference/spur-cut.csv}.
 */
final class SpurCut {
    private final Bush bush;
    private final SpurSchool school;
    private final Cut.Builder cut;
    private final int lifeYears;
    private int mayGo;

    private SpurCut(Bush bush, SpurSchool school) {
        this.bush = bush;
        this.school = school;
        this.cut = new Cut.Builder(bush.stems());
        this.lifeYears =
                school.branchLife().map(age -> (int) age.is()).orElse(Stems.OLDEST_CLASS + 1);
    }

    static Cut cut(Bush bush, SpurSchool school) {
        return new SpurCut(bush, school).decide();
    }

    private Cut decide() {
        if (bush.isBefore(1)) {
            return Cut.nothing(StageOfLife.FIRST_YEAR, bush.stems());
        }
        for (int age = bush.sick().oldest(); age >= 1; age--) {
            cut.take(age, bush.sick().at(age), Why.SICK);
        }
        int branches = cut.left().from(2);
        int past = cut.left().from(lifeYears);
        mayGo = branches < 2 ? 0 : school.limit().of(branches);
        int surplus = Math.max(0, branches - (int) school.branches().high());
        StageOfLife life = life(Math.max(past, surplus), mayGo);
        int replaced = takePast(past, Math.max(cut.left().at(1), surplus));
        takeSurplus(surplus - replaced);
        return cut.build(life, past - replaced, cut.left().at(1));
    }

    /** Each branch past its age goes when a shoot can follow it, or when there are too many. */
    private int takePast(int past, int successors) {
        int going = Math.min(Math.min(past, successors), mayGo);
        if (going < Math.min(past, mayGo)) {
            cut.remark(Cut.Remark.NO_SUCCESSOR);
        } else if (mayGo < past) {
            cut.remark(Cut.Remark.LIMITED);
        }
        return take(going, Why.SPENT);
    }

    private void takeSurplus(int surplus) {
        if (surplus > mayGo) {
            cut.remark(Cut.Remark.LIMITED);
        }
        take(Math.min(surplus, mayGo), Why.CROWDED);
    }

    private int take(int number, Why why) {
        int taken = 0;
        for (int age = cut.left().oldest(); age >= 2 && taken < number; age--) {
            taken += cut.take(age, number - taken, why);
        }
        mayGo -= taken;
        return taken;
    }

    private StageOfLife life(int due, int limit) {
        if (bush.isBefore(school.buildYears() + 1)) {
            return StageOfLife.YOUNG;
        }
        return due > limit ? StageOfLife.NEGLECTED : StageOfLife.BEARING;
    }
}
