package org.oldwood.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.season.sums.ChillReport;

/** Gives each crop of one garden its stage dates. Same inputs, same dates. */
public interface Stages {
    /**
     * The date of a stage in a season. {@link Stage#DORMANT} lies at the season's beginning (the leaf fall before it),
     * {@link Stage#LEAF_FALL_DONE} at its end.
     */
    StageDate date(Crop crop, Season season, Stage stage);

    /** The day of a stage alone, as {@link #date} has it, for those who show no words of it. */
    default LocalDate day(Crop crop, Season season, Stage stage) {
        return date(crop, season, stage).date();
    }

    /** The climate and weather that the dates rest on; empty where none is known. */
    default Optional<GardenClimate> climate() {
        return Optional.empty();
    }

    /** What was noted as seen of a crop and can hardly be, as questions. */
    default List<String> doubts(Crop crop) {
        return List.of();
    }

    /** The chill of the winter before a season's spring beside what a crop wants; empty where no climate is known. */
    default Optional<ChillReport> chill(Crop crop, Season season) {
        return Optional.empty();
    }
}
