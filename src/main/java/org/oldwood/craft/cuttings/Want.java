package org.oldwood.craft.cuttings;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.oldwood.season.Season;

/**
 * What a grower wants: so many plants that bear, or so many kilograms, by a season, and how sure.
 *
 * @param plants plants that stand where they are to stay and bear; or
 * @param kg kilograms in that season
 * @param sure the chance wanted, above 0 and below 1
 */
public record Want(OptionalInt plants, OptionalDouble kg, Season by, double sure) {
    public Want {
        if (plants.isPresent() == kg.isPresent()) {
            throw new IllegalArgumentException("want either plants or kilograms");
        }
        if (!(sure > 0 && sure < 1)) {
            throw new IllegalArgumentException("the chance wanted must lie between 0 and 1 but is " + sure);
        }
    }

    public static Want plants(int number, Season by, double sure) {
        return new Want(OptionalInt.of(number), OptionalDouble.empty(), by, sure);
    }

    public static Want kilograms(double kg, Season by, double sure) {
        return new Want(OptionalInt.empty(), OptionalDouble.of(kg), by, sure);
    }
}
