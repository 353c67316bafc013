package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.oldwood.words.Words;

/**
 * Which of the grower's feeds a crop may get, and why not the others.
 *
 * @param allowed the feeds that may be given, in the order in which they are kept
 * @param refused why each of the others may not
 */
public record Choice(List<Feed> allowed, List<String> refused) {
    /**
     * Chooses.
     *
     * @param needK2o the crop's need of potash, g/m²: above a limit, chloride is refused
     * @param ph the soil's pH, where known
     * @param neverLimeFrom the pH from which on nothing is given that limes
     */
    public static Choice of(List<Feed> kept, FeedingProfile profile, double needK2o, OptionalDouble ph,
            double neverLimeFrom) {
        List<Feed> allowed = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (Feed feed : kept) {
            Optional<String> why = profile.excludes(feed.tags()).map(FeedingProfile.Excluded::reason)
                    .or(() -> ph.isPresent() && ph.getAsDouble() >= neverLimeFrom && feed.is("alkaline")
                            ? Optional.of(
                                    "it limes, and this soil has a pH of %s.".formatted(Words.amount(ph.getAsDouble())))
                            : Optional.empty())
                    .or(() -> chloride(feed, profile, needK2o)).or(() -> otherAmmonium(feed, profile, kept, ph))
                    .or(() -> ash(feed, profile, kept));
            if (why.isPresent()) {
                refused.add("Not " + feed.name() + ": " + why.get());
            } else {
                allowed.add(feed);
            }
        }
        return new Choice(List.copyOf(allowed), List.copyOf(refused));
    }

    /**
     * The same without feeds that must wait too long on this ground, where another can bring nitrogen meanwhile.
     *
     * @param waits why a feed must wait; empty for one that need not
     */
    public Choice without(Function<Feed, Optional<String>> waits) {
        if (allowed.stream().noneMatch(feed -> feed.givesNitrogen() && waits.apply(feed).isEmpty())) { return this; }
        List<String> all = new ArrayList<>(refused);
        allowed.forEach(feed -> waits.apply(feed).ifPresent(why -> all.add("Not " + feed.name() + ": " + why)));
        return new Choice(allowed.stream().filter(feed -> waits.apply(feed).isEmpty()).toList(), List.copyOf(all));
    }

    private static Optional<String> chloride(Feed feed, FeedingProfile profile, double needK2o) {
        return feed.is("chloride") && profile.chlorideFreeAbove().isPresent()
                && needK2o > profile.chlorideFreeAbove().get().is()
                        ? Optional.of("above %s g/m² K2O%s this crop wants potash without chloride.".formatted(
                                Words.amount(profile.chlorideFreeAbove().get().is()),
                                profile.chlorideFreeAbove().get().seen().beside()))
                        : Optional.empty();
    }

    /** One dressing cannot hold ash and what it drives the ammonia off; the nitrogen comes first. */
    private static Optional<String> ash(Feed feed, FeedingProfile profile, List<Feed> kept) {
        return kept.stream().filter(other -> feed.is("ash") && other.givesNitrogen())
                .filter(other -> other.is("ammonium") || other.organic())
                .filter(other -> profile.excludes(other.tags()).isEmpty()).findFirst()
                .map(other -> "it would drive the nitrogen of %s off as ammonia. Spread it in winter, months before, or keep sulphate of potash."
                        .formatted(other.name()));
    }

    /** Where both are kept, the pH decides between urea and ammonium sulphate. */
    private static Optional<String> otherAmmonium(Feed feed, FeedingProfile profile, List<Feed> kept,
            OptionalDouble ph) {
        if (profile.ureaBelowPh().isEmpty() || ph.isEmpty() || !feed.is("ammonium")) { return Optional.empty(); }
        boolean ureaWanted = ph.getAsDouble() < profile.ureaBelowPh().get().is();
        boolean wrong = feed.is("urea") != ureaWanted;
        boolean otherKept = kept.stream().anyMatch(other -> other.is("ammonium") && other.is("urea") == ureaWanted);
        return wrong && otherKept
                ? Optional.of("at pH %s%s".formatted(Words.amount(ph.getAsDouble()),
                        ureaWanted ? " urea acidifies less." : " ammonium sulphate keeps the soil acid."))
                : Optional.empty();
    }
}
