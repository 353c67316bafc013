package org.oldwood.craft.feeding;

/**
 * Need against supply, nutrient by nutrient. It always closes: need + surplus = given + due, and neither due nor
 * surplus is ever negative.
 *
 * @param need what is needed
 * @param given what was given already and counts
 * @param due what is still to give
 * @param surplus what was given beyond the need
 */
public record Balance(Nutrients need, Nutrients given, Nutrients due, Nutrients surplus) {
    public static Balance of(Nutrients need, Nutrients given) {
        return new Balance(
                need, given, need.minus(given).atLeastZero(), given.minus(need).atLeastZero());
    }
}
