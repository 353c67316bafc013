package org.oldwood.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.Timeline;
import org.oldwood.season.Season;

/**
 * Lots of cuttings side by side, a column a season: where each stands and what it bears.
 *
 * @param rows the heading, a row a lot, and the sum
 */
public record SeasonTable(List<List<String>> rows) {
    /** So many seasons fit a line. */
    private static final int MOST = 7;

    public SeasonTable {
        rows = List.copyOf(rows);
    }

    /** The table of lots by id from the season of a day on; empty where there are none. */
    public static Optional<SeasonTable> of(Map<String, Forecast> lots, Season now) {
        if (lots.isEmpty()) { return Optional.empty(); }
        List<Season> seasons = seasons(lots, now);
        List<List<String>> rows = new ArrayList<>();
        List<String> heading = new ArrayList<>(List.of("season"));
        seasons.forEach(season -> heading.add(season.label()));
        rows.add(heading);
        double[] sums = new double[seasons.size()];
        lots.forEach((id, forecast) -> rows.add(row(id, forecast, seasons, sums)));
        if (lots.size() > 1) {
            List<String> all = new ArrayList<>(List.of("all"));
            for (double sum : sums) {
                all.add(sum == 0 ? "" : kilograms(sum));
            }
            rows.add(all);
        }
        return Optional.of(new SeasonTable(rows));
    }

    private static List<Season> seasons(Map<String, Forecast> lots, Season now) {
        Season last = now;
        for (Forecast forecast : lots.values()) {
            Season full = forecast.line().fullCrop();
            last = full.compareTo(last) > 0 ? full : last;
        }
        List<Season> seasons = new ArrayList<>();
        for (Season season = now; season.compareTo(last) <= 0 && seasons.size() < MOST; season = season.plus(1)) {
            seasons.add(season);
        }
        return seasons;
    }

    private static List<String> row(String id, Forecast forecast, List<Season> seasons, double[] sums) {
        List<String> row = new ArrayList<>(List.of(id));
        for (int i = 0; i < seasons.size(); i++) {
            Season season = seasons.get(i);
            double kg = forecast.expectedKg(season);
            sums[i] += kg;
            row.add(kg > 0 ? kilograms(kg) : stand(forecast.line(), season));
        }
        return row;
    }

    /** What a lot does in a season without fruit. */
    private static String stand(Timeline line, Season season) {
        if (season.compareTo(line.inPlace()) >= 0) { return "grows"; }
        int since = season.compareTo(line.firstSeason());
        return since < 0 ? "" : since == 0 ? "roots" : "nursery";
    }

    private static String kilograms(double kg) { return LotWords.number(kg) + " kg"; }
}
