package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;

class GroundFrostTest {
    private static final LocalDate START = LocalDate.of(2026, 7, 1);

    /** However short the hard frost is, the ground is closed from its first day to three weeks after its last. */
    @ParameterizedTest
    @CsvSource({"-1.05", "-1.3", "-2", "-5", "-15"})
    void the_ground_opens_once_three_weeks_after_the_last_hard_frost(double january) {
        GardenClimate climate = climate(january);
        List<LocalDate> hard = days().filter(climate::freezes).toList();
        assertThat(hard).isNotEmpty();
        List<LocalDate> closed = days().filter(climate::freezesGround).toList();
        assertThat(closed)
                .containsExactlyElementsOf(hard.get(0).datesUntil(hard.get(hard.size() - 1).plusDays(22)).toList());
    }

    @ParameterizedTest
    @CsvSource({"0", "4"})
    void it_stays_open_where_there_is_none(double january) {
        assertThat(days().filter(climate(january)::freezesGround)).isEmpty();
    }

    private static Stream<LocalDate> days() { return START.datesUntil(START.plusYears(1)); }

    /** A year of means that swings about 8 °C with its least in January. */
    private static GardenClimate climate(double january) {
        Months mean = Months.of(IntStream.range(0, 12)
                .mapToDouble(month -> 8 - (8 - january) * Math.cos(Math.PI * month / 6)).toArray());
        return new GardenClimate(52, new Climate("", Optional.of(52.0), mean, mean, Optional.empty(), List.of(), "", 0),
                Weather.none(), Documents.bundled());
    }
}
