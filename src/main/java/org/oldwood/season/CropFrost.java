package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongToDoubleFunction;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;

/**
 * Frost against one crop's stages in one season, by the climate's means: each stage from its day to the next, against
 * the temperature at which its harm begins.
 *
 * <p>A stage's day is not sure, and an early spring meets colder nights. So each chance is the mean of three: at the
 * stage's day (weight 2/3), and earlier and later by √3 times its ± (1/6 each), the three points that keep a normal
 * distribution's mean and spread (Gauss-Hermite).
 *
 * @param year the mean last and first frosts here
 * @param stages by stage; empty where no source was found that says what cold the crop stands, or when it comes there
 * @param watchAbove the share of years above which harm is worth watching for, 0 to 1
 */
public record CropFrost(FrostYear year, List<AtStage> stages, double watchAbove) {
    private static final double OUTER = Math.sqrt(3);
    private static final double OUTER_WEIGHT = 1.0 / 6;

    /**
     * One stage's frost.
     *
     * @param harm the temperature at which its harm begins, °C, in the air about the plant
     * @param from the stage's day
     * @param to the day before the next stage of which it is known; after petal fall a number of days
     * @param plusMinusDays how sure both days are
     * @param risk the share of years with such a night in that time, 0 to 1
     */
    public record AtStage(Stage stage, Figure harm, LocalDate from, LocalDate to, int plusMinusDays, double risk) {}

    /**
     * A crop's frost in a season; empty where no climate is known, without stages that lowland Britain's calendar dates
     * in a climate that has frosts.
     */
    public static Optional<CropFrost> of(Crop crop, Season season, Stages stages) {
        return stages.climate().map(climate -> at(climate, crop, season, stages));
    }

    private static CropFrost at(GardenClimate climate, Crop crop, Season season, Stages stages) {
        FrostYear year = new FrostYear(climate, season);
        SeasonMethods methods = climate.methods();
        Function<Stage, StageDate> dates = stage -> stages.date(crop, season, stage);
        List<AtStage> found = new ArrayList<>();
        Map<Stage, Figure> frost = CropStages.of(crop).frost();
        frost.forEach((stage, harm) -> {
            StageDate date = dates.apply(stage);
            if (date.basis() == Basis.CALENDAR && year.last().isPresent()) { return; }
            LocalDate to = stage.compareTo(Stage.PETAL_FALL) >= 0
                    ? date.date().plusDays((long) methods.frost().afterPetalFall().is())
                    : Collections.max(List.of(date.date(), dates.apply(next(stage, frost)).date().minusDays(1)));
            double risk = overThree(date.plusMinusDays(),
                    shift -> year.expected(harm.is(), date.date().plusDays(shift), to.plusDays(shift)));
            found.add(new AtStage(stage, harm, date.date(), to, date.plusMinusDays(), risk));
        });
        return new CropFrost(year, List.copyOf(found), methods.frost().watchAbove().is() / 100);
    }

    /** What a stage stands holds until the next stage of which it is known, at most until petal fall. */
    private static Stage next(Stage stage, Map<Stage, Figure> frost) {
        return Arrays.stream(Stage.values()).filter(each -> each.compareTo(stage) > 0)
                .filter(each -> frost.containsKey(each) || each == Stage.PETAL_FALL).findFirst().orElseThrow();
    }

    /** @param nights those to be expected when everything lies so many days later */
    private static double overThree(int plusMinusDays, LongToDoubleFunction nights) {
        long outer = Math.round(OUTER * plusMinusDays);
        return (1 - 2 * OUTER_WEIGHT) * chance(nights.applyAsDouble(0))
                + OUTER_WEIGHT * chance(nights.applyAsDouble(-outer))
                + OUTER_WEIGHT * chance(nights.applyAsDouble(outer));
    }

    private static double chance(double expectedNights) { return 1 - Math.exp(-expectedNights); }

    /** The stages in flower and just after, the first of them first. */
    public List<AtStage> inFlower() {
        return stages.stream().filter(each -> each.stage.compareTo(Stage.FIRST_FLOWER) >= 0).toList();
    }

    /**
     * The share of years, 0 to 1, in which a night harms flowers or young fruit; empty where what they stand is not
     * known.
     */
    public Optional<Double> bloomRisk() {
        List<AtStage> flower = inFlower();
        return flower.isEmpty() ? Optional.empty()
                : Optional.of(overThree(flower.get(0).plusMinusDays(), shift -> nights(flower, shift)));
    }

    private double nights(List<AtStage> flower, long shift) {
        return flower.stream()
                .mapToDouble(
                        each -> year.expected(each.harm().is(), each.from().plusDays(shift), each.to().plusDays(shift)))
                .reduce(0, Double::sum);
    }

    /**
     * The last day in flower, or just after it, from which on harm is still to be feared in more years than
     * {@code season/methods.json} says is worth watching for; empty where there is none.
     */
    public Optional<LocalDate> lastToWatch() {
        List<AtStage> flower = inFlower();
        double nights = 0;
        for (int i = flower.size() - 1; i >= 0; i--) {
            AtStage each = flower.get(i);
            for (LocalDate day = each.to(); !day.isBefore(each.from()); day = day.minusDays(1)) {
                nights += year.expected(each.harm().is(), day, day);
                if (chance(nights) > watchAbove) { return Optional.of(day); }
            }
        }
        return Optional.empty();
    }
}
