package org.oldwood.craft.cuttings;

import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;

/**
 * What is chosen for a lot: how it is raised, what is cut at planting, what the plants then bear.
 *
 * @param bears the share of a full crop in each season after planting
 * @param perPlant the full crop of one plant, kg
 */
public record Course(Method method, PlantingOut.Cut cut, Yield.Series bears, Range perPlant) {

    /**
     * The course of a crop; empty where the crop, the method, the cut or its yields are not known.
     *
     * @param method the method's id; empty for the default of the form
     * @param cut the cut's id; empty for the default of the form
     */
    public static Optional<Course> of(Crop crop, String form, Optional<String> method, Optional<String> cut) {
        Optional<Propagation> all = Propagation.of(crop);
        Optional<Method> raised = all
                .flatMap(known -> method.isPresent() ? known.method(method.get(), form) : known.methodFor(form));
        Optional<PlantingOut.Cut> planted = all.flatMap(known -> known.plantingOut().cutsFor(form).stream()
                .filter(it -> cut.isEmpty() || it.id().equals(cut.get())).findFirst());
        return raised.isPresent() && planted.isPresent() ? of(raised.get(), planted.get(), crop, form)
                : Optional.empty();
    }

    static Optional<Course> of(Method method, PlantingOut.Cut cut, Crop crop, String form) {
        return Yield.read(crop).flatMap(yield -> yield.series(form).flatMap(
                bears -> perPlant(crop, yield, form).map(perPlant -> new Course(method, cut, bears, perPlant))));
    }

    /** A yield per metre of row is shared out by the distance of the plants. */
    private static Optional<Range> perPlant(Crop crop, Yield yield, String form) {
        return Optional.ofNullable(yield.mature().get(form))
                .map(figure -> Range.of(figure).times(figure.unit().equals("kg/m") ? crop.inRowM(form) : 1));
    }

    /** The share of a full crop in a season after planting, the first being 1. */
    public double share(int season) {
        return season < 1 ? 0 : bears.share(season + ahead());
    }

    /** The first season after planting that bears. */
    public int firstPick() {
        return first(season -> bears.share(season) > 0);
    }

    /** The first season after planting that bears as much as the last of the series. */
    public int fullCrop() {
        double full = bears.share(bears.percent().size());
        return first(season -> bears.share(season) >= full);
    }

    private int first(IntPredicate season) {
        int last = bears.percent().size();
        return Math.max(1, IntStream.range(1, last).filter(season).findFirst().orElse(last) - ahead());
    }

    private int ahead() { return (int) Math.round(cut.seasonsAhead().is()); }
}
