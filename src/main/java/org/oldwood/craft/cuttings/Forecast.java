package org.oldwood.craft.cuttings;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.craft.cuttings.survival.Kilograms;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Spread;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.cuttings.survival.SurvivalChain;
import org.oldwood.season.Season;

/**
 * What will become of a lot: its days, how many plants, how much fruit.
 *
 * @param line its days
 * @param alive the last known number alive
 * @param position how far it had come when that was counted
 * @param rooted how many will have rooted; fixed once that was counted
 * @param plants how many will stand where they are to stay
 * @param kg one season's full crop of them; its tenths are worked out when asked for
 */
public record Forecast(
        Timeline line, int alive, LotPosition position, Spread rooted, Spread plants, Kilograms kg, Course course) {

    /** The forecast of a lot, by the survival of its crop and method. */
    public static Forecast of(LotCounts lot, Course course, Survival survival, Setting setting) {
        Timeline line = Timeline.of(lot, course, setting);
        LotPosition position = LotPosition.of(lot, line);
        Spread plants = survival.from(position.phase(), position.fraction()).from(lot.alive());
        return new Forecast(
                line,
                lot.alive(),
                position,
                rooted(lot, survival, position),
                plants,
                new Kilograms(plants, new PlantYield(course.crop().perPlant())),
                course);
    }

    private static Spread rooted(LotCounts lot, Survival survival, LotPosition position) {
        SurvivalChain rest = new SurvivalChain(
                position.phase() == Phase.ROOTING
                        ? List.of(survival.rate(Phase.ROOTING).late(position.fraction()))
                        : List.of());
        return rest.from(lot.alive());
    }

    /** The full crop of all plants, in the first season that bears it. */
    public SeasonCrop fullCrop() {
        return new SeasonCrop(line.fullCrop(), 1, kg.mean(), kg.quantile(0.1), kg.quantile(0.5), kg.quantile(0.9));
    }

    /** The crop of a season: the full crop's figures times that season's share. */
    public SeasonCrop crop(Season season) {
        return crop(season, fullCrop());
    }

    private SeasonCrop crop(Season season, SeasonCrop full) {
        double share = course.share(line.seasonInPlace(season));
        return new SeasonCrop(
                season,
                share,
                full.expectedKg() * share,
                full.lowKg() * share,
                full.middleKg() * share,
                full.highKg() * share);
    }

    /** The expected crop of a season alone, kg, without its tenths. */
    public double expectedKg(Season season) {
        return kg.mean() * course.share(line.seasonInPlace(season));
    }

    /** The crop of each season from the first in place to the first full one. */
    public List<SeasonCrop> crops() {
        SeasonCrop full = fullCrop();
        List<SeasonCrop> crops = new ArrayList<>();
        for (Season season = line.inPlace(); season.compareTo(line.fullCrop()) <= 0; season = season.plus(1)) {
            crops.add(crop(season, full));
        }
        return List.copyOf(crops);
    }
}
