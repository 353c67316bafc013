package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.garden.BedState;

/** What the water craft tells the rules of a bed. Built anew for each plan. */
public final class WaterAdvisor extends Advisor {
    private static final String HELD = "water-held";
    private static final String SHORT = "would-run-short";
    private static final String DAYS = "days-to-watering";
    private static final String ACCOUNT = "water-account";
    private static final String FROM = "short-from-date";
    private static final String UNTIL = "short-until-date";
    private static final String NEXT = "next-short-date";
    private static final String AHEAD = "next-short-in";
    private static final String BEGINS_IN = "short-begins-in";
    private static final List<String> NAMES = List.of(HELD, SHORT, DAYS, ACCOUNT, FROM, UNTIL, NEXT, AHEAD, BEGINS_IN);

    public WaterAdvisor() {
        NAMES.forEach(name -> knows(name, s -> fact(name, s)));
        measures("water", s -> dose(s, false));
        measures("water-new", s -> dose(s, true));
    }

    private Fact fact(String name, Situation situation) {
        GardenWater water = water(situation.world());
        if (name.equals(ACCOUNT)) {
            return water.lacking().map(words -> Fact.yes(false, "no account of the water: " + words))
                    .orElseGet(() -> Fact.yes(true, "an account of the water is kept"));
        }
        if (water.lacking().isPresent()) { return Fact.unknown(water.lacking().get()); }
        Optional<BedAccount> account = account(water, name, situation);
        if (account.isEmpty()) { return Fact.unknown("no plant stands in the bed; note planted"); }
        ShortSpells spells = new ShortSpells(water, account.get(), situation);
        return switch (name) {
            case HELD -> held(account.get(), situation.day());
            case SHORT -> spells.runsShort();
            case FROM -> spells.day(spells.first(), " runs short about ");
            case UNTIL -> spells.day(spells.last(), " is short until about ");
            case NEXT -> spells.day(spells.next(), " runs short next about ");
            case AHEAD -> spells.ahead(spells.next(), " runs short next about ");
            case BEGINS_IN -> spells.ahead(spells.first(), " runs short first about ");
            default -> days(account.get(), situation.day());
        };
    }

    /** The bed's account; of the whole garden that of the bed for which the fact says most. */
    private static Optional<BedAccount> account(GardenWater water, String name, Situation situation) {
        if (situation.subject().bed().isPresent()) { return situation.subject().bed().flatMap(water::account); }
        Optional<BedAccount> most = Optional.empty();
        long least = 0;
        for (BedState bed : water.state().beds().values()) {
            Optional<BedAccount> one = water.account(bed);
            if (one.isPresent()) {
                long rank = rank(name, new ShortSpells(water, one.get(), situation));
                if (most.isEmpty() || rank < least) {
                    most = one;
                    least = rank;
                }
            }
        }
        return most;
    }

    /** The bed that is short first stands for the garden; for the end, the one that is last. */
    private static long rank(String name, ShortSpells spells) {
        return switch (name) {
            case FROM, NEXT, AHEAD, BEGINS_IN, DAYS -> spells.first().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
            case UNTIL -> spells.last().map(day -> -day.toEpochDay()).orElse(Long.MAX_VALUE);
            default -> -spells.daysShort();
        };
    }

    private static GardenWater water(Situation.World world) {
        return world.once(GardenWater.class,
                of -> new GardenWater(of.state(), of.stages(), of.crops(), of.documents()));
    }

    private static Fact held(BedAccount account, LocalDate day) {
        double share = account.days().heldShare(account.index(day));
        return Fact.number(share,
                "about " + Math.round(100 * share) + " % of the water that the roots can draw is held on " + day)
                .from(account.soil().sources());
    }

    private static Fact days(BedAccount account, LocalDate day) {
        Optional<LocalDate> first = account.firstShort(day, day.plusDays(180));
        return first
                .map(date -> Fact.number(account.index(date) - account.index(day),
                        "runs short about " + date + " in mean weather"))
                .orElseGet(() -> Fact.number(180, "in mean weather does not run short within 180 days"));
    }

    private Optional<Amount> dose(Situation situation, boolean young) {
        GardenWater water = water(situation.world());
        Optional<BedState> bed = situation.subject().bed();
        Optional<BedSoil> soil = bed.flatMap(in -> water.soil(in, situation.season()));
        if (bed.isEmpty() || soil.isEmpty()) { return Optional.empty(); }
        return Optional.of(young ? WaterDoses.newPlants(water, situation)
                : WaterDoses.refill(bed.get(), soil.get(), water, situation));
    }
}
