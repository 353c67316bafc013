package org.oldwood.craft.cuttings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;
import org.oldwood.craft.cuttings.survival.Kilograms;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Spread;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.craft.cuttings.survival.SurvivalChain;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;

/**
 * What will become of a lot: its days, how many plants, how much fruit.
 *
 * @param position how far it had come when that was counted
 * @param rooted how many will have rooted; fixed once that was counted
 * @param plants how many will stand where they are to stay
 * @param kg one season's full crop of them; its tenths are worked out when asked for
 */
public record Forecast(Timeline line, int alive, Position position, Spread rooted, Spread plants, Kilograms kg,
        Course course) {

    /** The forecast of a lot, by the survival of its crop and method. */
    public static Forecast of(LotCounts lot, Course course, Survival survival, Setting setting) {
        Timeline line = Timeline.of(lot, course, setting);
        Position position = Position.of(lot, line);
        Spread plants = survival.from(position.phase(), position.fraction()).from(lot.alive());
        return new Forecast(line, lot.alive(), position, rooted(lot, survival, position), plants,
                new Kilograms(plants, new PlantYield(course.perPlant())), course);
    }

    private static Spread rooted(LotCounts lot, Survival survival, Position position) {
        SurvivalChain rest = new SurvivalChain(
                position.phase() == Phase.ROOTING ? List.of(survival.rate(Phase.ROOTING).late(position.fraction()))
                        : List.of());
        return rest.from(lot.alive());
    }

    /** The full crop of all plants, in the first season that bears it. */
    public SeasonCrop fullCrop() {
        return new SeasonCrop(line.fullCrop(), 1, kg.mean(), kg.quantile(0.1), kg.quantile(0.5), kg.quantile(0.9));
    }

    /** The crop of a season: the full crop's figures times that season's share. */
    private SeasonCrop crop(Season season, SeasonCrop full) {
        double share = course.share(line.seasonInPlace(season));
        return new SeasonCrop(season, share, full.expectedKg() * share, full.lowKg() * share, full.middleKg() * share,
                full.highKg() * share);
    }

    /** The expected crop of a season alone, kg, without its tenths. */
    public double expectedKg(Season season) {
        return kg.mean() * course.share(line.seasonInPlace(season));
    }

    /** The crop of each season from the first in place to the first full one. */
    public List<SeasonCrop> crops() {
        SeasonCrop full = fullCrop();
        return Stream
                .iterate(line.inPlace(), season -> season.compareTo(line.fullCrop()) <= 0, season -> season.plus(1))
                .map(season -> crop(season, full)).toList();
    }

    /**
     * What a lot is expected to bear in one season.
     *
     * @param share of a full crop, 0 to 1
     * @param expectedKg kg, by the default yield
     * @param lowKg kg; one lot in ten bears less
     * @param middleKg kg; half bear less
     * @param highKg kg; one lot in ten bears more
     */
    public record SeasonCrop(Season season, double share, double expectedKg, double lowKg, double middleKg,
            double highKg) {}

    /** How far a lot has come: the phase it is in, and the fraction of that phase that is over. */
    public record Position(Phase phase, double fraction) {

        /** Where a lot stood when it was last counted. */
        static Position of(LotCounts lot, Timeline line) {
            LocalDate day = lot.countedOn();
            if (lot.plantedOutOn().isPresent()) {
                LocalDate end = line.growth().stages().date(line.inPlace(), Stage.LEAF_FALL_BEGINS).date();
                return new Position(Phase.PLANTING_OUT, fraction(lot.plantedOutOn().get(), day, end));
            }
            if (lot.liftedOn().isPresent()) { return new Position(Phase.PLANTING_OUT, 0); }
            if (day.isBefore(line.rooted().date())) {
                return new Position(Phase.ROOTING, fraction(line.tells().date(), day, line.rooted().date()));
            }
            return new Position(Phase.NURSERY, fraction(line.rooted().date(), day, line.liftFrom().date()));
        }

        private static double fraction(LocalDate start, LocalDate day, LocalDate end) {
            double whole = ChronoUnit.DAYS.between(start, end);
            double over = ChronoUnit.DAYS.between(start, day);
            return whole <= 0 ? (over >= 0 ? 1 : 0) : Math.max(0, Math.min(1, over / whole));
        }
    }
}
