package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stems;
import org.oldwood.store.Fields;

/**
 * Cane work: canes grow one summer (primocanes), fruit the next (floricanes), and go. In the count, age 1 are canes of
 * last summer, older ones have fruited.
 *
 * @param keep new canes that stay, on a metre of row or on a plant; empty where all go
 * @param all true where every cane goes to the ground each winter
 */
public record CaneSchool(@Key(Key.HERE) Teaching teaching, Optional<Figure> keep,
        boolean all) implements School, Checked {
    static final String PER_METRE = "canes/m";
    static final String PER_PLANT = "canes/plant";

    @Override
    public void check(Fields fields) {
        fields.tellIf(keep.isPresent() == all, "keep", "canes-unclear");
        fields.tellIf(!keep.map(Figure::unit).orElse(PER_METRE).startsWith("canes/"), "keep", "canes-unit");
    }

    @Override
    public Cut winter(Bush bush) { return CaneCut.cut(bush, this); }

    /** New canes to keep on this plant or row. */
    int canes(Bush bush) {
        return keep.map(it -> CaneCut.canes(it.is(), it.unit(), bush.metres())).orElse(0);
    }

    @Override
    public Stems target(Bush bush) { return Stems.of(canes(bush)); }

    @Override
    public int bearing(Stems stems) { return all ? stems.total() : stems.at(1); }

    @Override
    public int fold() { return 2; }
}
