package org.oldwood.craft.pruning;

/**
 * The canes that come out of a row or a plant: all that have fruited, dead and diseased ones, then the weak, then new
 * ones above the number that may stand. Where all are cut to the ground, all.
 *
 * <p>Checked against {@code reference/cane-cut.csv}.
 */
final class CaneCut {
    private CaneCut() {}

    /** Canes that may stand: per metre times the metres, to the nearest whole cane; at least 1. */
    static int canes(double keep, String unit, double metres) {
        double canes = unit.equals(CaneSchool.PER_METRE) ? keep * metres : keep;
        return Math.max(1, (int) Math.round(canes));
    }

    static Cut cut(Bush bush, CaneSchool school) {
        if (bush.isBefore(1)) { return Cut.nothing(StageOfLife.FIRST_YEAR, bush.stems()); }
        Cut.Builder cut = new Cut.Builder(bush.stems());
        StageOfLife life = bush.isBefore(2) ? StageOfLife.YOUNG : StageOfLife.BEARING;
        if (school.all()) {
            for (int age = cut.left().oldest(); age >= 1; age--) {
                cut.take(age, cut.left().at(age), Why.FRUITED);
            }
            return cut.build(life, 0, 0);
        }
        if (!bush.stems().isComplete()) { cut.remark(Cut.Remark.NOT_ALL_COUNTED); }
        cut.take(1, bush.sick().at(1), Why.SICK);
        for (int age = cut.left().oldest(); age >= 2; age--) {
            cut.take(age, cut.left().at(age), Why.FRUITED);
        }
        int stay = school.canes(bush);
        int strong = cut.left().at(1) - bush.weak().at(1);
        cut.take(1, strong > 0 ? bush.weak().at(1) : bush.weak().at(1) - 1, Why.WEAK);
        cut.take(1, cut.left().at(1) - stay, Why.CROWDED);
        return cut.build(life, 0, stay);
    }
}
