package org.oldwood.craft.pruning;

import java.util.Optional;
import org.oldwood.crop.Figure;

/**
 * The winter cut of a stool by the age of its stems.
 *
 * <p>In this order: dead and diseased stems; weak, damaged and low ones; spent ones, oldest first; schools that take a
 * share of the oldest take it; then each age is thinned to its number, but not below the printed total. The first two
 * count towards no limit. Three bounds hold for the other older wood (2 years and more): the school's limit of a
 * season; where more wood is spent than bears, a part of it each winter, but never less than the bearing stems that
 * stay; and the last older stem stays. A bush too crowded for the limit of a season is brought back in the parts of a
 * {@link StagedRenovation}, where its school has one. More old wood therefore never means fewer old stems cut.
 *
 * <p>Sources are those of the school. The bounds for neglected bushes and the filling up with new shoots are our own
 * reading of them; see {@code docs/method-pruning.md}. Checked against {@code reference/stool-renewal.csv}.
 */
final class StoolRenewal {
    private final Bush bush;
    private final RenewalSchool school;
    private final Optional<Keep> keep;
    private final Cut.Builder cut;
    private final int spentFrom;
    private int spent;
    private int bearing;
    private int mayGo;
    private int due;
    private boolean behind;
    private boolean staged;

    private StoolRenewal(Bush bush, RenewalSchool school) {
        this.bush = bush;
        this.school = school;
        this.keep = school.keep(bush);
        this.cut = new Cut.Builder(bush.stems());
        // A class that is open below the spent age holds stems of several ages.
        this.spentFrom =
                bush.stems().isOpen() ? Math.min(school.spent(), bush.stems().oldest()) : school.spent();
    }

    static Cut cut(Bush bush, RenewalSchool school) {
        return new StoolRenewal(bush, school).decide();
    }

    private Cut decide() {
        if (bush.isBefore(1)) {
            return Cut.nothing(StageOfLife.FIRST_YEAR, bush.stems());
        }
        takeSick();
        if (school.cutsDown()) {
            return cutDown();
        }
        takeWeak();
        if (school.isTooYoung(bush)) {
            cut.remark(Cut.Remark.TOO_YOUNG);
            return cut.build(StageOfLife.YOUNG, 0, cut.left().at(1));
        }
        if (!bush.stems().isComplete()) {
            cut.remark(Cut.Remark.NOT_ALL_COUNTED);
        }
        weigh();
        int heldBack = spent - takeSpent();
        takeShares();
        int young = thin(heldBack);
        return cut.build(life(heldBack), heldBack, young, told(heldBack));
    }

    private Optional<StagedRenovation.Part> told(int heldBack) {
        int now = due - heldBack - surplus(cut.left().from(2) - heldBack);
        return staged ? school.staged().map(it -> it.told(due, bush.renovationWinter(), now)) : Optional.empty();
    }

    private void takeSick() {
        for (int age = bush.sick().oldest(); age >= 1; age--) {
            cut.take(age, bush.sick().at(age), Why.SICK);
        }
    }

    private void takeWeak() {
        int older = bush.weak().from(2);
        int going = Math.min(older, Math.max(0, cut.left().from(2) - 1));
        if (going < older) {
            cut.remark(Cut.Remark.LAST_BEARING_WOOD);
        }
        for (int age = bush.weak().oldest(); age >= 2; age--) {
            going -= cut.take(age, Math.min(bush.weak().at(age), going), Why.WEAK);
        }
        // Never the last shoot that could follow an old stem.
        cut.take(1, Math.min(bush.weak().at(1), cut.left().at(1) - 1), Why.WEAK);
    }

    private Cut cutDown() {
        for (int age = cut.left().oldest(); age >= 1; age--) {
            cut.take(age, cut.left().at(age), Why.CUT_DOWN);
        }
        cut.remark(Cut.Remark.HARD);
        return cut.build(StageOfLife.NEGLECTED, 0, 0);
    }

    /** Tells spent from bearing wood, and what may go of both. */
    private void weigh() {
        Stems living = cut.left();
        spent = Math.max(0, living.from(spentFrom) - stillGood());
        if (spent > 0 && spentFrom < school.spent()) {
            cut.remark(Cut.Remark.OPEN_CLASS);
        }
        int older = living.from(2);
        bearing = older - spent;
        due = spent + surplus(bearing);
        int usual = limit(living.total());
        int part = stagedPart(usual).orElse(usual);
        mayGo = Math.max(0, Math.min(school.hard() ? older : part, older - 1));
    }

    /** This winter's part of what is due on a crowded bush that is brought back over some. */
    private Optional<Integer> stagedPart(int usual) {
        Optional<Integer> part = school.staged().flatMap(it -> it.part(due, bush.renovationWinter(), usual));
        staged = part.isPresent();
        return part;
    }

    /**
     * The school's limit of a season. A bush with more spent and surplus wood than that has fallen behind, and the
     * share that print allows for bringing it back rules where it is more.
     */
    private int limit(int living) {
        int usual = school.limit().of(living);
        int bringingBack = school.renovation().map(it -> it.limit(living)).orElse(0);
        behind = due > usual && bringingBack > usual;
        return behind ? bringingBack : usual;
    }

    /** Older stems that are not spent, above the number of their age and not needed for the printed total. */
    private int surplus(int ofBearing) {
        if (keep.isEmpty()) {
            return 0;
        }
        int all = 0;
        for (int age = 2; age <= oldestToThin(keep.get()); age++) {
            all += Math.max(0, cut.left().at(age) - keep.get().of(age));
        }
        return Math.min(all, spare(keep.get(), ofBearing));
    }

    /**
     * Bearing stems above those that the printed total needs: an age above its number stands in for one below it. New
     * shoots that were not counted are taken as many as the school keeps.
     */
    private int spare(Keep target, int ofBearing) {
        int young = cut.left().knows(1) ? Math.min(cut.left().at(1), target.of(1)) : target.of(1);
        return Math.max(0, young + ofBearing - target.totalLeast());
    }

    private int oldestToThin(Keep target) {
        return Math.min(spentFrom - 1, target.stems().size());
    }

    /** Stems of an open class that are not spent yet, as far as the school has room for them. */
    private int stillGood() {
        if (spentFrom >= school.spent()) {
            return 0;
        }
        return keep.map(it -> it.between(spentFrom, school.spent() - 1)).orElse(Stems.OLDEST_CLASS * 1000);
    }

    private int takeSpent() {
        int going = Math.min(partOfSpent(), mayGo);
        if (going < spent && !staged) {
            boolean last = mayGo == 0 || (bearing == 0 && going == mayGo);
            cut.remark(last ? Cut.Remark.LAST_BEARING_WOOD : Cut.Remark.LIMITED);
        }
        int taken = 0;
        for (int age = cut.left().oldest(); age >= spentFrom && taken < going; age--) {
            taken += cut.take(age, going - taken, Why.SPENT);
        }
        mayGo -= taken;
        return taken;
    }

    /**
     * This winter's part of the spent wood. Once a bush is being brought back over some winters, these go on in equal
     * parts.
     */
    private int partOfSpent() {
        if (school.hard() || staged || school.renovation().isEmpty()) {
            return spent;
        }
        Renovation renovation = school.renovation().get();
        int part = renovation.part(spent, cut.left().total(), bush.renovationWinter());
        if (bush.renovationWinter() > 1 && renovation.winters().isPresent()) {
            return part;
        }
        return spent <= bearing ? spent : Math.min(spent, Math.max(part, bearing));
    }

    private void takeShares() {
        for (Figure share : school.shares()) {
            boolean ofBush = share.unit().equals(RenewalSchool.OF_BUSH);
            int of = ofBush ? cut.left().total() : cut.left().from(2);
            int quota = (int) Math.round(share.is() * of);
            int going = Math.min(quota, mayGo);
            if (going < quota) {
                cut.remark(Cut.Remark.LIMITED);
            }
            for (int age = cut.left().oldest(); age >= 2 && going > 0; age--) {
                int taken = cut.take(age, going, Why.OLDEST);
                going -= taken;
                mayGo -= taken;
            }
        }
    }

    /** Thins each age to its number; returns how many young ones are to stay. */
    private int thin(int heldBack) {
        if (keep.isEmpty()) {
            return cut.left().at(1);
        }
        Keep target = keep.get();
        for (int age = oldestToThin(target); age >= 2 && heldBack == 0; age--) {
            int surplus = Math.min(
                    cut.left().at(age) - target.of(age),
                    spare(target, cut.left().from(2)));
            int going = Math.min(surplus, mayGo);
            mayGo -= cut.take(age, going, Why.CROWDED);
            if (surplus > 0 && going < surplus && !staged) {
                cut.remark(Cut.Remark.LIMITED);
            }
        }
        int young = youngToKeep(target);
        if (cut.left().at(1) > target.of(1) && young > target.of(1)) {
            cut.remark(Cut.Remark.FILLED_UP);
        }
        cut.take(1, cut.left().at(1) - young, Why.CROWDED);
        return young;
    }

    /** A bush that is short of older stems keeps more new ones, up to a young bush's number. */
    private int youngToKeep(Keep target) {
        int older = cut.left().from(2);
        int missing = target.totalLeast() - older;
        int room = school.mostYoung(target, older);
        return Math.max(target.of(1), Math.min(missing, room));
    }

    private StageOfLife life(int heldBack) {
        if (bush.isBefore(Math.max(school.buildUp().size() + 1, school.firstPruning()))) {
            return StageOfLife.YOUNG;
        }
        boolean manySpent = spent > bearing
                && spent >= school.renovation().map(Renovation::fromSpent).orElse(1);
        boolean underWay = bush.renovationWinter() > 1 && heldBack > 0;
        return manySpent || underWay || behind || staged ? StageOfLife.NEGLECTED : StageOfLife.BEARING;
    }
}
