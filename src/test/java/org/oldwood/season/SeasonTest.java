package org.oldwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SeasonTest {
    @Test
    void a_northern_season_is_named_by_the_year_its_fruit_ripens_in() {
        assertThat(Season.containing(LocalDate.of(2026, 11, 25), Hemisphere.NORTH).label()).isEqualTo("2027");
        assertThat(Season.containing(LocalDate.of(2026, 10, 31), Hemisphere.NORTH).label()).isEqualTo("2026");
    }

    @Test
    void a_southern_season_spans_new_year() {
        Season season = Season.containing(LocalDate.of(2026, 11, 25), Hemisphere.SOUTH);

        assertThat(season.label()).isEqualTo("2026-27");
        assertThat(season.contains(LocalDate.of(2027, 2, 1))).isTrue();
        assertThat(season.end()).isEqualTo(LocalDate.of(2027, 4, 30));
    }

    @Test
    void a_day_of_the_north_is_half_a_year_later_in_the_south() {
        assertThat(new Season(2027, Hemisphere.NORTH).day(11, 15)).isEqualTo(LocalDate.of(2026, 11, 15));
        assertThat(new Season(2027, Hemisphere.SOUTH).day(11, 15)).isEqualTo(LocalDate.of(2026, 5, 15));
        assertThat(new Season(2027, Hemisphere.SOUTH).day(6, 20)).isEqualTo(LocalDate.of(2026, 12, 20));
        assertThat(new Season(2027, Hemisphere.SOUTH).day(8, 31)).isEqualTo(LocalDate.of(2027, 2, 28));
    }

    @Test
    void the_29th_of_february_lies_in_its_season() {
        assertThat(Season.containing(LocalDate.of(2028, 2, 29), Hemisphere.NORTH).year()).isEqualTo(2028);
        assertThat(new Season(2027, Hemisphere.NORTH).day(2, 29)).isEqualTo(LocalDate.of(2027, 2, 28));
        assertThat(new Season(2028, Hemisphere.NORTH).day(2, 29)).isEqualTo(LocalDate.of(2028, 2, 29));
    }
}
