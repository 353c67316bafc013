package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stems;
import org.oldwood.store.Fields;

/**
 * Cane work: canes grow one summer (primocanes), fruit the next (floricanes), and go. In the count, age 1 are canes of
 * last summer, older ones have fruited. All that have fruited come out, dead and diseased ones, then the weak, then new
 * ones above the number that may stand; where all are cut to the ground, all. Checked against
 * {@code reference/cane-cut.csv}.
 *
 * @param keep new canes that stay, on a metre of row or on a plant; empty where all go
 * @param all true where every cane goes to the ground each winter
 */
public record CaneSchool(@Key(Key.HERE) Teaching teaching, Optional<Figure> keep,
        boolean all) implements School, Checked {
    private static final String PER_METRE = "canes/m";

    @Override
    public void check(Fields fields) {
        fields.tellIf(keep.isPresent() == all, "keep", "canes-unclear");
        fields.tellIf(!keep.map(Figure::unit).orElse(PER_METRE).startsWith("canes/"), "keep", "canes-unit");
    }

    @Override
    public Cut winter(Bush bush) {
        if (bush.isBefore(1)) { return Cut.nothing(StageOfLife.PLANTING_YEAR, bush.stems()); }
        Cut.Builder cut = new Cut.Builder(bush.stems());
        StageOfLife life = bush.isBefore(2) ? StageOfLife.YOUNG : StageOfLife.BEARING;
        if (all) {
            cut.takeOldest(cut.left().total(), 1, Why.FRUITED);
            return cut.build(life, 0, 0);
        }
        if (!bush.stems().isComplete()) { cut.remark(Cut.Remark.NOT_ALL_COUNTED); }
        cut.take(1, bush.sick().at(1), Why.SICK);
        cut.takeOldest(cut.left().from(2), 2, Why.FRUITED);
        int stay = canes(bush);
        int strong = cut.left().at(1) - bush.weak().at(1);
        cut.take(1, strong > 0 ? bush.weak().at(1) : bush.weak().at(1) - 1, Why.WEAK);
        cut.take(1, cut.left().at(1) - stay, Why.CROWDED);
        return cut.build(life, 0, stay);
    }

    /** Canes that may stand: per metre times the metres, to the nearest whole cane; at least 1. */
    static int canes(double keep, String unit, double metres) {
        return Math.max(1, (int) Math.round(unit.equals(PER_METRE) ? keep * metres : keep));
    }

    int canes(Bush bush) { return keep.map(it -> canes(it.is(), it.unit(), bush.metres())).orElse(0); }

    @Override
    public Stems target(Bush bush) { return Stems.of(canes(bush)); }

    @Override
    public int bearing(Stems stems) { return all ? stems.total() : stems.at(1); }

    @Override
    public int fold() { return 2; }
}
