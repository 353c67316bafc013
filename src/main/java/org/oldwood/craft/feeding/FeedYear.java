package org.oldwood.craft.feeding;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;

/**
 * The food of one piece of ground in one season: what it needs, what it was given, and the dressings that meet what is
 * due.
 *
 * @param need the need of the season by one school
 * @param balance need against what counts in the season, g/m²
 * @param timing when the year's food is given
 * @param sand whether the ground is light sand
 * @param begun whether anything was fed this season
 * @param choice the materials that it may get
 * @param ground how much ground and how many plants
 */
public record FeedYear(
        Need need, Balance balance, Timing timing, boolean sand, boolean begun, Choice choice, NeedCase.Ground ground) {

    /** The dressings of the year, in order. Slow feeds go in one, since they last the season. */
    public List<Timing.Dressing> dressings() {
        return onlySlow() ? List.of(new Timing.Dressing("first", "in one dressing", 1)) : timing.on(sand);
    }

    /** The dressing of that place, 0 for the first, ready to weigh out. */
    public FeedPlan dressing(FeedingTables tables, int which) {
        Nutrients due = onlySlow() && which > 0 && !begun
                ? Nutrients.NONE
                : Dressings.due(
                        dressings(),
                        which,
                        balance,
                        begun,
                        tables.limits().dressingMostN().is());
        return FeedPlan.of(tables, due, need.gPerM2().n(), choice, ground);
    }

    /**
     * The last northern day for a dressing, by the slowest nitrogen in it; empty for one without nitrogen, whose time
     * does not matter.
     */
    public Optional<MonthDay> latest(FeedPlan dressing) {
        List<Feed> withN = dressing.parts().stream()
                .map(Recipe.Part::feed)
                .filter(Feed::givesNitrogen)
                .toList();
        if (withN.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(withN.stream().anyMatch(Feed::slow) ? timing.latestSlow() : timing.latestQuick());
    }

    private boolean onlySlow() {
        boolean any = false;
        for (Feed feed : choice.allowed()) {
            if (feed.givesNitrogen()) {
                if (!feed.is("slow")) {
                    return false;
                }
                any = true;
            }
        }
        return any;
    }
}
