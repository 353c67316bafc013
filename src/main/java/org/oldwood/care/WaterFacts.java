package org.oldwood.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.garden.BedState;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Weather;
import org.oldwood.water.BedAccount;
import org.oldwood.water.BedSoil;
import org.oldwood.water.GardenWater;

/** What the water craft tells the rules of a bed. Built anew for each plan. */
final class WaterFacts implements Advisor {
    private static final String HELD = "water-held";
    private static final String SHORT = "would-run-short";
    private static final String DAYS = "days-to-watering";
    private static final String WATER = "water";
    private static final String NEW = "water-new";

    private @Nullable GardenWater known;

    @Override
    public List<String> facts() {
        return List.of(HELD, SHORT, DAYS);
    }

    @Override
    public List<String> amounts() {
        return List.of(WATER, NEW);
    }

    @Override
    public Fact fact(String name, Optional<String> of, Situation situation) {
        GardenWater water = water(situation.world());
        if (water.lacking().isPresent()) {
            return Fact.unknown(name, water.lacking().get());
        }
        Optional<BedAccount> account = account(water, situation);
        if (account.isEmpty()) {
            return Fact.unknown(name, "no plant stands in the bed; note planted");
        }
        return switch (name) {
            case HELD -> held(account.get(), situation.day());
            case SHORT -> runsShort(account.get(), situation);
            default -> days(account.get(), situation.day());
        };
    }

    /** The bed's account; of the whole garden that of the bed which runs short most. */
    private static Optional<BedAccount> account(GardenWater water, Situation situation) {
        if (situation.subject().bed().isPresent()) {
            return situation.subject().bed().flatMap(water::account);
        }
        LocalDate end = situation.season().end();
        return water.accounts().stream()
                .max(Comparator.comparingInt(one -> one.daysShort(situation.day(), end)));
    }

    private GardenWater water(Situation.World world) {
        GardenWater made = known;
        if (made == null) {
            Optional<Climate> climate =
                    world.stages().climate().map(GardenClimate::climate).or(() -> declared(world));
            made =
                    new GardenWater(
                            world.state(),
                            climate,
                            Weather.none(),
                            world.stages(),
                            world.crops(),
                            world.documents());
            known = made;
        }
        return made;
    }

    private static Optional<Climate> declared(Situation.World world) {
        return world.state()
                .garden()
                .climate()
                .flatMap(json -> Climate.of(json, world.documents(), world.documents().problems()));
    }

    private static Fact held(BedAccount account, LocalDate day) {
        double share = account.days().heldShare(account.index(day));
        return Fact.number(
                HELD,
                share,
                "about "
                        + Math.round(100 * share)
                        + " % of the water that the roots can draw is held on "
                        + day,
                account.soil().sources().toArray(String[]::new));
    }

    private static Fact runsShort(BedAccount account, Situation situation) {
        LocalDate end = situation.season().end();
        LocalDate from = situation.day().isAfter(end) ? end : situation.day();
        Optional<LocalDate> first = account.firstShort(from, end);
        String[] sources = account.soil().sources().toArray(String[]::new);
        if (first.isEmpty()) {
            return Fact.yes(
                    SHORT,
                    false,
                    "in mean weather "
                            + account.state().bed().name()
                            + " does not run short from "
                            + from,
                    sources);
        }
        return Fact.yes(
                SHORT,
                true,
                "in mean weather "
                        + account.state().bed().name()
                        + " runs short about "
                        + first.get()
                        + " and is short on "
                        + account.daysShort(from, end)
                        + " days of the season if nobody waters",
                sources);
    }

    private static Fact days(BedAccount account, LocalDate day) {
        Optional<LocalDate> first = account.firstShort(day, day.plusDays(180));
        return first.map(
                        date ->
                                Fact.number(
                                        DAYS,
                                        account.index(date) - account.index(day),
                                        "runs short about " + date + " in mean weather"))
                .orElseGet(
                        () ->
                                Fact.number(
                                        DAYS,
                                        180,
                                        "in mean weather does not run short within 180 days"));
    }

    @Override
    public Optional<Amount> amount(String name, Situation situation) {
        GardenWater water = water(situation.world());
        Optional<BedState> bed = situation.subject().bed();
        Optional<BedSoil> soil = bed.flatMap(in -> water.soil(in, situation.season()));
        if (bed.isEmpty() || soil.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                name.equals(NEW)
                        ? WaterDoses.newPlants(water, situation)
                        : WaterDoses.refill(bed.get(), soil.get(), water, situation));
    }
}
