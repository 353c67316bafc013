package org.oldwood.cli.water;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.RootZone;
import org.oldwood.craft.water.Soil;
import org.oldwood.craft.water.WaterDays;
import org.oldwood.crop.Figure;
import org.oldwood.facts.water.BedAccount;
import org.oldwood.facts.water.BedSoil;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.words.Words;

/** Words the water of a bed: what it holds, the curve, what came and what to do. */
record WaterWords(Out out, GardenState state, GardenWater water) {
    private static final int WEEKS_BACK = 4;
    private static final int WEEKS_AHEAD = 6;
    private static final int BAR = 30;

    /** What can be said without a climate: what the ground holds, and the common guide. */
    void cannotSay(Iterable<BedState> beds) {
        out.paragraph(0, "How much water the beds hold cannot be said: " + water.lacking().orElse("") + ".");
        beds.forEach(bed -> water.soil(bed, state.season()).ifPresent(soil -> guide(bed, soil)));
    }

    private void guide(BedState bed, BedSoil soil) {
        Figure week = soil.plantings().get(0).water().weeklyNeed();
        out.line();
        out.line(title(bed));
        out.paragraph(2,
                "The roots reach %s mm of water when the ground is full. The common guide is %s in growth, rain counted: %s l a week in all, %s l per %s (source %s)."
                        .formatted(Words.whole(soil.water().totalAvailableMm()), week.inWords(),
                                Words.whole(RootZone.litres(week.is(), soil.groundM2())),
                                Words.one(RootZone.litres(week.is(), soil.groundM2()) / soil.plants()), soil.each(),
                                String.join(", ", week.sources())));
        remarks(soil.remarks());
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
        new WaterAdvice(out, water, account).print();
        remarks(account.remarks());
        out.line();
    }

    /** What stands behind a bed's figures where sources differ; for a bed that was asked for. */
    void views(BedState bed) {
        water.account(bed).ifPresent(account -> new WaterAdvice(out, water, account).views());
    }

    private static String title(BedState bed) { return bed.bed().name() + " (" + bed.bed().id() + ")"; }

    private void held(BedAccount account) {
        WaterDays days = account.days();
        int today = account.index(state.date());
        double total = account.soil().water().totalAvailableMm();
        double driest = total - account.now().driestMm();
        double wettest = total - account.now().wettestMm();
        String unsure = wettest - driest < 2 ? ""
                : ", %s to %s mm by what fell and was drawn on days that were not measured"
                        .formatted(Words.whole(driest), Words.whole(wettest));
        out.paragraph(2,
                "On %s it holds about %s mm of %s mm that the roots can draw (%s%s), %s, roots %s cm deep. Short on %s of this season so far."
                        .formatted(state.date(), Words.whole(total - days.depletion(today)), Words.whole(total),
                                percent(days.heldShare(today)), unsure, account.soil().soil().name(),
                                Words.whole(100 * account.soil().rootDepthM()),
                                Words.count(account.daysShort(state.season().start(), state.date()), "day", "days")));
    }

    private void curve(BedAccount account) {
        LocalDate first = state.date().minusWeeks(WEEKS_BACK);
        for (int week = 0; week <= WEEKS_BACK + WEEKS_AHEAD; week++) {
            LocalDate day = first.plusWeeks(week);
            int index = account.index(day);
            int full = (int) Math.round(BAR * account.days().heldShare(index));
            out.line("  %s%s%s%s %s%s".formatted(day, day.equals(state.date()) ? " > " : "   ", "#".repeat(full),
                    ".".repeat(BAR - full), percent(account.days().heldShare(index)),
                    account.days().isShort(index) ? " short" : ""));
        }
    }

    private void remarks(List<String> remarks) {
        remarks.forEach(remark -> out.paragraph(2, "Taken for granted: " + remark + "."));
    }

    static String range(Soil.FeelClass one) {
        return one.low() == one.high() ? percent(one.low()) : Math.round(100 * one.low()) + "-" + percent(one.high());
    }

    static String percent(double share) { return Math.round(100 * share) + " %"; }
}
