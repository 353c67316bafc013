package org.oldwood.cli.water;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.oldwood.craft.water.Dose;
import org.oldwood.craft.water.Outlook;
import org.oldwood.craft.water.RootZone;
import org.oldwood.facts.water.BedAccount;
import org.oldwood.facts.water.BedSoil;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.store.JsonWriter;

/** The water of the beds for other programs. */
final class WaterJson {
    private WaterJson() {}

    static void write(JsonWriter json, GardenState state, GardenWater water, List<BedState> beds) {
        json.object().put("date", state.date().toString());
        water.lacking().ifPresent(words -> json.put("lacking", words));
        json.array("beds");
        for (BedState bed : beds) {
            water.account(bed)
                    .ifPresentOrElse(account -> bed(json, state, water, account), () -> water.soil(bed, state.season())
                            .ifPresent(soil -> guide(json, bed, soil)));
        }
        json.endArray().endObject();
    }

    /** What can be said without an account. */
    private static void guide(JsonWriter json, BedState bed, BedSoil soil) {
        double week = soil.plantings().get(0).water().weeklyNeed().is();
        json.object()
                .put("bed", bed.bed().id())
                .put("texture", soil.soil().id())
                .put("rootDepthM", round(soil.rootDepthM()))
                .put("totalAvailableMm", round(soil.water().totalAvailableMm()))
                .put("guideMmAWeek", week)
                .put("guideLitresAWeek", round(RootZone.litres(week, soil.groundM2())))
                .put("takenForGranted", soil.remarks())
                .put("sources", soil.sources())
                .endObject();
    }

    private static void bed(JsonWriter json, GardenState state, GardenWater water, BedAccount account) {
        int today = account.index(state.date());
        double total = account.soil().water().totalAvailableMm();
        json.object()
                .put("bed", account.state().bed().id())
                .put("texture", account.soil().soil().id())
                .put("rootDepthM", round(account.soil().rootDepthM()))
                .put("totalAvailableMm", round(total))
                .put("heldMm", round(total - account.days().depletion(today)))
                .put("heldShare", round(account.days().heldShare(today)))
                .put("short", account.days().isShort(today))
                .put("daysShortThisSeason", account.daysShort(state.season().start(), state.date()))
                .put("standingDays", round(account.standingDays()));
        Outlook outlook = account.outlook(state.season().plus(1).end());
        day(json, "nextWatering", state.date(), outlook.likely());
        day(json, "shortWithoutRain", state.date(), outlook.rainless());
        outlook.plusMinusDays().ifPresent(days -> json.put("plusMinusDays", days));
        dose(json, "refillNow", account.refill(state.date()), account);
        dose(json, "refillWhenShort", account.refillWhenShort(), account);
        account.drift(water.data().figures()).ifPresent(drift -> json.put("driftMmPerWeek", round(drift.mmPerWeek())));
        json.put("takenForGranted", account.remarks());
        json.put("sources", account.soil().sources());
        json.endObject();
    }

    private static void day(JsonWriter json, String key, LocalDate today, OptionalInt days) {
        days.ifPresent(ahead -> json.put(key, today.plusDays(ahead + 1L).toString()));
    }

    private static void dose(JsonWriter json, String key, Dose dose, BedAccount account) {
        json.object(key)
                .put("mm", round(dose.mm()))
                .put("litres", round(dose.litres()))
                .put("litresEach", round(dose.litresEach()))
                .put("each", account.soil().each())
                .endObject();
    }

    private static double round(double value) {
        return Math.rint(value * 1000) / 1000;
    }
}
