package org.oldwood.cli;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Season;
import org.oldwood.season.Stages;
import org.oldwood.water.BedAccount;
import org.oldwood.water.BedSoil;
import org.oldwood.water.CropWater;
import org.oldwood.water.Dose;
import org.oldwood.water.Drift;
import org.oldwood.water.GardenWater;
import org.oldwood.water.Outlook;
import org.oldwood.water.RootZone;
import org.oldwood.water.Soil;
import org.oldwood.water.WaterDays;

/** Words the water of a bed: what it holds, the curve, what came and what to do. */
final class WaterWords {
    private static final int WEEKS_BACK = 4;
    private static final int WEEKS_AHEAD = 6;
    private static final int BAR = 30;

    private final Out out;
    private final GardenState state;
    private final GardenWater water;

    WaterWords(Out out, GardenState state, GardenWater water) {
        this.out = out;
        this.state = state;
        this.water = water;
    }

    /** What can be said without a climate: what the ground holds, and the common guide. */
    void cannotSay(Iterable<BedState> beds) {
        out.paragraph(
                0,
                "How much water the beds hold cannot be said: " + water.lacking().orElse("") + ".");
        for (BedState bed : beds) {
            water.soil(bed, state.season()).ifPresent(soil -> guide(bed, soil));
        }
    }

    private void guide(BedState bed, BedSoil soil) {
        Figure week = soil.plantings().get(0).water().weeklyNeed();
        out.line();
        out.line(title(bed));
        out.paragraph(
                2,
                "The roots reach "
                        + whole(soil.water().totalAvailableMm())
                        + " mm of water when the ground is full. The common guide is "
                        + week.inWords()
                        + " in growth, rain counted: "
                        + whole(RootZone.litres(week.is(), soil.groundM2()))
                        + " l a week in all, "
                        + one(RootZone.litres(week.is(), soil.groundM2()) / soil.plants())
                        + " l per "
                        + soil.each()
                        + " (source "
                        + String.join(", ", week.sources())
                        + ").");
        remarks(soil);
    }

    void bed(BedState bed) {
        Optional<BedAccount> found = water.account(bed);
        out.line(title(bed));
        if (found.isEmpty()) {
            out.paragraph(2, "No plant stands here.");
            out.line();
            return;
        }
        BedAccount account = found.get();
        held(account);
        curve(account);
        advice(account);
        notes(account);
        remarks(account.soil());
        out.line();
    }

    private static String title(BedState bed) {
        return bed.bed().name() + " (" + bed.bed().id() + ")";
    }

    private void held(BedAccount account) {
        WaterDays days = account.days();
        int today = account.index(state.date());
        double total = account.soil().water().totalAvailableMm();
        out.paragraph(
                2,
                "On "
                        + state.date()
                        + " it holds about "
                        + whole(total - days.depletion(today))
                        + " of "
                        + whole(total)
                        + " mm that the roots can draw ("
                        + percent(days.heldShare(today))
                        + "), "
                        + account.soil().soil().name()
                        + ", roots "
                        + whole(100 * account.soil().rootDepthM())
                        + " cm deep. Short on "
                        + account.daysShort(state.season().start(), state.date())
                        + " days of this season so far.");
        if (account.standingDays() > water.data().figures().figure("wetThreshold").is()) {
            out.paragraph(
                    2,
                    "Water stands: at the rate this soil drains it takes about "
                            + one(account.standingDays())
                            + " days to sink. Lead roof water elsewhere or open a channel.");
        }
    }

    private void curve(BedAccount account) {
        LocalDate first = state.date().minusWeeks(WEEKS_BACK);
        for (int week = 0; week <= WEEKS_BACK + WEEKS_AHEAD; week++) {
            LocalDate day = first.plusWeeks(week);
            int index = account.index(day);
            int full = (int) Math.round(BAR * account.days().heldShare(index));
            out.line(
                    "  "
                            + day
                            + (day.equals(state.date()) ? " > " : "   ")
                            + "#".repeat(full)
                            + ".".repeat(BAR - full)
                            + " "
                            + percent(account.days().heldShare(index))
                            + (account.days().isShort(index) ? " short" : ""));
        }
    }

    private void advice(BedAccount account) {
        int today = account.index(state.date());
        if (account.days().isShort(today)) {
            dose("Water now", account, account.refill(state.date()));
        } else {
            next(account);
        }
        critical(account);
    }

    private void next(BedAccount account) {
        Season season = state.season();
        LocalDate until = season.plus(1).end();
        Outlook outlook = account.outlook(until);
        OptionalInt likely = outlook.likely();
        if (likely.isPresent()) {
            LocalDate day = state.date().plusDays(likely.getAsInt() + 1L);
            String spread =
                    outlook.plusMinusDays().isPresent()
                            ? ", give or take " + outlook.plusMinusDays().getAsInt() + " days"
                            : "";
            dose(
                    "Next watering about " + day + spread + " if nothing else changes",
                    account,
                    account.refillWhenShort());
        } else {
            out.paragraph(2, "In mean weather it does not run short before " + until + ".");
        }
        outlook.earliest()
                .ifPresent(
                        days ->
                                out.paragraph(
                                        2,
                                        "Without any rain it would be short by "
                                                + state.date().plusDays(days + 1L)
                                                + "."));
    }

    private void dose(String when, BedAccount account, Dose dose) {
        out.paragraph(
                2,
                when
                        + ": "
                        + whole(dose.litres())
                        + " l in all, "
                        + one(dose.litresEach())
                        + " l per "
                        + account.soil().each()
                        + " ("
                        + whole(dose.mm())
                        + " mm on the "
                        + one(account.soil().groundM2())
                        + " m² that roots hold). More runs through below them.");
        splits(account);
    }

    private void splits(BedAccount account) {
        account.soil().plantings().stream()
                .filter(one -> one.water().splits().isPresent())
                .filter(one -> during(one.water().splits().get(), one.crop()))
                .findFirst()
                .ifPresent(
                        one ->
                                out.paragraph(
                                        2,
                                        one.water().splits().get().why()
                                                + " Give at most half at once, the rest two days"
                                                + " later."));
    }

    private void critical(BedAccount account) {
        for (var planting : account.soil().plantings()) {
            for (CropWater.Period period : planting.water().critical()) {
                if (during(period, planting.crop())) {
                    out.paragraph(
                            2,
                            "Do not let it run short now, "
                                    + planting.crop().name()
                                    + ": "
                                    + period.name()
                                    + ". "
                                    + period.why());
                    return;
                }
            }
        }
    }

    private boolean during(CropWater.Period period, Crop crop) {
        Stages stages = water.stages();
        LocalDate from = period.from().in(state.season(), crop, stages);
        LocalDate to = period.to().in(state.season(), crop, stages);
        return !state.date().isBefore(from) && !state.date().isAfter(to);
    }

    private void notes(BedAccount account) {
        var corrections = account.days().corrections();
        if (!corrections.isEmpty()) {
            WaterDays.Correction last = corrections.get(corrections.size() - 1);
            out.paragraph(
                    2,
                    "The moisture note of "
                            + account.days().date(last.day())
                            + " found it "
                            + one(Math.abs(last.drierMm()))
                            + (last.drierMm() >= 0 ? " mm drier" : " mm wetter")
                            + " than the account; the account moved "
                            + percent(last.weight())
                            + " of the way.");
        }
        account.drift(water.data().figures()).ifPresent(this::drift);
    }

    private void drift(Drift drift) {
        out.paragraph(
                2,
                "Your last "
                        + drift.notes()
                        + " notes all found it "
                        + (drift.drier() ? "drier" : "wetter")
                        + " than the account: by about "
                        + one(Math.abs(drift.mmPerWeek()))
                        + " mm a week. "
                        + (drift.drier()
                                ? "Look for thirsty roots nearby, a wall that keeps rain off, or"
                                        + " coarser soil than recorded."
                                : "Look for water that runs in, more shade, or heavier soil than"
                                        + " recorded."));
    }

    private void remarks(BedSoil soil) {
        soil.remarks().forEach(remark -> out.paragraph(2, "Taken for granted: " + remark + "."));
    }

    static String range(Soil.FeelClass one) {
        return one.low() == one.high()
                ? percent(one.low())
                : Math.round(100 * one.low()) + "-" + percent(one.high());
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    static String whole(double value) {
        return Long.toString(Math.round(value));
    }

    static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
