package org.oldwood.cli.cuttings;

import java.util.Optional;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Setting;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.crop.Crop;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.GardenState;

/**
 * What a forecast or a plan is made from, with a garden or without.
 *
 * @param garden the garden's lots and bushes, where there is one
 */
record CuttingsGround(Crop crop, Course course, Survival survival, Setting setting, Optional<Own> garden) {
    record Own(GardenState state, LotBook book) {}
}
