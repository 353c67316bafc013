package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.craft.water.Dose;
import org.oldwood.facts.water.BedAccount;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/** The water of a bed over the season, drawn and in words. */
final class WaterChart {
    private static final double WHOLE = 100;
    private static final int STEP = 3;

    private WaterChart() {}

    static Optional<BedCard.Water> of(Ground ground, BedState bed) {
        return account(ground, bed).map(it -> of(it, ground.state()));
    }

    private static Optional<BedAccount> account(Ground ground, BedState bed) {
        return ground.water().lacking().isPresent() ? Optional.empty() : ground.water().account(bed);
    }

    private static BedCard.Water of(BedAccount account, GardenState state) {
        Season season = state.season();
        Axis axis = Axis.of(season);
        StringBuilder line = new StringBuilder();
        for (LocalDate day = season.start(); axis.holds(day); day = day.plusDays(STEP)) {
            double share = account.days().heldShare(account.index(day));
            line.append(line.isEmpty() ? "M" : "L").append(Numbers.plain(axis.middle(day))).append(' ')
                    .append(Numbers.plain(WHOLE * (1 - share)));
        }
        double now = account.days().heldShare(account.index(state.date()));
        return new BedCard.Water(line.toString(), Numbers.plain(axis.middle(state.date())), Math.round(WHOLE * now),
                Days.day(season.start()), Days.day(season.end()));
    }

    /** What it holds and when it will want water; nothing where that cannot be said. */
    static String inWords(Ground ground, BedState bed) {
        if (bed.plants().isEmpty()) { return "No plant stands here."; }
        Optional<BedAccount> account = account(ground, bed);
        if (account.isEmpty()) { return ""; }
        return held(account.get(), ground);
    }

    private static String held(BedAccount account, Ground ground) {
        LocalDate today = ground.state().date();
        int index = account.index(today);
        double total = account.soil().water().totalAvailableMm();
        String held = "About %s mm of %s mm that the roots can draw. "
                .formatted(Math.round(total - account.days().depletion(index)), Math.round(total));
        if (account.days().isShort(index)) { return held + "Short now: " + dose(account, account.refill(today)); }
        OptionalInt likely = account.outlook(ground.state().season().plus(1).end()).likely();
        return likely.isPresent()
                ? "%sIn mean weather it wants water about %s: %s".formatted(held,
                        Days.day(today.plusDays(likely.getAsInt() + 1L)), dose(account, account.refillWhenShort()))
                : held + "In mean weather it does not run short before the next season is over.";
    }

    private static String dose(BedAccount account, Dose dose) {
        return "%s l in all, %s l per %s.".formatted(Math.round(dose.litres()), Words.one(dose.litresEach()),
                account.soil().each());
    }
}
