package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Range;
import org.oldwood.crop.Stems;
import org.oldwood.crop.UnprunedBush;
import org.oldwood.crop.Yield;

/**
 * Where a bush will stand in the coming winters, and what it will bear, under one habit of pruning. Each growing season
 * every stem turns a year older, old ones die and new shoots come, more after a hard cut and fewer on a crowded bush,
 * where the crop's {@link Regrowth} says so. What an unpruned bush was weighed to bear is reckoned with. Last summer's
 * shoots that were not counted are reckoned as many as grow in a year.
 *
 * @param winters one after the other, the coming one first
 */
public record Outlook(List<Winter> winters) {

    /**
     * One winter and the season after it.
     *
     * @param bearing stems that bear well in the season after
     * @param bearingShare their share of the stems that stay, 0 to 1
     * @param share crop of the season after, of what a bush in order bears at that age; empty without figures
     * @param kg the same in kilograms a plant, or of the whole row
     * @param berry weight of a berry and speed of picking, of those of a pruned bush; empty where none were weighed
     */
    public record Winter(Cut cut, int bearing, double bearingShare, Optional<Range> share, Optional<Range> kg,
            Optional<UnprunedBush.Berry> berry) {}

    /**
     * What the reckoning rests on.
     *
     * @param school the way that is followed, or by which a bush that is cut down is built anew
     * @param form the form, whose default way is the bush in order
     * @param newShoots new stems a year of a bush that is not cut; on a metre for rows
     */
    public record Basis(School school, FormPruning form, Optional<Yield> yield, Figure newShoots) {
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
            all.add(new Winter(winter.cut, winter.bearing, winter.bearingShare,
                    wider(winter.share, few.get(i).share, many.get(i).share),
                    wider(winter.kg, few.get(i).kg, many.get(i).kg), winter.berry));
        }
        return new Outlook(List.copyOf(all));
    }

    private static Optional<Range> wider(Optional<Range> expected, Optional<Range> few, Optional<Range> many) {
        return expected.map(it -> new Range(Math.min(it.low(), few.orElse(it).low()), it.is(),
                Math.max(it.high(), many.orElse(it).high())));
    }

    private static List<Winter> run(Bush start, Habit habit, Basis basis, int seasons, double newShoots) {
        List<Winter> winters = new ArrayList<>();
        int shoots = (int) Math.round(basis.shoots(start, newShoots));
        Bush bush = start.with(start.stems().reckoned(shoots));
        int alone = 0;
        for (int i = 0; i < seasons; i++) {
            Cut cut = habit.cut(bush, i);
            alone += habit == Habit.NONE && !basis.school.isTooYoung(bush) ? 1 : 0;
            winters.add(winter(cut, bush, basis, alone));
            bush = next(bush, cut, basis.shoots(start, newShoots), basis);
        }
        return winters;
    }

    private static Winter winter(Cut cut, Bush bush, Basis basis, int alone) {
        Stems after = sound(cut, bush);
        int bearing = basis.school.bearing(after);
        double share = after.total() == 0 ? 0 : (double) bearing / after.total();
        Optional<Range> borne = basis.yield.map(it -> share(after, bush, basis, it, alone));
        Optional<Range> kg = borne.flatMap(it -> kg(it, bush, basis));
        Optional<UnprunedBush.Berry> berry = basis.yield.flatMap(Yield::unpruned).flatMap(it -> it.berry(alone));
        return new Winter(cut, bearing, share, kg.isPresent() ? borne.map(WoodCrop::banded) : Optional.empty(), kg,
                berry);
    }

    /**
     * Share of the crop of a bush in order. What was weighed on bushes left alone holds their crowding too, so that a
     * crowded one is not credited with it besides.
     *
     * @param alone winters in a row in which the bush was not pruned, though old enough for it
     */
    private static Range share(Stems after, Bush bush, Basis basis, Yield yield, int alone) {
        if (after.total() == 0 && basis.form.craft().equals("renewal")) { return new Range(0, 0, 0); }
        String form = basis.form.form();
        Range wood = WoodCrop.share(after, basis.form.inOrder(bush), bush.seasons().orElse(GROWN), form, yield);
        boolean weighed = yield.unpruned().filter(it -> it.crop().isPresent()).isPresent();
        return weighed && alone > 0
                ? wood.times(1 / Math.max(1, wood.is())).times(yield.unpruned().orElseThrow().share(alone))
                : wood;
    }

    private static Optional<Range> kg(Range share, Bush bush, Basis basis) {
        Yield yield = basis.yield.orElseThrow();
        String form = basis.form.form();
        int year = bush.seasons().orElse(GROWN) + 1;
        boolean perMetre = Optional.ofNullable(yield.mature().get(form)).map(Figure::unit).filter("kg/m"::equals)
                .isPresent();
        return yield.expected(form, year)
                .map(full -> WoodCrop.banded(full.times(share).times(perMetre ? bush.metres() : 1)));
    }

    /**
     * What is left by a cut, less the dead and diseased stems that it leaves: they bear nothing, and are gone in a
     * year.
     */
    private static Stems sound(Cut cut, Bush bush) {
        Stems sound = cut.after();
        for (int age = 1; age <= sound.oldest(); age++) {
            int taken = bush.stems().at(age) - cut.after().at(age);
            sound = sound.without(age, Math.min(sound.at(age), Math.max(0, bush.sick().at(age) - taken)));
        }
        return sound;
    }

    /** A bush of unknown planting year counts as grown up. */
    private static final int GROWN = 99;

    private static Bush next(Bush bush, Cut cut, double usualShoots, Basis basis) {
        Optional<Regrowth> regrowth = basis.form.regrowth();
        int room = basis.form.inOrder(bush).total();
        int shoots = regrowth.map(it -> it.shoots(usualShoots, cut, room)).orElse((int) Math.round(usualShoots));
        Stems left = sound(cut, bush);
        boolean canes = basis.form.craft().equals("canes"); // a fruited cane dies
        Stems living = canes ? Stems.of(left.at(1)) : regrowth.map(it -> it.living(left)).orElse(left);
        OptionalInt seasons = bush.seasons().stream().map(completed -> completed + 1).findFirst();
        return new Bush(living.aged(shoots, Math.max(basis.school.fold(), basis.form.school().fold())), Stems.NONE,
                Stems.NONE, seasons, cut.nextRenovationWinter(basis.school, bush.renovationWinter()), bush.metres());
    }
}
