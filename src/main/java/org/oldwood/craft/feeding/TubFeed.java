package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.words.Words;

/**
 * The food of plants in tubs: the season's nitrogen by the litre of mix, in equal weekly parts of one quick feed, since
 * slow and large dressings salt a small root ball.
 */
public final class TubFeed {
    private TubFeed() {}

    /** The budget of a stand in tubs; each dressing is that of some weeks, told by the week. */
    public static Budget budget(FeedingTables tables, Need need, Budget.Counting counting, Choice choice, Timing timing,
            NeedCase.Ground ground) {
        Optional<Feed> feed = choice.allowed().stream().filter(each -> each.givesNitrogen() && !each.slow())
                .findFirst();
        List<String> notes = new ArrayList<>(choice.refused());
        List<FeedPlan> plans = feed.map(each -> plans(tables, need, counting, each, ground, notes)).orElse(List.of());
        List<String> missing = feed.isPresent() ? beside(tables, need.gPerM2().n() * ground.areaM2(), feed.get())
                : List.of("Tubs want a quick feed that brings nitrogen: keep one, or a liquid feed by its label.");
        return new Budget(need, counting, choice, ground, timing, plans, missing, List.copyOf(notes));
    }

    /** Phosphate and potash that the feed does not bring in the measure of the trial's. */
    private static List<String> beside(FeedingTables tables, double n, Feed feed) {
        Nutrients gives = feed.gives(n / feed.gives(1).n());
        double p2o5 = n * tables.tub().p2o5PerN().is();
        double k2o = n * tables.tub().k2oPerN().is();
        return gives.p2o5() >= p2o5 / 2 && gives.k2o() >= k2o / 2 ? List.of()
                : List.of(
                        "Beside %s the trial's feed brought phosphate and potash, as much as %s g P2O5 and %s g K2O a season here: keep a feed of all three for tubs, or give a tomato feed by its label in turn."
                                .formatted(feed.name(), Words.amount(p2o5), Words.amount(k2o)));
    }

    private static List<FeedPlan> plans(FeedingTables tables, Need need, Budget.Counting counting, Feed feed,
            NeedCase.Ground ground, List<String> notes) {
        double weeks = tables.tub().weeksAtOnce().is();
        double each = need.gPerM2().n() * weeks / tables.tub().weeks().is();
        double left = need.gPerM2().n() - counting.all().n();
        List<FeedPlan> plans = new ArrayList<>();
        for (; left > each / 2; left -= each) {
            Recipe.Part part = new Recipe.Part(feed, Math.min(left, each) / feed.gives(1).n());
            plans.add(FeedPlan.of(plans.size(),
                    "weeks %s to %s".formatted(Words.amount(plans.size() * weeks + 1),
                            Words.amount((plans.size() + 1) * weeks)),
                    List.of(part), tables.limits().smallest().n(), ground));
        }
        if (!plans.isEmpty()) {
            notes.add("A week's part of it: %s g a plant, dissolved in the water."
                    .formatted(Words.amount(plans.get(0).totalGrams() / weeks / Math.max(1, ground.bushes()))));
        }
        return plans;
    }
}
