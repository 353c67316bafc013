package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;

/** What was seen against what is modelled. */
class SightingsTest {
    private static final Crops CROPS = new Crops(Documents.bundled());
    private static final Season SEASON = new Season(2027, Hemisphere.NORTH);

    private static final ModelledStages MODEL = stages(List.of());

    @ParameterizedTest
    @ValueSource(strings = {"blackcurrant", "gooseberry", "redcurrant", "summer-raspberry", "blueberry",
            "trailing-blackberry", "haskap", "autumn-raspberry"})
    void a_bud_swell_ten_days_early_moves_every_later_stage_earlier(String id) {
        Crop crop = CROPS.get(id);
        LocalDate seen = MODEL.date(crop, SEASON, Stage.BUD_SWELL).date().minusDays(10);

        ModelledStages stages = stages(List.of(new Sighting(id, Stage.BUD_SWELL, SEASON, seen)));

        assertThat(stages.date(crop, SEASON, Stage.BUD_SWELL).basis()).isEqualTo(Basis.SEEN);
        assertThat(stages.date(crop, SEASON, Stage.BUD_SWELL).plusMinusDays()).isZero();
        for (Stage stage : Stage.values()) {
            if (stage.compareTo(Stage.BUD_SWELL) > 0) {
                StageDate date = stages.date(crop, SEASON, stage);
                assertThat(date.date()).as(stage.key()).isBefore(MODEL.date(crop, SEASON, stage).date());
                assertThat(date.words()).contains("moved by bud swell, seen on " + seen);
            }
        }
    }

    @Test
    void ripening_follows_the_flower_that_was_seen_by_its_heat_not_by_a_fixed_shift() {
        Crop crop = CROPS.get("blackcurrant");
        Stages model = ModelledStagesTest.stages("cambridge", 52.2, Weather.none(), Sightings.none());
        LocalDate seen = model.date(crop, SEASON, Stage.FIRST_FLOWER).date().minusDays(8);

        Stages stages = ModelledStagesTest.stages("cambridge", 52.2, Weather.none(),
                Sightings.of(List.of(new Sighting(crop.id(), Stage.FIRST_FLOWER, SEASON, seen))));

        assertThat(days(model, stages, crop, Stage.RIPE)).isBetween(-7L, -2L);
        assertThat(stages.date(crop, SEASON, Stage.RIPE).plusMinusDays())
                .isLessThan(model.date(crop, SEASON, Stage.RIPE).plusMinusDays());
    }

    /** More seasons of the same difference move the forecast further, never past the difference. */
    @Property(tries = 60)
    void past_seasons_move_the_forecast_the_right_way_and_more_of_them_move_it_more(
            @ForAll @IntRange(min = -25, max = 25) int days, @ForAll @IntRange(min = 1, max = 7) int stageAt) {
        Crop crop = CROPS.get("blackcurrant");
        Stage stage = Stage.values()[stageAt];

        long one = days(MODEL, stages(past(crop, stage, days, 1)), crop, stage);
        long three = days(MODEL, stages(past(crop, stage, days, 3)), crop, stage);

        assertThat(Math.abs(three)).isLessThanOrEqualTo(Math.abs(days));
        assertThat(three * Long.signum(days)).isGreaterThanOrEqualTo(one * Long.signum(days));
        if (Math.abs(days) >= 4) {
            assertThat(Long.signum(one)).isEqualTo(Integer.signum(days));
            assertThat(Math.abs(three)).isGreaterThan(Math.abs(one));
        }
    }

    @Test
    void each_past_season_narrows_the_date() {
        Crop crop = CROPS.get("redcurrant");
        int none = MODEL.date(crop, SEASON, Stage.FIRST_FLOWER).plusMinusDays();

        int five = stages(past(crop, Stage.FIRST_FLOWER, -6, 5)).date(crop, SEASON, Stage.FIRST_FLOWER).plusMinusDays();

        assertThat(five).isLessThan(none).isGreaterThan(none / 2);
    }

    @Test
    void of_several_plants_the_middle_one_counts_and_other_crops_are_left_alone() {
        Crop crop = CROPS.get("gooseberry");
        List<Sighting> all = new ArrayList<>();
        for (int day : new int[]{2, 4, 20}) {
            all.add(new Sighting(crop.id(), Stage.BUD_BURST, SEASON, LocalDate.of(2027, 3, day)));
        }

        ModelledStages stages = stages(all);

        assertThat(stages.date(crop, SEASON, Stage.BUD_BURST).date()).isEqualTo("2027-03-04");
        Crop other = CROPS.get("blueberry");
        assertThat(stages.date(other, SEASON, Stage.BUD_BURST)).isEqualTo(MODEL.date(other, SEASON, Stage.BUD_BURST));
    }

    @Test
    void a_leaf_fall_seen_in_december_ends_the_season_before_and_begins_the_next() {
        LocalDate december = LocalDate.of(2026, 12, 2);
        Sighting seen = Sighting.on(december, "blackcurrant", Stage.LEAF_FALL_DONE,
                Season.containing(december, Hemisphere.NORTH));

        ModelledStages stages = stages(List.of(seen));

        assertThat(seen.season().year()).isEqualTo(2026);
        Crop crop = CROPS.get("blackcurrant");
        assertThat(stages.date(crop, SEASON, Stage.DORMANT).date()).isEqualTo(december);
        assertThat(stages.date(crop, SEASON, Stage.DORMANT).words()).startsWith("dormant seen");
    }

    private static List<Sighting> past(Crop crop, Stage stage, int days, int seasons) {
        List<Sighting> all = new ArrayList<>();
        for (int i = 1; i <= seasons; i++) {
            Season past = SEASON.plus(-i);
            LocalDate model = MODEL.date(crop, past, stage).date();
            all.add(new Sighting(crop.id(), stage, past, model.plusDays(days)));
        }
        return all;
    }

    private static long days(Stages from, Stages to, Crop crop, Stage stage) {
        return to.date(crop, SEASON, stage).date().toEpochDay() - from.date(crop, SEASON, stage).date().toEpochDay();
    }

    private static ModelledStages stages(List<Sighting> seen) {
        return ModelledStagesTest.stages("leuchars", 56.4, Weather.none(), Sightings.of(seen));
    }
}
