package org.oldwood.facts.pruning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Situation;
import org.oldwood.facts.Subject;
import org.oldwood.garden.BedState;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.PlantState;
import org.oldwood.plan.TestGarden;
import org.oldwood.season.CalendarStages;

/** The crop to expect of a stand: mature crop, share of its age, share of its wood, size. */
class CropAdvisorTest {
    private final TestGarden garden = new TestGarden(52, "");

    private Amount crop(String plant, String day) {
        GardenState state = garden.on(day);
        PlantState one = state.plants().get(plant);
        Crop crop = TestGarden.CROPS.get(one.plant().crop());
        BedState bed = state.beds().get(one.plant().bed());
        Situation situation = new Situation(
                new Situation.World(state, new CalendarStages(), TestGarden.CROPS, TestGarden.DOCUMENTS),
                new Subject.OnePlant(one, crop, bed), state.season(), LocalDate.parse(day));
        return new CropAdvisor().amount("crop", situation).orElseThrow();
    }

    @Test
    void a_grown_stand_bears_its_number_of_bushes_times_the_mature_crop() {
        // four blackcurrants, planted in the autumn of 2021: season 2027 is their sixth
        Amount amount = crop("bc", "2026-11-25");

        assertThat(amount.value()).isCloseTo(4 * 3.5, within(1e-9));
        assertThat(amount.words()).isEqualTo("14 kg expected over the season (6 to 20 kg)");
        assertThat(amount.sources()).contains("informed-farmers-blackcurrants", "danish-blackcurrant");
        assertThat(amount.arithmetic())
                .containsExactly("bc: 3.5 kg/bush (computed) when mature (1.5 to 5 kg/bush) x 100 % in its season 6"
                        + " x 100 % for its wood, which was not counted x 4");
    }

    @Test
    void a_young_stand_bears_the_share_of_its_age() {
        // informed-farmers-blackcurrants: a tenth in the second season, nothing in the first
        assertThat(crop("bc", "2022-11-25").value()).isCloseTo(4 * 0.35, within(1e-9));
        assertThat(crop("bc", "2022-06-25").words()).isEqualTo("no crop to speak of yet");
    }

    @Test
    void a_row_bears_by_its_metres() { assertThat(crop("ra", "2026-11-25").value()).isCloseTo(4 * 1.4, within(1e-9)); }

    @Test
    void counted_wood_that_falls_short_of_the_target_bears_less() {
        garden.note("counted", "2026-11-10", "'plant': 'bc', 'stems': {'1': 0, '2': 3}");

        // three best stems against 5 x 0.4 + 3 + 3 x 0.8; k is 0.76
        double x = 3 / 7.4;
        assertThat(crop("bc", "2026-11-25").value()).isCloseTo(14 * 1.76 * x / (x + 0.76), within(1e-9));
        assertThat(crop("bc", "2026-11-25").arithmetic().get(0))
                .contains("40 to 82 % for its wood, by weights that are assumed");
    }

    @Test
    void last_seasons_picks_stand_beside_it() {
        garden.note("picked", "2026-07-01", "'plant': 'bc', 'kg': 5.5");
        garden.note("picked", "2026-07-08", "'plant': 'bc', 'kg': 4.1");
        garden.note("picked", "2025-07-08", "'plant': 'bc', 'kg': 99");

        assertThat(crop("bc", "2026-11-25").lines()).contains("Picked the season before: 9.6 kg.").hasSize(2);
        assertThat(crop("ra", "2026-11-25").lines()).hasSize(1);
    }

    @Test
    void it_tells_no_facts() {
        assertThat(new CropAdvisor().factNames()).isEmpty();
        assertThat(new CropAdvisor().amountNames()).containsExactly("crop");
    }
}
