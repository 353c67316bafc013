package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stems;

/**
 * The winter cut of a stool by the age of its stems, in the order of {@code docs/method-pruning.md}: sick stems; weak
 * and damaged ones; spent ones, oldest first; a share of the oldest, where the school takes one; then each age is
 * thinned to its number, but not below the printed total.
 *
 * <p>Sick and weak stems count towards no limit. A small change of the bush is a small change of the list: one sound
 * stem more never leaves fewer stems, and takes the place of one younger stem at most, which had stood in for it.
 *
 * <p>Sources are those of the school. The bounds for neglected bushes and the filling up with new shoots are our own
 * reading of them. Checked against {@code reference/stool-renewal.csv}.
 */
final class StoolRenewal {
    private final Bush bush;
    private final RenewalSchool school;
    private final Optional<Keep> keep;
    private final Cut.Builder cut;
    private final int spentFrom;
    private int living;
    private int spent;
    private int bearing;
    private int mayGo;
    private int cameUp;
    private int due;
    private boolean behind;
    private boolean staged;

    private StoolRenewal(Bush bush, RenewalSchool school) {
        this.bush = bush;
        this.school = school;
        this.keep = school.keep(bush);
        this.cut = new Cut.Builder(bush.stems());
        // A class that is open below the spent age holds stems of several ages.
        this.spentFrom = bush.stems().isOpen() ? Math.min(school.spent(), bush.stems().oldest()) : school.spent();
    }

    static Cut cut(Bush bush, RenewalSchool school) { return new StoolRenewal(bush, school).decide(); }

    private Cut decide() {
        if (bush.isBefore(1)) { return Cut.nothing(StageOfLife.PLANTING_YEAR, bush.stems()); }
        cut.takeSick(bush);
        if (school.cutsDown()) { return cutDown(); }
        cut.takeWeak(bush);
        if (school.isTooYoung(bush)) {
            cut.remark(Cut.Remark.TOO_YOUNG);
            return cut.build(StageOfLife.YOUNG, 0, cut.left().at(1));
        }
        if (!bush.stems().isComplete()) { cut.remark(Cut.Remark.NOT_ALL_COUNTED); }
        weigh();
        int heldBack = spent - takeSpent();
        takeShares();
        keep.ifPresent(this::thinOlder);
        int young = keep.map(it -> thinYoung(it, heldBack)).orElse(cut.left().at(1));
        return cut.build(life(heldBack), heldBack, young, told(heldBack));
    }

    private Optional<StagedRenovation.Part> told(int heldBack) {
        int now = due - heldBack - surplus(cut.left().from(2) - heldBack);
        return staged ? school.staged().map(it -> it.told(due, bush.renovationWinter(), now)) : Optional.empty();
    }

    private Cut cutDown() {
        cut.takeOldest(cut.left().total(), 1, Why.CUT_DOWN);
        cut.remark(Cut.Remark.HARD);
        return cut.build(StageOfLife.NEGLECTED, 0, 0);
    }

    /** Tells spent from bearing wood, and what may go of both. Shoots that will be thinned out count for nothing. */
    private void weigh() {
        Stems stems = cut.left();
        spent = Math.max(0, stems.from(spentFrom) - stillGood());
        if (spent > 0 && spentFrom < school.spent()) { cut.remark(Cut.Remark.OPEN_CLASS); }
        int older = stems.from(2);
        bearing = older - spent;
        due = spent + surplus(bearing);
        int followers = keep.map(it -> Math.min(stems.at(1), youngToKeep(it, inParts() ? older : bearing)))
                .orElse(stems.at(1));
        living = older + followers;
        int usual = limit();
        Optional<Integer> part = school.staged().flatMap(it -> it.part(due, bush.renovationWinter(), usual));
        staged = part.isPresent();
        int last = school.bearsFrom() > 1 || stems.at(1) == 0 ? 1 : 0;
        mayGo = Math.max(0, Math.min(school.hard() ? older : part.orElse(usual), older - last));
        boolean openAtTwo = stems.isOpen() && stems.oldest() <= 2;
        boolean known = stems.knows(1) && stems.knows(2) && !openAtTwo;
        cameUp = known ? followers + stems.at(2) : 2 * older;
    }

    /**
     * The school's limit of a season. A bush with more spent and surplus wood than that has fallen behind, and the
     * share that print allows for bringing it back rules where it is more.
     */
    private int limit() {
        int usual = school.limit().of(living);
        int bringingBack = school.renovation().map(it -> it.limit(living)).orElse(0);
        behind = due > usual && bringingBack > usual;
        return behind ? bringingBack : usual;
    }

    /** Stems of an open class that are not spent yet, as far as the school has room for them. */
    private int stillGood() {
        if (spentFrom >= school.spent()) { return 0; }
        return keep.map(it -> it.between(spentFrom, school.spent() - 1)).orElse(Stems.OLDEST_CLASS * 1000);
    }

    private int takeSpent() {
        int going = Math.min(Math.min(spent, partOfSpent()), mayGo);
        if (going < spent && !staged) {
            boolean last = mayGo == 0 || (bearing == 0 && going == mayGo);
            cut.remark(last ? Cut.Remark.LAST_BEARING_WOOD : Cut.Remark.LIMITED);
        }
        cut.takeOldest(going, spentFrom, Why.SPENT);
        mayGo -= going;
        return going;
    }

    /**
     * This winter's part of the spent wood. Once a bush is being brought back over some winters, these go on in equal
     * parts.
     */
    private int partOfSpent() {
        if (school.hard() || staged || school.renovation().isEmpty()) { return spent; }
        Renovation renovation = school.renovation().get();
        int part = renovation.part(spent, living, bush.renovationWinter());
        boolean underWay = bush.renovationWinter() > 1 && renovation.winters().isPresent();
        return underWay || spent > bearing ? Math.max(part, underWay ? 0 : bearing) : spent;
    }

    private void takeShares() {
        for (Figure share : school.shares()) {
            int of = share.unit().equals(RenewalSchool.OF_BUSH) ? cut.left().total() : cut.left().from(2);
            int from = cut.left().isOpen() ? Math.min(school.sharesFrom(), cut.left().oldest()) : school.sharesFrom();
            int wanted = Math.min((int) Math.round(share.is() * of), cut.left().from(from));
            int gone = cut.takeOldest(bearingToGo(wanted, (cameUp + 1) / 2), from, Why.OLDEST);
            mayGo -= gone;
            cameUp -= gone;
        }
    }

    /**
     * As many of {@code wanted} bearing stems as may go: within the limit, and no more than young ones came up. A share
     * that is taken whatever stands keeps to the young ones of one season, by the mean of the last two; thinning, which
     * ends at a number, to those of both, or to the bearing stems above all that the way aims at.
     */
    private int bearingToGo(int wanted, int pace) {
        int going = Math.max(0, Math.min(wanted, Math.min(mayGo, pace)));
        if (going < wanted && !staged) {
            cut.remark(pace < mayGo ? Cut.Remark.NO_MORE_THAN_CAME_UP : Cut.Remark.LIMITED);
        }
        return going;
    }

    /** Thins each older age to its number; bearing stems stay at least as many as are spent. */
    private void thinOlder(Keep target) {
        int wanted = Math.min(surplus(cut.left().from(2)), Math.max(0, bearing - spent));
        int crowded = bearing - target.between(1, target.stems().size());
        int going = bearingToGo(wanted, Math.max(cameUp, crowded));
        for (int age = oldestToThin(target); age >= 2; age--) {
            going -= cut.take(age, Math.min(cut.left().at(age) - target.of(age), going), Why.CROWDED);
        }
    }

    /** Older stems that are not spent, above the number of their age and not needed for the printed total. */
    private int surplus(int ofBearing) {
        if (keep.isEmpty()) { return 0; }
        Keep target = keep.get();
        int all = 0;
        for (int age = 2; age <= oldestToThin(target); age++) {
            all += Math.max(0, cut.left().at(age) - target.of(age));
        }
        // New shoots that were not counted are taken as many as the school keeps.
        int young = cut.left().knows(1) ? Math.min(cut.left().at(1), target.of(1)) : target.of(1);
        return Math.min(all, Math.max(0, young + ofBearing - target.totalLeast()));
    }

    private int oldestToThin(Keep target) { return Math.min(spentFrom - 1, target.stems().size()); }

    /**
     * Thins last summer's shoots; returns how many are to stay. Spent stems that wait for their part of some winters
     * still make up the total, and so does the last older stem; those that a limit keeps back for longer do not.
     */
    private int thinYoung(Keep target, int heldBack) {
        int older = cut.left().from(2);
        int young = youngToKeep(target, inParts() ? older : Math.max(Math.min(1, older), older - heldBack));
        if (cut.left().at(1) > target.of(1) && young > target.of(1)) { cut.remark(Cut.Remark.FILLED_UP); }
        cut.take(1, cut.left().at(1) - young, Why.CROWDED);
        return young;
    }

    private boolean inParts() {
        return school.renovation().map(it -> school.limit().share() > it.share().orElse(0)).orElse(false);
    }

    /** A bush that is short of bearing stems keeps more new ones, up to its printed total. */
    private static int youngToKeep(Keep target, int ofBearing) {
        return Math.max(target.of(1), target.totalLeast() - ofBearing);
    }

    private StageOfLife life(int heldBack) {
        boolean manySpent = spent > bearing && spent >= school.renovation().map(Renovation::fromSpent).orElse(1);
        boolean underWay = bush.renovationWinter() > 1 && heldBack > 0;
        boolean young = bush.isBefore(Math.max(school.buildUp().size() + 1, school.firstPruning()));
        if (behind || staged || (!young && (manySpent || underWay))) { return StageOfLife.NEGLECTED; }
        return young ? StageOfLife.YOUNG : StageOfLife.BEARING;
    }
}
