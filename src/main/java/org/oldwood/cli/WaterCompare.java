package org.oldwood.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.oldwood.garden.Bed;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.Season;
import org.oldwood.water.BedAccount;

/** Sets the beds side by side in a mean season, the one that is short least first. */
final class WaterCompare {
    private WaterCompare() {}

    /** The season after today's runs on means alone and without watering. */
    static Season meanSeason(GardenState state) {
        return state.season().plus(1);
    }

    /** First day of the half year in which plants draw. */
    static LocalDate from(Season season) {
        return season.day(4, 1);
    }

    /** Its last day. */
    static LocalDate to(Season season) {
        return season.day(9, 30);
    }

    static List<BedAccount> ordered(GardenState state, List<BedAccount> accounts) {
        Season season = meanSeason(state);
        List<BedAccount> ordered = new ArrayList<>(accounts);
        ordered.sort(
                Comparator.comparingInt((BedAccount one) -> one.daysShort(from(season), to(season)))
                        .thenComparing(one -> -one.meanHeld(from(season), to(season))));
        return ordered;
    }

    static void print(Out out, GardenState state, List<BedAccount> accounts) {
        Season season = meanSeason(state);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("bed", "holds", "mean", "short", "roof", "roots", "light, wind"));
        for (BedAccount one : ordered(state, accounts)) {
            rows.add(row(one, season));
        }
        out.columns(0, rows);
        out.line();
        out.paragraph(
                0,
                "Mean season "
                        + season.label()
                        + ", "
                        + from(season)
                        + " to "
                        + to(season)
                        + ", without watering. holds: mm that the roots can draw when the ground is"
                        + " full; mean: share of it held; short: days; roof: litres from 10 mm of"
                        + " rain; roots: share that neighbours' roots take. The damp, airy place"
                        + " stands first.");
    }

    private static List<String> row(BedAccount one, Season season) {
        Bed bed = one.state().bed();
        return List.of(
                bed.id(),
                WaterWords.whole(one.soil().water().totalAvailableMm()) + " mm",
                WaterWords.percent(one.meanHeld(from(season), to(season))),
                one.daysShort(from(season), to(season)) + " d",
                WaterWords.whole(one.soil().water().roof().litres(10)) + " l",
                WaterWords.percent(bed.competing()),
                light(bed));
    }

    private static String light(Bed bed) {
        return (bed.shade() == 0 ? "full sun" : WaterWords.percent(bed.shade()) + " shade")
                + (bed.windy() ? ", windy" : "");
    }
}
