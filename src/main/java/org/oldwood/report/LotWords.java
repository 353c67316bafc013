package org.oldwood.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LikelyDay;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.Method;
import org.oldwood.craft.cuttings.Milestone;
import org.oldwood.craft.cuttings.survival.Phase;
import org.oldwood.craft.cuttings.survival.Spread;
import org.oldwood.craft.cuttings.survival.Survival;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Words lots of cuttings for people. */
public final class LotWords {
    private LotWords() {}

    /** Where a lot stands: {@code 12 struck 20 Nov 2026; 10 alive on 1 Jun 2027}. */
    public static String stands(LotCounts counts) {
        String struck = counts.struck() + " struck " + Dates.shortDay(counts.struckOn());
        if (counts.plantedOutOn().isPresent()) {
            return "%s; %s planted out %s".formatted(struck, counts.alive(),
                    Dates.shortDay(counts.plantedOutOn().get()));
        }
        String how = counts.liftedOn().isPresent() ? " lifted " : " alive on ";
        return counts.wasCounted() ? struck + "; " + counts.alive() + how + Dates.shortDay(counts.countedOn())
                : struck + "; never counted";
    }

    /**
     * What comes next after {@code day}, or is due now, or that all has come: {@code next: lift 10 Nov 2027 ± 21 days
     * to 10 Mar 2028 ± 21 days}.
     */
    public static String next(Forecast forecast, LocalDate day) {
        return Milestone.of(forecast.line(), forecast.course()).stream()
                .filter(it -> !it.to().date().isBefore(day) && !isNoted(it, forecast)).findFirst()
                .map(it -> next(it, day)).orElse("nothing more: it bears its full crop");
    }

    /** Whether it was done, by the journal: what was lifted today is not to be lifted today. */
    private static boolean isNoted(Milestone it, Forecast forecast) {
        boolean oneDay = it.from().equals(it.to());
        return it.step() == Milestone.Step.STRIKE
                || (forecast.line().lifted() && oneDay && it.step().compareTo(Milestone.Step.CUT_BACK) < 0);
    }

    private static String next(Milestone step, LocalDate day) {
        return step.from().date().isAfter(day) ? "next: " + step.step().words() + " " + when(step)
                : "now: " + step.step().words() + ", until " + around(step.to());
    }

    /** How many plants: {@code 7.9 plants (10 % 6, 50 % 8, 90 % 10)}. */
    public static String plants(Forecast forecast) {
        Spread plants = forecast.plants();
        return "%s plants (10 %% %s, 50 %% %s, 90 %% %s)".formatted(Words.one(plants.mean()), plants.quantile(0.1),
                plants.quantile(0.5), plants.quantile(0.9));
    }

    /** The life of a lot, a row a step: season, step, when. */
    public static List<List<String>> timeline(Forecast forecast) {
        List<List<String>> rows = new ArrayList<>();
        String last = "";
        for (Milestone step : Milestone.of(forecast.line(), forecast.course())) {
            String season = step.season().label();
            rows.add(List.of(season.equals(last) ? "" : season, step.step().words(), when(step)));
            last = season;
        }
        return rows;
    }

    public static List<List<String>> crops(Forecast forecast) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("season", "share", "expected", "10 %", "50 %", "90 %"));
        for (Forecast.SeasonCrop crop : forecast.crops()) {
            rows.add(List.of(crop.season().label(), Math.round(crop.share() * 100) + " %",
                    Words.one(crop.expectedKg()) + " kg", Words.one(crop.lowKg()) + " kg",
                    Words.one(crop.middleKg()) + " kg", Words.one(crop.highKg()) + " kg"));
        }
        return rows;
    }

    /** What to beware of: a strike outside its window, and the method's own cautions. */
    public static List<String> warnings(Forecast forecast) {
        return Stream.concat(outOfSeason(forecast).stream(), forecast.course().method().cautions().stream()).toList();
    }

    /** That a lot was struck outside its window, if it was. */
    public static Optional<String> outOfSeason(Forecast forecast) {
        long outside = forecast.line().daysOutside();
        if (outside == 0) { return Optional.empty(); }
        String where = outside < 0 ? "before the window opens (" + around(forecast.line().opens())
                : "after the window closed (" + around(forecast.line().closes());
        return Optional.of("Struck " + Math.abs(outside) + " days " + where + "): fewer may root than the rates say.");
    }

    /**
     * On what the numbers and the first crop depend: the rates, how each was seen, and what the garden's own lots made
     * of it.
     */
    public static List<String> grounds(Forecast forecast, Survival survival) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<Phase, Method.PhaseFigures> each : forecast.course().method().phases().entrySet()) {
            Method.PhaseFigures pair = each.getValue();
            long learnt = Math.round(survival.rate(each.getKey()).mean() * 100);
            lines.add("%s: %s live (%s; worth %s), %s%s".formatted(each.getKey().words(), pair.rate().plain(),
                    pair.rate().seen().words(), pair.weight().inWords(), String.join(", ", pair.rate().sources()),
                    learnt == Math.round(pair.rate().is()) ? ""
                            : "; with this garden's own cuttings " + learnt + " %"));
        }
        lines.add("First crop reckoned for plants " + forecast.course().cut().words() + ".");
        lines.add("Yields: " + String.join(", ", forecast.course().bears().sources()));
        return lines;
    }

    private static String when(Milestone step) {
        return step.from().equals(step.to()) ? around(step.from()) : around(step.from()) + " to " + around(step.to());
    }

    /** {@code 10 Nov 2027 ± 21 days}. */
    public static String around(LikelyDay day) {
        return Dates.shortDay(day.date()) + (day.plusMinusDays() == 0 ? "" : " ± " + day.plusMinusDays() + " days");
    }
}
