package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.oldwood.facts.Advisor;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Fact;
import org.oldwood.facts.Situation;
import org.oldwood.garden.BedState;

/** What the water craft tells the rules of a bed. Built anew for each plan. */
public final class WaterAdvisor extends Advisor {
    public WaterAdvisor() {
        knows("water-account",
                s -> water(s.world()).lacking().map(words -> Fact.yes(false, "no account of the water: " + words))
                        .orElseGet(() -> Fact.yes(true, "an account of the water is kept")));
        bed("would-run-short", bed -> -bed.daysShort(), ShortSpells::runsShort);
        bed("short-from-date", WaterAdvisor::first, bed -> bed.day(bed.first(), "the day %s runs short, about "));
        bed("short-until-date", bed -> bed.last().map(day -> -day.toEpochDay()).orElse(Long.MAX_VALUE),
                bed -> bed.day(bed.last(), "the last day %s is short, about "));
        bed("next-short-date", WaterAdvisor::first, bed -> bed.day(bed.next(), "the day %s runs short next, about "));
        bed("next-short-in", WaterAdvisor::first, bed -> bed.ahead(bed.next(), " runs short next about "));
        bed("short-begins-in", WaterAdvisor::first, bed -> bed.ahead(bed.first(), " runs short first about "));
        measures("water", s -> dose(s, false));
        measures("water-new", s -> dose(s, true));
    }

    /** A fact of a bed; of the whole garden that of the bed that comes first. */
    private void bed(String name, ToLongFunction<ShortSpells> order, Function<ShortSpells, Fact> fact) {
        knows(name, s -> {
            GardenWater water = water(s.world());
            if (water.lacking().isPresent()) { return Fact.unknown(water.lacking().get()); }
            Collection<BedState> beds = s.subject().bed().<Collection<BedState>>map(List::of)
                    .orElseGet(water.state().beds()::values);
            return beds.stream().flatMap(bed -> water.account(bed).stream())
                    .map(account -> new ShortSpells(account, water.growing(account.soil(), s.season()), s))
                    .min(Comparator.comparingLong(order)).map(fact)
                    .orElseGet(() -> Fact.unknown("no plant stands in the bed; note planted"));
        });
    }

    private static long first(ShortSpells bed) { return bed.first().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE); }

    private static GardenWater water(Situation.World world) {
        return world.once(GardenWater.class,
                of -> new GardenWater(of.state(), of.stages(), of.crops(), of.documents()));
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
