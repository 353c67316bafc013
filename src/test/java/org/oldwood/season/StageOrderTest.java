package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.crop.Stage;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;

/** Whatever was seen, the stages of a season come in their order. */
class StageOrderTest {
    private static final Crops CROPS = new Crops(Documents.bundled());
    private static final Season SEASON = new Season(2027, Hemisphere.NORTH);
    private static final Stages MODEL = stages(List.of());

    @Property(tries = 120)
    void stages_keep_their_order(@ForAll @IntRange(min = 0, max = 11) int cropAt,
            @ForAll @Size(9) List<@IntRange(min = -30, max = 30) Integer> past,
            @ForAll @IntRange(min = 1, max = 9) int seenAt, @ForAll @IntRange(min = -30, max = 30) int early) {
        Crop crop = CROPS.get(CROPS.ids().get(cropAt));
        List<Sighting> seen = new ArrayList<>();
        for (int i = 1; i <= 9; i++) {
            Stage stage = Stage.values()[i];
            int days = past.get(i - 1);
            // some stages were never seen
            if (days % 3 != 0) {
                seen.add(sighting(crop, stage, SEASON.plus(-1), days));
                seen.add(sighting(crop, stage, SEASON.plus(-2), days));
            }
        }
        seen.add(sighting(crop, Stage.values()[seenAt], SEASON, early));

        Stages stages = stages(seen);

        LocalDate before = LocalDate.MIN;
        for (Stage stage : Stage.values()) {
            if (stage != Stage.DORMANT) {
                LocalDate date = stages.date(crop, SEASON, stage).date();
                assertThat(date).as(crop.id() + " " + stage).isAfterOrEqualTo(before);
                before = date;
            }
        }
    }

    /** A bud burst that came late in past years tells of bud swell too, though none was noted. */
    @Test
    void a_stage_never_seen_follows_a_later_one_where_no_earlier_one_was_seen() {
        Crop crop = CROPS.get("gooseberry");
        List<Sighting> late = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            late.add(sighting(crop, Stage.BUD_BURST, SEASON.plus(-i), 12));
        }

        StageDate swell = stages(late).date(crop, SEASON, Stage.BUD_SWELL);

        // half the weight of four seasons: 12 days times 2/(2 + 2)
        assertThat(swell.date()).isEqualTo(MODEL.date(crop, SEASON, Stage.BUD_SWELL).date().plusDays(6));
        assertThat(swell.words()).contains("6 days later for bud burst as seen in 4 past seasons");
    }

    private static Sighting sighting(Crop crop, Stage stage, Season season, int days) {
        return new Sighting(crop.id(), stage, season, MODEL.date(crop, season, stage).date().plusDays(days));
    }

    private static Stages stages(List<Sighting> seen) {
        return ModelledStagesTest.stages("leuchars", 56.4, Weather.none(), Sightings.of(seen));
    }
}
