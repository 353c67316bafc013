package org.oldwood.craft.pruning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Stems;
import org.oldwood.store.Fields;

/**
 * Renewal of a stool by the age of its stems: the spent ones go at the base, each age is thinned to its number, a few
 * of last summer's shoots follow.
 *
 * @param spentAge the age from which a stem is spent; empty where the school does not go by age
 * @param keep stems that stay on a grown bush; empty where the school names none
 * @param shares schools that take a share of the oldest: each in turn of what then stands
 * @param buildUp stems that stay after the first, second, third … season
 * @param firstPruning seasons completed before the first winter in which sound wood is cut
 * @param sharesFrom the youngest age of which such a share takes; younger stems are too good to go for their age
 * @param hard true where the school itself does not keep to the limit of a season
 * @param cutsDown true where the whole bush is cut to the ground at once
 */
public record RenewalSchool(@Key(Key.HERE) Teaching teaching, Optional<Figure> spentAge, Optional<Keep> keep,
        @Key("limit") Optional<SeasonLimit> seasonLimit, @Key("oldestShares") List<Figure> shares, List<Keep> buildUp,
        @Key(least = 1, most = 10, otherwise = 1) int firstPruning,
        @Key(value = "oldestFrom", least = 2, most = 10, otherwise = 2) int sharesFrom, Optional<Renovation> renovation,
        boolean hard, boolean cutsDown) implements School, Checked {
    static final String OF_BUSH = "of the bush";
    static final String OF_OLDER = "of the older stems";

    @Override
    public void check(Fields fields) {
        fields.tellIf(seasonLimit.isPresent() == cutsDown, "limit",
                cutsDown ? "unknown-key limit" : "missing-key limit");
        fields.tellIf(!Set.of(OF_BUSH, OF_OLDER).containsAll(shares.stream().map(Figure::unit).toList()),
                "oldestShares", "share-of-what", OF_BUSH, OF_OLDER);
    }

    SeasonLimit limit() { return seasonLimit.orElse(SeasonLimit.NONE); }

    /** The age from which a stem is spent; beyond every class where the school has none. */
    int spent() {
        return spentAge.map(age -> (int) age.is()).orElse(Stems.OLDEST_CLASS + 1);
    }

    @Override
    public Cut winter(Bush bush) { return StoolRenewal.cut(bush, this); }

    /** What stays on a bush of that age: the build-up in its first seasons, then the grown bush. */
    Optional<Keep> keep(Bush bush) {
        if (bush.seasons().isPresent()) {
            int season = bush.seasons().getAsInt();
            if (season >= 1 && season <= buildUp.size()) { return Optional.of(buildUp.get(season - 1)); }
        }
        return keep;
    }

    @Override
    public boolean isTooYoung(Bush bush) { return bush.isBefore(firstPruning); }

    @Override
    public Stems target(Bush bush) { return keep(bush).map(Keep::target).orElse(Stems.NONE); }

    @Override
    public int bearing(Stems stems) { return stems.between(bearsFrom(), spent() - 1); }

    /** The age from which a stem counts as bearing: one year where all that has fruited goes. */
    int bearsFrom() {
        return Math.min(2, spent() - 1);
    }

    @Override
    public int fold() {
        return spentAge.map(age -> (int) age.is()).or(() -> keep.map(it -> it.stems().size() + 1)).orElse(4);
    }
}
