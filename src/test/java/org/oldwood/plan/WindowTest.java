package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** From the first to the last good day. */
class WindowTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 3, 1);
    private static final LocalDate LAST = LocalDate.of(2027, 3, 14);

    @Test
    void words_are_made_when_asked_for_and_once_for_all_parts() {
        AtomicInteger made = new AtomicInteger();
        Window whole = new Window(FIRST, LAST, () -> new Window.How(made.incrementAndGet(), "by the calendar"));
        Window part = whole.part(FIRST, FIRST.plusDays(6));
        assertThat(part.days()).isEqualTo(7);
        assertThat(made).hasValue(0);

        assertThat(part.words()).isEqualTo("by the calendar");
        assertThat(part.plusMinusDays()).isEqualTo(1);
        assertThat(whole.plusMinusDays()).isEqualTo(1);
    }

    @Test
    void windows_of_the_same_days_and_words_are_equal() {
        Window one = new Window(FIRST, LAST, 3, "by the calendar");

        assertThat(one).isEqualTo(new Window(FIRST, LAST, 3, "by the calendar"))
                .hasSameHashCodeAs(new Window(FIRST, LAST, 3, "by the calendar"))
                .isNotEqualTo(new Window(FIRST, LAST, 4, "by the calendar"))
                .isNotEqualTo(new Window(FIRST, LAST, 3, "by an entry"))
                .isNotEqualTo(new Window(FIRST, LAST.plusDays(1), 3, "by the calendar"));
    }

    @Test
    void a_window_cannot_end_before_it_opens() {
        assertThatThrownBy(() -> new Window(LAST, FIRST, 0, "")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2027-03-14");
    }
}
