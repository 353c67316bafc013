package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Range;
import org.oldwood.crop.Yield;

/**
 * Where a bush will stand in the coming winters, and what it will bear, under one habit of pruning. Each growing season
 * every stem turns a year older and new shoots come. Stems that are left do not die in this reckoning, and as many new
 * shoots come as are given; an unpruned bush makes fewer in truth, for which no figure was found. Where its lesser crop
 * was weighed, that is reckoned with. Last summer's shoots that were not counted are reckoned as many as grow in a
 * year.
 *
 * @param winters one after the other, the coming one first
 */
public record Outlook(List<Winter> winters) {

    /**
     * One winter and the season after it.
     *
     * @param cut what comes out, with the stems before and after
     * @param bearing stems that bear well in the season after
     * @param bearingShare their share of the stems that stay, 0 to 1
     * @param kg crop of the season after, kilograms a plant, or of the whole row; empty without figures
     */
    public record Winter(Cut cut, int bearing, double bearingShare, Optional<Range> kg) {}

    /**
     * What the reckoning rests on.
     *
     * @param school the school whose aims are the measure
     * @param form the form, whose yield figures are taken
     * @param yield the crop's yield figures
     * @param newShoots new stems a year; on a metre for rows
     */
    public record Basis(School school, String form, Optional<Yield> yield, Figure newShoots) {
        double shoots(Bush bush, double figure) {
            return newShoots.unit().endsWith("/m") ? figure * bush.metres() : figure;
        }
    }

    /** The coming {@code seasons} winters of {@code start} under a habit. */
    public static Outlook of(Bush start, Habit habit, Basis basis, int seasons) {
        List<Winter> expected = run(start, habit, basis, seasons, basis.newShoots.is());
        List<Winter> few = run(start, habit, basis, seasons, basis.newShoots.low());
        List<Winter> many = run(start, habit, basis, seasons, basis.newShoots.high());
        List<Winter> all = new ArrayList<>();
        for (int i = 0; i < seasons; i++) {
            Winter winter = expected.get(i);
            Optional<Range> kg = winter.kg;
            if (kg.isPresent()) {
                double low =
                        Math.min(kg.get().low(), few.get(i).kg.orElseThrow().low());
                double high =
                        Math.max(kg.get().high(), many.get(i).kg.orElseThrow().high());
                kg = Optional.of(new Range(low, kg.get().is(), high));
            }
            all.add(new Winter(winter.cut, winter.bearing, winter.bearingShare, kg));
        }
        return new Outlook(List.copyOf(all));
    }

    private static List<Winter> run(Bush start, Habit habit, Basis basis, int seasons, double newShoots) {
        List<Winter> winters = new ArrayList<>();
        int shoots = (int) Math.round(basis.shoots(start, newShoots));
        Bush bush = start.with(start.stems().reckoned(shoots));
        int alone = 0;
        for (int i = 0; i < seasons; i++) {
            Cut cut = habit.cut(bush, i);
            alone += habit.leavesAlone() && !basis.school.isTooYoung(bush) ? 1 : 0;
            winters.add(winter(cut, bush, basis, alone));
            bush = next(bush, cut, shoots, basis.school);
        }
        return winters;
    }

    private static Winter winter(Cut cut, Bush bush, Basis basis, int alone) {
        Stems after = cut.after();
        int bearing = basis.school.bearing(after);
        double share = after.total() == 0 ? 0 : (double) bearing / after.total();
        return new Winter(cut, bearing, share, crop(after, bush, basis, alone));
    }

    /** @param alone winters in a row in which the bush was not pruned, though old enough for it */
    private static Optional<Range> crop(Stems after, Bush bush, Basis basis, int alone) {
        if (basis.yield.isEmpty()) {
            return Optional.empty();
        }
        Yield yield = basis.yield.get();
        int year = bush.seasons().isPresent() ? bush.seasons().getAsInt() + 1 : GROWN;
        Stems target = basis.school.target(bush);
        boolean perMetre = Optional.ofNullable(yield.mature().get(basis.form))
                .map(figure -> figure.unit().equals("kg/m"))
                .orElse(false);
        Range factor = WoodCrop.factor(after, target, yield.wood());
        Range left = yield.unpruned().map(it -> it.share(alone)).orElse(new Range(1, 1, 1));
        return yield.expected(basis.form, year)
                .map(full -> full.times(factor).times(left).times(perMetre ? bush.metres() : 1));
    }

    /** A bush of unknown planting year counts as grown up. */
    private static final int GROWN = 99;

    private static Bush next(Bush bush, Cut cut, int newShoots, School school) {
        OptionalInt seasons =
                bush.seasons().isPresent() ? OptionalInt.of(bush.seasons().getAsInt() + 1) : OptionalInt.empty();
        return new Bush(
                cut.after().aged(newShoots, school.fold()),
                Stems.NONE,
                Stems.NONE,
                seasons,
                cut.nextRenovationWinter(school, bush.renovationWinter()),
                bush.metres());
    }
}
