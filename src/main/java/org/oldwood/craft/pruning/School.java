package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Stems;

/**
 * One published way of pruning a crop in a form. Schools differ in how old wood may grow, how many stems stay and how
 * much may go in a year; they stand side by side and the grower chooses.
 */
public sealed interface School permits RenewalSchool, SpurSchool, CaneSchool {
    /** Its name, sources and work in words. */
    Teaching teaching();

    /** What comes out of this bush in the winter. */
    Cut winter(Bush bush);

    /** The structure that a plant of that age is meant to have after the winter's pruning. */
    Stems target(Bush bush);

    /** The age from which all stems are alike to this school; older ones need no class. */
    int fold();

    /** How many of these stems bear well in the coming season. */
    int bearing(Stems stems);

    /** How a plant is brought back that is too crowded for the limit of a season, if told. */
    default Optional<StagedRenovation> staged() {
        return renovation().flatMap(Renovation::staged);
    }

    /** How a neglected plant is brought back, if told. */
    default Optional<Renovation> renovation() {
        return Optional.empty();
    }

    /** True where sound wood is not cut yet, as the plant is too young. */
    default boolean isTooYoung(Bush bush) {
        return bush.isBefore(1);
    }

    default String id() { return teaching().id(); }
}
