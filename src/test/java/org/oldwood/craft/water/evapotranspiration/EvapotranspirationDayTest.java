package org.oldwood.craft.water.evapotranspiration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A day's terms, and that the fall-back used is always said. */
class EvapotranspirationDayTest {
    @Test
    void says_what_was_measured() {
        DayWeather full = new DayWeather(12.3, 21.5, Humidity.of(OptionalDouble.of(63), OptionalDouble.of(84)),
                OptionalDouble.of(2.078), new Sunshine(OptionalDouble.of(9.25), OptionalDouble.empty(), false));

        assertThat(day(full).basis()).containsExactly("humidity from its lowest and highest value (FAO-56 eq. 17)",
                "wind as measured", "radiation from hours of sunshine (FAO-56 eq. 35)");
    }

    @Test
    void says_every_guess() {
        assertThat(day(Temperatures.only(12.3, 21.5)).basis()).allMatch(words -> words.contains("not given"))
                .anyMatch(words -> words.contains("eq. 48")).anyMatch(words -> words.contains("2 m/s"))
                .anyMatch(words -> words.contains("eq. 50, inland"));
    }

    @Test
    void the_coast_is_sunnier_than_the_inland_for_the_same_range_of_temperature() {
        DayWeather coast = new DayWeather(12.3, 18, Humidity.UNKNOWN, OptionalDouble.empty(),
                new Sunshine(OptionalDouble.empty(), OptionalDouble.empty(), true));

        assertThat(day(coast).solar()).isGreaterThan(day(Temperatures.only(12.3, 18)).solar());
    }

    @Test
    void the_parts_add_up() {
        EvapotranspirationDay day = day(Temperatures.only(12.3, 21.5));

        assertThat(day.fromRadiation() + day.fromAir()).isCloseTo(day.penmanMonteith(), within(1e-12));
        assertThat(day.netRadiation()).isCloseTo(day.netSolar() - day.netLongwave(), within(1e-12));
    }

    @Test
    void a_wrong_day_is_refused_in_words() {
        assertThatThrownBy(() -> Temperatures.only(20, 10)).hasMessageContaining("the lowest not above the highest");
        assertThatThrownBy(() -> Humidity.of(OptionalDouble.of(80), OptionalDouble.of(60)))
                .hasMessageContaining("is above the highest");
        assertThatThrownBy(() -> Humidity.of(OptionalDouble.empty(), OptionalDouble.of(101)))
                .hasMessageContaining("0 to 100 %");
        assertThatThrownBy(() -> new Sunshine(OptionalDouble.of(25), OptionalDouble.empty(), false))
                .hasMessageContaining("0 to 24");
        assertThatThrownBy(() -> new Sunshine(OptionalDouble.empty(), OptionalDouble.of(-1), false))
                .hasMessageContaining("0 to 60");
    }

    private static EvapotranspirationDay day(DayWeather weather) {
        return EvapotranspirationDay.of(50.8, 100, 187, weather, 0);
    }
}
