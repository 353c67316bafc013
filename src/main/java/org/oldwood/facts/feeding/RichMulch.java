package org.oldwood.facts.feeding;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.NeedCase;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.crop.Crops;
import org.oldwood.garden.BedState;
import org.oldwood.words.Words;

/** A mulch that would bring a bed several times what its crops need of a nutrient, and what to lay instead. */
final class RichMulch {
    private static final double G_PER_M2_AND_CM = 10;

    private RichMulch() {}

    /** Where a new layer is too rich: how much it brings, in a sentence; empty where it is poor enough. */
    static Optional<String> about(FeedingBooks books, Crops crops, BedState bed, Mulch mulch, double newCm) {
        Nutrients brings = mulch.asFeed().flatMap(books.materials()::feed)
                .map(feed -> feed.gives(newCm * mulch.density().is() * G_PER_M2_AND_CM)).orElse(Nutrients.NONE);
        List<FeedingProfile> profiles = books.profiles(bed, crops);
        if (profiles.isEmpty() || brings.sum() == 0) { return Optional.empty(); }
        Nutrients need = need(books, crops, bed, profiles);
        return List.of(Nutrient.P2O5, Nutrient.K2O, Nutrient.MGO).stream()
                .max(Comparator.comparing(nutrient -> brings.of(nutrient) / need.of(nutrient)))
                .filter(most -> brings.of(most) > need.of(most) * books.mulches().figure("richTimes").is())
                .map(most -> "%s cm of it would bring %s g/m² of %s, %s times a year's need. Of compost print gives %s as a feed."
                        .formatted(Words.amount(newCm), Words.fixed(brings.of(most), 0), most.words(),
                                Words.fixed(brings.of(most) / need.of(most), 0),
                                books.mulches().figure("compostMost").inWords()));
    }

    /** The most that any crop of the bed needs of each, g/m². */
    private static Nutrients need(FeedingBooks books, Crops crops, BedState bed, List<FeedingProfile> profiles) {
        NeedCase.Ground ground = Grounds.of(bed, bed.plants(), crops);
        List<Nutrients> needs = profiles.stream().map(
                profile -> Need.of(books.tables(), profile, profile.schools().get(0), NeedCase.of(ground)).gPerM2())
                .toList();
        Nutrients smallest = books.tables().limits().smallest();
        return Nutrients.each(nutrient -> needs.stream().mapToDouble(each -> each.of(nutrient))
                .reduce(smallest.of(nutrient), Math::max));
    }

    /** Mulches that feed nothing, that do no harm and that no crop of the bed forbids. */
    static List<String> poorer(FeedingBooks books, List<FeedingProfile> profiles) {
        return books.mulches().mulches().stream()
                .filter(mulch -> mulch.asFeed().isEmpty() && mulch.poison().isEmpty() && !mulch.nitrogenDrawdown()
                        && !mulch.tags().contains("alkaline"))
                .filter(mulch -> BedMulch.excluded(profiles, mulch).isEmpty()).map(Mulch::name).toList();
    }
}
