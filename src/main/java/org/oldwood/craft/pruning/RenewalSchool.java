package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;

/**
 * Renewal of a stool by the age of its stems: the spent ones go at the base, each age is thinned to its number, a few
 * of last summer's shoots follow.
 *
 * @param spentAge the age from which a stem is spent; empty where the school does not go by age
 * @param keep stems that stay on a grown bush; empty where the school names none
 * @param limit the most older wood that may go in one winter
 * @param shares schools that take a share of the oldest: each in turn of what then stands
 * @param buildUp stems that stay after the first, second, third … season
 * @param firstPruning seasons completed before the first winter in which sound wood is cut
 * @param sharesFrom the youngest age of which such a share takes; younger stems are too good to go for their age
 * @param renovation how a neglected bush is brought back
 * @param hard true where the school itself does not keep to the limit of a season
 * @param cutsDown true where the whole bush is cut to the ground at once
 */
public record RenewalSchool(
        Teaching teaching,
        Optional<Figure> spentAge,
        Optional<Keep> keep,
        SeasonLimit limit,
        List<Figure> shares,
        List<Keep> buildUp,
        int firstPruning,
        int sharesFrom,
        Optional<Renovation> renovation,
        boolean hard,
        boolean cutsDown)
        implements School {
    static final String OF_BUSH = "of the bush";
    static final String OF_OLDER = "of the older stems";

    static RenewalSchool read(Fields fields) {
        List<Figure> shares = new ArrayList<>();
        for (Fields share : fields.objects("oldestShares")) {
            Figure figure = Figure.of(share);
            if (!List.of(OF_BUSH, OF_OLDER).contains(figure.unit())) {
                share.wrong("unit", "share-of-what", "must be \"" + OF_BUSH + "\" or \"" + OF_OLDER + "\"", "");
            }
            shares.add(figure);
        }
        List<Keep> buildUp = new ArrayList<>();
        for (Fields season : fields.objects("buildUp")) {
            buildUp.add(Keep.read(season));
        }
        RenewalSchool school = new RenewalSchool(
                Teaching.read(fields),
                Figure.optional(fields, "spentAge"),
                fields.object("keep").map(Keep::read),
                fields.flag("cutsDown", false) ? SeasonLimit.all() : SeasonLimit.required(fields),
                List.copyOf(shares),
                List.copyOf(buildUp),
                fields.count("firstPruning", 1, 10, 1),
                fields.count("oldestFrom", 2, 10, 2),
                fields.object("renovation").map(Renovation::read),
                fields.flag("hard", false),
                fields.flag("cutsDown", false));
        fields.done();
        return school;
    }

    /** The age from which a stem is spent; beyond every class where the school has none. */
    int spent() {
        return spentAge.map(age -> (int) age.is()).orElse(Stems.OLDEST_CLASS + 1);
    }

    @Override
    public Cut winter(Bush bush) {
        return StoolRenewal.cut(bush, this);
    }

    /** What stays on a bush of that age: the build-up in its first seasons, then the grown bush. */
    Optional<Keep> keep(Bush bush) {
        if (bush.seasons().isPresent()) {
            int season = bush.seasons().getAsInt();
            if (season >= 1 && season <= buildUp.size()) {
                return Optional.of(buildUp.get(season - 1));
            }
        }
        return keep;
    }

    @Override
    public Optional<StagedRenovation> staged() {
        return renovation.flatMap(Renovation::staged);
    }

    @Override
    public boolean isTooYoung(Bush bush) {
        return bush.isBefore(firstPruning);
    }

    @Override
    public Stems target(Bush bush) {
        return keep(bush).map(Keep::target).orElse(Stems.NONE);
    }

    @Override
    public int bearing(Stems stems) {
        return stems.between(bearsFrom(), spent() - 1);
    }

    /** The age from which a stem counts as bearing: one year where all that has fruited goes. */
    int bearsFrom() {
        return Math.min(2, spent() - 1);
    }

    @Override
    public int fold() {
        return spentAge.map(age -> (int) age.is())
                .or(() -> keep.map(it -> it.stems().size() + 1))
                .orElse(4);
    }
}
