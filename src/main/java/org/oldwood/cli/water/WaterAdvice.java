package org.oldwood.cli.water;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.water.BedDemand;
import org.oldwood.craft.water.CropWater;
import org.oldwood.craft.water.Dose;
import org.oldwood.craft.water.MoistureTrend;
import org.oldwood.craft.water.NextShort;
import org.oldwood.craft.water.WaterDays;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Seen;
import org.oldwood.facts.water.BedAccount;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.facts.water.WaterDoses;
import org.oldwood.words.Words;

/** Words what to do about a bed's water, and what its notes say. */
record WaterAdvice(Out out, GardenWater water, BedAccount account) {

    void print() {
        standing();
        if (account.days().isShort(account.index(water.state().date()))) {
            dose("Water now", account.refill(water.state().date()));
        } else {
            next();
        }
        WaterDoses.aDayInTubs(account, water.data().figures(), water.state().date()).ifPresent(this::say);
        critical();
        notes();
    }

    private void standing() {
        if (account.standingDays() <= water.data().figures().figure("wetThreshold").is()) { return; }
        String how = account.soil().plantings().stream()
                .map(one -> one.crop().name() + " stands that " + one.water().standsWet().word()).distinct()
                .collect(Collectors.joining(", "));
        say("Water stands: at the rate this soil drains it takes about %s days to sink; %s. Lead roof water elsewhere or open a channel."
                .formatted(Words.one(account.standingDays()), how));
    }

    private void next() {
        LocalDate until = water.state().season().plus(1).end();
        NextShort outlook = account.outlook(until);
        OptionalInt likely = outlook.likely();
        if (likely.isPresent()) {
            String spread = outlook.plusMinusDays().stream().mapToObj(days -> ", give or take " + days + " days")
                    .findFirst().orElse("");
            String words = account.state().bed().tubLitres().isPresent()
                    ? "Reckoned as open soil, it next runs short about "
                    : "Next watering about ";
            dose(words + after(likely.getAsInt()) + spread + " if nothing else changes", account.refillWhenShort());
        } else {
            say("In mean weather it does not run short before " + until + ".");
        }
        double spell = water.data().figures().figure("drySpell").is();
        if (outlook.rainless().isPresent() && outlook.rainless().getAsInt() < spell) {
            say("Without any rain it would be short by %s.".formatted(after(outlook.rainless().getAsInt())));
        }
    }

    private LocalDate after(int days) { return water.state().date().plusDays(days + 1L); }

    private void dose(String when, Dose dose) {
        say("%s: %s l in all, %s l per %s (%s mm on the %s m² that roots hold)%s. More runs through below them."
                .formatted(when, Words.whole(dose.litres()), Words.one(dose.litresEach()), account.soil().each(),
                        Words.whole(dose.mm()), Words.one(account.soil().groundM2()), tap(dose)));
        WaterDoses.hours(account.soil(), dose, water.data().figures()).ifPresent(this::say);
        WaterDoses.splits(account.soil(), water.data().figures(), this::isNow).ifPresent(this::say);
    }

    private String tap(Dose dose) {
        return account.state().bed().tapLitresPerMinute().stream()
                .mapToObj(tap -> ", %s min of the tap".formatted(Words.whole(dose.minutes(tap)))).findFirst()
                .orElse("");
    }

    private static String mark(Figure figure) {
        return figure.seen() == Seen.READ ? "source " + String.join(", ", figure.sources()) : figure.seen().words();
    }

    private void critical() {
        for (BedDemand.Planting planting : account.soil().plantings()) {
            for (CropWater.Period period : planting.water().critical()) {
                if (isNow(new WaterDoses.InCrop(period, planting.crop()))) {
                    say("Do not let it run short now, %s: %s. %s".formatted(planting.crop().name(), period.name(),
                            period.why()));
                    return;
                }
            }
        }
    }

    private boolean isNow(WaterDoses.InCrop each) {
        return each.holds(water.state().date(), water.state().season(), water.stages());
    }

    private void notes() {
        List<WaterDays.Correction> corrections = account.days().corrections();
        if (!corrections.isEmpty()) {
            WaterDays.Correction last = corrections.get(corrections.size() - 1);
            LocalDate day = account.days().date(last.day());
            say(last.drierMm() == 0 ? "The moisture note of %s agrees with the account.".formatted(day)
                    : "The moisture note of %s found it %s mm %s than the account; the account moved %s of the way."
                            .formatted(day, Words.one(Math.abs(last.drierMm())),
                                    last.drierMm() > 0 ? "drier" : "wetter", WaterWords.percent(last.weight())));
        }
        account.drift(water.data().figures()).ifPresent(this::drift);
    }

    private void drift(MoistureTrend drift) {
        say("Your last %s notes all found it %s than the account: by about %s mm a week. %s".formatted(drift.notes(),
                drift.drier() ? "drier" : "wetter", Words.one(Math.abs(drift.mmPerWeek())),
                drift.drier()
                        ? "Look for thirsty roots nearby, a wall that keeps rain off, or coarser soil than recorded."
                        : "Look for water that runs in, more shade, heavier soil than recorded, or roots that"
                                + " reach deeper than is taken for granted."));
    }

    /** Where sources differ, and what the account takes. */
    void views() {
        CropWater crop = account.soil().plantings().get(0).water();
        String name = account.soil().plantings().get(0).crop().name();
        Figure depletion = crop.group().depletion();
        Figure cautious = crop.group().cautiousDepletion();
        out.paragraph(0, "What this rests on, for " + name + ", and other views of it:");
        item("short when %s of the water is gone at a need of 5 mm a day (%s); others water at %s (%s)".formatted(
                WaterWords.percent(depletion.is()), mark(depletion), WaterWords.percent(cautious.is()),
                mark(cautious)));
        item("full-grown roots %s deep, where most of them are (%s); the deepest go to %s-%s m (%s)".formatted(
                crop.rootDepth().plain(), mark(crop.rootDepth()), crop.group().rootDepth().low(),
                crop.group().rootDepth().high(), mark(crop.group().rootDepth())));
        crop.trialDeficit().ifPresent(
                trial -> item("a trial watered when " + trial.plain() + " were missing (" + mark(trial) + ")"));
        Figure week = crop.weeklyNeed();
        item("the common guide: " + week.plain() + ", rain counted (" + mark(week) + ")");
        out.paragraph(0, "Sources: " + String.join(", ", account.soil().sources()) + " (oldwood sources KEY)");
    }

    private void item(String words) { out.hanging("  - ", 4, words); }

    private void say(String words) { out.paragraph(2, words); }
}
