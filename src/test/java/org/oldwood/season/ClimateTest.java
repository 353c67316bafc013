package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.oldwood.store.Documents;
import org.oldwood.store.JsonReader;
import org.oldwood.store.Problems;

class ClimateTest {
    private static final Documents DOCUMENTS = Documents.bundled();

    @Test
    void every_bundled_climate_can_be_read_and_keeps_its_means_day_by_day() {
        for (String id : DOCUMENTS.names("climates")) {
            Climate climate = Climate.bundled(id, DOCUMENTS);

            assertMeans(climate.meanMaxC());
            assertMeans(climate.meanMinC());
        }
        assertThat(DOCUMENTS.problems().list()).isEmpty();
        assertThat(DOCUMENTS.names("climates")).contains("leuchars", "cambridge", "ross-on-wye", "yakima", "hobart");
    }

    @Property(tries = 200)
    void a_daily_curve_reproduces_any_monthly_means(
            @ForAll @Size(12) List<@DoubleRange(min = -40, max = 40) Double> monthly) {
        assertMeans(Months.of(monthly.stream().mapToDouble(Double::doubleValue).toArray()));
    }

    /** The first computation's values for Cambridge: 4.79, 5.82, 8.16 and 10.77 °C. */
    @Test
    void meets_the_first_computation_of_daily_means() {
        MeanCurve days = Climate.bundled("cambridge", DOCUMENTS).meanC().curve();

        assertThat(days.on(31)).isCloseTo(4.79, within(0.03));
        assertThat(days.on(58)).isCloseTo(5.82, within(0.03));
        assertThat(days.on(89)).isCloseTo(8.16, within(0.03));
        assertThat(days.on(119)).isCloseTo(10.77, within(0.03));
    }

    @Test
    void a_name_that_is_not_known_gets_a_hint() throws IOException {
        assertThat(problem("\"leuchar\"")).contains("unknown-climate").contains("leuchars");
    }

    @Test
    void swapped_rows_and_short_rows_are_told() throws IOException {
        String cold = "[0,0,0,0,0,0,0,0,0,0,0,0]";
        String warm = "[9,9,9,9,9,9,9,9,9,9,9,9]";

        assertThat(problem("{\"meanMaxC\": " + cold + ", \"meanMinC\": " + warm + "}"))
                .contains("least-above-greatest");
        assertThat(problem("{\"meanMaxC\": [1,2], \"meanMinC\": " + cold + "}")).contains("not-twelve-means");
        assertThat(problem("{\"meanMaxC\": " + warm + ", \"meanMinC\": " + cold + "}")).isEmpty();
    }

    private static String problem(String json) throws IOException {
        Problems problems = new Problems();
        var read = JsonReader.read(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)), "garden.json",
                problems);
        Optional<Climate> climate = Climate.of(read.orElseThrow(), DOCUMENTS, problems);
        assertThat(climate.isPresent()).isEqualTo(problems.isEmpty());
        return problems.isEmpty() ? "" : problems.list().get(0).name() + " " + problems.list().get(0).inWords();
    }

    private static void assertMeans(Months monthly) {
        MeanCurve days = monthly.curve();
        int first = 0;
        for (int month = 1; month <= 12; month++) {
            int length = YearMonth.of(2027, month).lengthOfMonth();
            double mean = IntStream.range(first, first + length).mapToDouble(i -> days.on(i)).average().orElseThrow();
            assertThat(mean).as("month " + month).isCloseTo(monthly.in(month), within(0.005));
            first += length;
        }
    }
}
