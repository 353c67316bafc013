package org.oldwood.cli.water;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.craft.water.Dose;
import org.oldwood.craft.water.MoistureTrend;
import org.oldwood.craft.water.NextShort;
import org.oldwood.craft.water.RootZone;
import org.oldwood.facts.water.BedAccount;
import org.oldwood.facts.water.BedSoil;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;

/** The water of the beds for other programs. */
record WaterJson(LocalDate date, Optional<String> lacking, List<String> weatherLacks, List<Record> beds) {

    static WaterJson of(GardenState state, GardenWater water, List<BedState> beds) {
        List<Record> told = beds.stream()
                .flatMap(bed -> water.account(bed).<Record>map(account -> Account.of(state, water, account))
                        .or(() -> water.soil(bed, state.season()).map(soil -> Guide.of(bed, soil))).stream())
                .toList();
        return new WaterJson(state.date(), water.lacking(), water.weatherLacks(), told);
    }

    /** What can be said without an account. */
    private record Guide(String bed, String texture, double rootDepthM, double totalAvailableMm, double guideMmAWeek,
            double guideLitresAWeek, List<String> takenForGranted, List<String> sources) {
        static Guide of(BedState bed, BedSoil soil) {
            double week = soil.plantings().get(0).water().weeklyNeed().is();
            return new Guide(bed.bed().id(), soil.soil().id(), round(soil.rootDepthM()),
                    round(soil.water().totalAvailableMm()), week, round(RootZone.litres(week, soil.groundM2())),
                    soil.remarks(), soil.sources());
        }
    }

    private record Given(double mm, double litres, double litresEach, String each) {
        static Given of(Dose dose, BedAccount account) {
            return new Given(round(dose.mm()), round(dose.litres()), round(dose.litresEach()), account.soil().each());
        }
    }

    private record Account(String bed, String texture, double rootDepthM, double totalAvailableMm, double heldMm,
            double heldLeastMm, double heldMostMm, double heldShare, @JsonProperty("short") boolean isShort,
            int daysShortThisSeason, double standingDays, Optional<LocalDate> nextWatering,
            Optional<LocalDate> shortWithoutRain, OptionalInt plusMinusDays, Given refillNow, Given refillWhenShort,
            Optional<Double> driftMmPerWeek, List<String> takenForGranted, List<String> sources) {
        static Account of(GardenState state, GardenWater water, BedAccount account) {
            int today = account.index(state.date());
            double total = account.soil().water().totalAvailableMm();
            NextShort next = account.outlook(state.season().plus(1).end());
            return new Account(account.state().bed().id(), account.soil().soil().id(),
                    round(account.soil().rootDepthM()), round(total), round(total - account.now().mm()),
                    round(total - account.now().driestMm()), round(total - account.now().wettestMm()),
                    round(account.days().heldShare(today)), account.days().isShort(today),
                    account.daysShort(state.season().start(), state.date()), round(account.standingDays()),
                    day(state.date(), next.likely()), day(state.date(), next.rainless()), next.plusMinusDays(),
                    Given.of(account.refill(state.date()), account), Given.of(account.refillWhenShort(), account),
                    account.drift(water.data().figures()).map(MoistureTrend::mmPerWeek).map(WaterJson::round),
                    account.remarks(), account.soil().sources());
        }
    }

    private static Optional<LocalDate> day(LocalDate today, OptionalInt days) {
        return days.stream().mapToObj(ahead -> today.plusDays(ahead + 1L)).findFirst();
    }

    static double round(double value) { return Math.rint(value * 1000) / 1000; }
}
