package org.oldwood.craft.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whole accounts against runs that others, or an independent program of ours, worked out. */
class WaterAccountTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 6, 1);

    @Test
    void another_programs_printed_account_is_met_in_its_own_convention() throws IOException {
        List<double[]> rows = rows("/reference/account-full-demand.csv");
        double[] rain = column(rows, 1);
        double[] et0 = column(rows, 2);
        BedWater bed = new BedWater(45.7, 0.3, 1, RoofWater.NONE, 0, 1);
        WaterDays days = new WaterAccount(bed, Convention.FULL_DEMAND).run(new WeatherSeries(FIRST, et0, rain, rain),
                ones(8), new BedEvents(), 43.1);

        for (int i = 0; i < rows.size(); i++) {
            assertThat(days.depletion(i)).as("day " + (i + 1)).isCloseTo(rows.get(i)[5], within(0.15));
            double stress = RootZone.stress(days.depletion(i), bed.totalAvailableMm(), bed.fraction());
            assertThat(stress).isCloseTo(rows.get(i)[3], within(0.05));
            assertThat(stress * days.demand(i)).isCloseTo(rows.get(i)[4], within(0.1));
        }
    }

    @Test
    void a_drying_field_follows_the_published_run_with_stress() throws IOException {
        List<double[]> rows = rows("/reference/account-stress.csv");
        double[] et0 = new double[rows.size()];
        double[] kc = new double[rows.size()];
        Arrays.fill(et0, 5);
        Arrays.fill(kc, 1.2);
        BedWater field = new BedWater(160, 0.44, 1, RoofWater.NONE, 0, 1);
        WeatherSeries dry = Days.measured(FIRST, et0, new double[rows.size()]);

        WaterDays days = new WaterAccount(field).run(dry, kc, new BedEvents(), 55);

        for (int i = 0; i < rows.size(); i++) {
            double[] row = rows.get(i);
            assertThat(Days.stress(days, 55, i)).as("day " + (i + 1)).isCloseTo(row[1], within(0.005));
            assertThat(Days.used(days, 55, i)).as("day " + (i + 1)).isCloseTo(row[2], within(0.05));
            assertThat(days.depletion(i)).as("day " + (i + 1)).isCloseTo(row[3], within(0.05));
        }
    }

    @Test
    void a_watered_field_follows_the_published_run_without_stress() throws IOException {
        List<double[]> rows = rows("/reference/account-no-stress.csv");
        BedWater field = new BedWater(RootZone.totalAvailable(0.23, 0.10, 0.34), 0.6, 1, RoofWater.NONE, 0, 1);
        WeatherSeries weather = Days.measured(FIRST, column(rows, 1), column(rows, 3));

        WaterDays days = new WaterAccount(field).run(weather, column(rows, 2), new BedEvents(), 1.21 * 4.5);

        for (int i = 0; i < rows.size(); i++) {
            double[] row = rows.get(i);
            assertThat(Days.stress(days, 1.21 * 4.5, i)).isCloseTo(1, within(1e-12));
            assertThat(Days.used(days, 1.21 * 4.5, i)).as("day " + row[0]).isCloseTo(row[4], within(0.06));
            assertThat(days.depletion(i)).as("day " + row[0]).isCloseTo(row[5], within(0.6));
        }
    }

    @Test
    void a_berry_bed_follows_equations_82_to_88() throws IOException {
        List<double[]> rows = rows("/reference/account-berry-bed.csv");
        BedWater bed = new BedWater(RootZone.totalAvailable(0.25, 0.12, 0.6), 0.5, 4, RoofWater.NONE, 0, 1);
        double[] kc = new double[rows.size()];
        Arrays.fill(kc, 1.05);
        WeatherSeries weather = Days.measured(FIRST, column(rows, 1), column(rows, 2));
        WaterDays days = new WaterAccount(bed).run(weather, kc, new BedEvents(), 30);

        for (int i = 0; i < rows.size(); i++) {
            double[] row = rows.get(i);
            assertThat(Days.stress(days, 30, i)).as("day " + (i + 1)).isCloseTo(row[3], within(0.0005));
            assertThat(Days.used(days, 30, i)).isCloseTo(row[4], within(0.0051));
            assertThat(days.drained(i)).isCloseTo(row[5], within(0.0051));
            assertThat(days.depletion(i)).isCloseTo(row[6], within(0.0051));
        }
    }

    @Test
    void a_roof_adds_its_litres_and_the_rest_runs_through() {
        BedWater bed = new BedWater(78, 0.5, 4, new RoofWater(20, 0.8, 0), 0, 1);
        WeatherSeries storm = Days.measured(FIRST, new double[]{0}, new double[]{12});

        WaterDays days = new WaterAccount(bed).run(storm, ones(1), new BedEvents(), 39);

        assertThat(days.gain(0)).isCloseTo(12 + 48, within(1e-9));
        assertThat(days.depletion(0)).isZero();
        assertThat(days.drained(0)).isCloseTo(60 - 39, within(1e-9));
    }

    @Test
    void neighbours_roots_take_their_share_of_what_is_drawn() {
        WeatherSeries day = Days.measured(FIRST, new double[]{4}, new double[]{0});

        WaterDays alone = run(new BedWater(78, 0.5, 4, RoofWater.NONE, 0, 1), day);
        WaterDays beside = run(new BedWater(78, 0.5, 4, RoofWater.NONE, 0.2, 1), day);

        assertThat(Days.used(alone, 0, 0)).isCloseTo(4, within(1e-9));
        assertThat(Days.used(beside, 0, 0)).isCloseTo(5, within(1e-9));
        assertThat(beside.demand(0)).isCloseTo(4, within(1e-9));
    }

    @Test
    void a_note_moves_the_account_by_its_weight_and_says_so() {
        BedEvents events = new BedEvents();
        events.note(0, new MoistureNote(0.5, 0.5, 0.75));
        BedWater bed = new BedWater(80, 0.5, 4, RoofWater.NONE, 0, 1);
        WeatherSeries day = Days.measured(FIRST, new double[]{0}, new double[]{0});

        WaterDays days = new WaterAccount(bed).run(day, ones(1), events, 0);

        assertThat(days.depletion(0)).isCloseTo(0.75 * 40, within(1e-9));
        WaterDays.Correction correction = days.corrections().get(0);
        assertThat(correction.drierMm()).isCloseTo(40, within(1e-9));
        assertThat(correction.movedMm()).isCloseTo(30, within(1e-9));
    }

    private static WaterDays run(BedWater bed, WeatherSeries weather) {
        return new WaterAccount(bed).run(weather, ones(1), new BedEvents(), 0);
    }

    static double[] ones(int days) {
        double[] ones = new double[days];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private static List<double[]> rows(String resource) throws IOException {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(WaterAccountTest.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            return in.lines().filter(line -> !line.startsWith("#") && !line.startsWith("day"))
                    .map(line -> Stream.of(line.split(",")).mapToDouble(Double::parseDouble).toArray()).toList();
        }
    }
}
