package org.oldwood.craft.cuttings;

import java.util.Optional;
import org.oldwood.crop.Crop;

/**
 * What is chosen for a lot: how it is raised, what is cut at planting, what the plants then bear.
 *
 * @param crop what a plant bears in each season after planting
 */
public record Course(Method method, PlantingOut.Cut cut, CropCourse crop) {

    /**
     * The course of a crop; empty where the crop, the method, the cut or its yields are not known.
     *
     * @param method the method's id; empty for the default of the form
     * @param cut the cut's id; empty for the default of the form
     */
    public static Optional<Course> of(Crop crop, String form, Optional<String> method, Optional<String> cut) {
        Optional<Propagation> all = Propagation.of(crop);
        Optional<Method> raised =
                all.flatMap(known -> method.isPresent() ? known.method(method.get(), form) : known.methodFor(form));
        Optional<PlantingOut.Cut> planted = all.flatMap(known -> known.plantingOut().cutsFor(form).stream()
                .filter(it -> cut.isEmpty() || it.id().equals(cut.get()))
                .findFirst());
        Optional<CropCourse> yields = CropCourse.of(crop, form);
        return raised.isPresent() && planted.isPresent() && yields.isPresent()
                ? Optional.of(new Course(raised.get(), planted.get(), yields.get()))
                : Optional.empty();
    }

    /** The share of a full crop in a season after planting, the first being 1. */
    public double share(int season) {
        return season < 1 ? 0 : crop.share(season + ahead());
    }

    /** The first season after planting that bears. */
    public int firstPick() {
        return Math.max(1, crop.firstPick() - ahead());
    }

    /** The first season after planting that bears a full crop. */
    public int fullCrop() {
        return Math.max(1, crop.fullCrop() - ahead());
    }

    private int ahead() {
        return (int) Math.round(cut.seasonsAhead().is());
    }
}
