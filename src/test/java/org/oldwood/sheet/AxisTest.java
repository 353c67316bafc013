package org.oldwood.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;

class AxisTest {
    private static final Axis NORTH = Axis.of(new Season(2027, Hemisphere.NORTH));
    private static final Axis SOUTH = Axis.of(new Season(2027, Hemisphere.SOUTH));

    @Test
    void the_north_runs_from_november_and_the_south_from_may() {
        assertThat(NORTH.months()).extracting(Axis.Tick::label).startsWith("Nov").endsWith("Oct");
        assertThat(SOUTH.months()).extracting(Axis.Tick::label).startsWith("May").endsWith("Apr");
        assertThat(NORTH.months()).hasSize(12);
    }

    @Test
    void a_day_lies_where_its_share_of_the_year_says() {
        assertThat(NORTH.at(LocalDate.of(2026, 11, 1))).isZero();
        assertThat(NORTH.at(LocalDate.of(2027, 1, 1))).isCloseTo(100.0 * 61 / 365, within(1e-9));
        assertThat(NORTH.middle(LocalDate.of(2026, 11, 1))).isCloseTo(50.0 / 365, within(1e-9));
        assertThat(NORTH.at(LocalDate.of(2027, 11, 1))).isEqualTo(100);
    }

    @Test
    void a_leap_year_has_a_day_more() {
        Axis leap = Axis.of(new Season(2028, Hemisphere.NORTH));

        assertThat(leap.at(LocalDate.of(2028, 3, 1))).isCloseTo(100.0 * 121 / 366, within(1e-9));
    }

    @Test
    void a_span_ends_with_its_last_day() {
        Mark one = Mark.span("window", NORTH, LocalDate.of(2026, 11, 1), LocalDate.of(2026, 11, 1));

        assertThat(one.x()).isEqualTo("0%");
        assertThat(one.width()).isEqualTo(Shown.percent(100.0 / 365));
    }

    @Test
    void what_reaches_beyond_the_ends_is_cut_there_and_says_so() {
        Mark mark = Mark.span("window", NORTH, LocalDate.of(2026, 10, 20), LocalDate.of(2027, 11, 20));

        assertThat(mark.x()).isEqualTo("0%");
        assertThat(mark.width()).isEqualTo("100%");
        assertThat(mark.before()).isTrue();
        assertThat(mark.after()).isTrue();
    }

    @Test
    void an_axis_without_a_day_is_refused() {
        LocalDate day = LocalDate.of(2026, 11, 1);

        assertThatThrownBy(() -> new Axis(day, day)).hasMessageContaining("no day from 2026-11-01");
    }
}
