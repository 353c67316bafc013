package org.oldwood.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;
import org.oldwood.garden.Season;
import org.oldwood.season.CropStages;
import org.oldwood.season.FrostYear;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Stages;

/** Words a crop's risk of frost by stage. */
final class FrostLines {
    private static final int AFTER_PETAL_FALL = 7;

    private FrostLines() {}

    static List<String> of(GardenClimate climate, Crop crop, Season season, Stages stages) {
        FrostYear year = new FrostYear(climate, season);
        List<String> lines = new ArrayList<>();
        lines.add(
                "Half the years have their last frost of spring after "
                        + year.last().map(LocalDate::toString).orElse("(hardly any)")
                        + " and their first of autumn before "
                        + year.first().map(LocalDate::toString).orElse("(hardly any)")
                        + ", by the climate's means.");
        Map<Stage, Figure> frost = CropStages.of(crop).frost();
        for (Stage stage : Stage.values()) {
            Figure harm = frost.get(stage);
            if (harm != null) {
                LocalDate from = stages.date(crop, season, stage).date();
                LocalDate to = end(crop, season, stages, stage, from);
                long percent = Math.round(100 * year.risk(harm.is(), from, to));
                lines.add(
                        stage.words()
                                + ": harm begins at "
                                + harm.inWords()
                                + " ("
                                + harm.seen().words()
                                + "); such a night from "
                                + from
                                + " to "
                                + to
                                + " in "
                                + percent
                                + " of 100 years");
            }
        }
        return lines;
    }

    /** A stage lasts until the next one begins. */
    private static LocalDate end(
            Crop crop, Season season, Stages stages, Stage stage, LocalDate from) {
        if (stage.compareTo(Stage.PETAL_FALL) >= 0) {
            return from.plusDays(AFTER_PETAL_FALL);
        }
        LocalDate next = stages.date(crop, season, next(stage)).date().minusDays(1);
        return next.isBefore(from) ? from : next;
    }

    private static Stage next(Stage stage) {
        for (Stage each : Stage.values()) {
            if (each.compareTo(stage) > 0) {
                return each;
            }
        }
        return stage;
    }
}
