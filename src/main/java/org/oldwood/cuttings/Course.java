package org.oldwood.cuttings;

/**
 * What is chosen for a lot: how it is raised, what is cut at planting, what the plants then bear.
 *
 * @param method how it is raised
 * @param cut what is cut at planting
 * @param crop what a plant bears in each season after planting
 * @param seasonsLater seasons that the lifting is put off; usually 0
 */
public record Course(Method method, PlantingOut.Cut cut, CropCourse crop, int seasonsLater) {

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
