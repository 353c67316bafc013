package org.oldwood.facts.water;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.oldwood.craft.water.CropWater;
import org.oldwood.craft.water.Dose;
import org.oldwood.craft.water.RootZone;
import org.oldwood.craft.water.WaterFigures;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.garden.BedState;
import org.oldwood.garden.EntryKind;
import org.oldwood.season.Season;
import org.oldwood.season.Stages;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Words how much to water: what refills a bed, and what new plants want in a dry week. */
public final class WaterDoses {
    private WaterDoses() {}

    public static Amount refill(BedState bed, BedSoil soil, GardenWater water, Situation situation) {
        Optional<BedAccount> account = water.account(bed);
        double ready = RootZone.readilyAvailable(soil.water().totalAvailableMm(), soil.water().fraction());
        double missing = account.map(known -> known.days().depletion(known.index(situation.day()))).orElse(ready);
        boolean dryNow = missing >= ready;
        Dose dose = Dose.toRefill(dryNow ? missing : ready, soil.groundM2(), soil.plants());
        List<String> lines = new ArrayList<>();
        lines.add("%s l per %s; more than %s l at once runs through below the roots."
                .formatted(litres(dose.litresEach()), soil.each(), litres(dose.litres())));
        bed.bed().tapLitresPerMinute().ifPresent(tap -> lines.add("That is %s min with a tap of %s l a minute."
                .formatted(Math.round(dose.minutes(tap)), Words.fixed(tap, 1))));
        WaterFigures figures = water.data().figures();
        hours(soil, dose, figures).ifPresent(lines::add);
        splits(soil, figures, each -> each.holds(situation.day(), situation.season(), water.stages()))
                .ifPresent(lines::add);
        account.flatMap(known -> aDayInTubs(known, figures, situation.day())).ifPresent(lines::add);
        soil.remarks().forEach(remark -> lines.add("Taken for granted: " + remark + "."));
        return Amount.of(Words.nearest(dose.litres(), 1), "l",
                "about " + litres(dose.litres())
                        + (bed.bed().tubLitres().isPresent() ? " l to fill the tubs, then some every day"
                                : " l on the ground that the roots hold"),
                arithmetic(soil, dose, dryNow), soil.sources()).withLines(lines).withNoted(noted(dose.litres()));
    }

    private static List<String> arithmetic(BedSoil soil, Dose dose, boolean dryNow) {
        double total = soil.water().totalAvailableMm();
        return List.of(
                "%s holds %s mm a metre for roots, which are %s cm deep here: %s mm".formatted(soil.soil().name(),
                        Words.fixed(1000 * soil.soil().availableShare(), 1), Words.fixed(100 * soil.rootDepthM(), 1),
                        Words.fixed(total, 1)),
                dryNow ? Words.fixed(dose.mm(), 1) + " mm of it are missing by the account"
                        : "plants draw %s %% of it without stress: %s mm to give when that is gone"
                                .formatted(Words.fixed(100 * soil.water().fraction(), 1), Words.fixed(dose.mm(), 1)),
                "%s mm × %s m² = %s l (1 mm on 1 m² is 1 l)".formatted(Words.fixed(dose.mm(), 1),
                        Words.fixed(soil.groundM2(), 1), litres(dose.litres())));
    }

    /** How long soil takes that is slow to take it in. */
    public static Optional<String> hours(BedSoil soil, Dose dose, WaterFigures figures) {
        Figure intake = soil.soil().intake();
        double hours = dose.hours(intake.low());
        return hours < figures.figure("slowIntake").is() ? Optional.empty()
                : Optional.of("This soil takes it in over %s h or more (%s); give it in turns if it stands."
                        .formatted(Math.round(hours), intake.seen().words()));
    }

    /** What to beware of while fruit would split. */
    public static Optional<String> splits(BedSoil soil, WaterFigures figures, Predicate<InCrop> isNow) {
        Figure share = figures.figure("ripeDose");
        Figure wait = figures.figure("ripeWait");
        return soil.plantings().stream()
                .flatMap(planting -> planting.water().splits().stream()
                        .filter(period -> isNow.test(new InCrop(period, planting.crop()))))
                .findFirst()
                .map(period -> "%s Give at most %s %% at once, the rest %s days later (%s).".formatted(period.why(),
                        Math.round(100 * share.is()), Math.round(wait.is()), share.seen().words()));
    }

    /** What a tub wants on a day, whose roots cannot go deeper for it. */
    public static Optional<String> aDayInTubs(BedAccount account, WaterFigures figures, LocalDate day) {
        if (account.state().bed().tubLitres().isEmpty()) { return Optional.empty(); }
        Figure times = figures.figure("tubEvaporation");
        double mm = account.weather().et0(account.index(day));
        double litres = RootZone.litres(mm, account.state().bed().areaM2()) / account.soil().plants();
        return Optional.of(
                "Once full a tub wants about %s to %s l a day per %s on %s: its top × %s mm of evaporation × %s to %s (%s). Water until it runs out below."
                        .formatted(Words.fixed(litres * times.low(), 1), Words.fixed(litres * times.high(), 1),
                                account.soil().each(), Dates.shortDay(day), Words.fixed(mm, 1),
                                Words.amount(times.low()), Words.amount(times.high()), times.seen().words()));
    }

    /** A period of a crop's year. */
    public record InCrop(CropWater.Period period, Crop crop) {
        public boolean holds(LocalDate day, Season season, Stages stages) {
            return !day.isBefore(period.from().in(season, crop, stages))
                    && !day.isAfter(period.to().in(season, crop, stages));
        }
    }

    public static Amount newPlants(GardenWater water, Situation situation) {
        Figure radius = water.data().figures().figure("newRootRadius");
        Figure week = situation.subject().crop().flatMap(crop -> CropWater.of(crop, water.data().figures()))
                .map(CropWater::weeklyNeed).orElseThrow();
        double metres = situation.subject().metres();
        double ground = metres > 0 ? metres * 2 * radius.is()
                : situation.subject().bushes() * Math.PI * radius.is() * radius.is();
        double litres = RootZone.litres(week.is(), ground);
        List<String> sources = new ArrayList<>(week.sources());
        sources.addAll(radius.sources());
        return Amount
                .of(Words.nearest(litres, 1), "l", "about " + Math.round(litres) + " l in a week without rain",
                        List.of("%s mm a week%s × %s m² of young roots = %s l".formatted(Words.fixed(week.is(), 1),
                                week.seen().beside(), Words.fixed(ground, 1), litres(litres))),
                        sources)
                .withNoted(noted(litres));
    }

    private static List<Amount.Noted> noted(double litres) {
        long whole = Math.max(1, Math.round(litres));
        return List.of(new Amount.Noted(EntryKind.WATERED, Map.of("litres", Long.toString(whole))));
    }

    private static String litres(double litres) {
        return litres < 10 ? Words.fixed(litres, 1) : Long.toString(Math.round(litres));
    }
}
