package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A winter's pruning is spread over the days one works, as many minutes a day as one has. */
class WinterWorkTest {
    private static final String WEEKENDS = ", \"workDays\": [\"saturday\", \"sunday\"]";

    private static List<Task> cuts(String more) {
        TestGarden garden = new TestGarden(52, more);
        for (int bush = 1; bush <= 8; bush++) {
            String id = "bc-" + bush;
            garden.note("planted", "2020-11-20",
                    "'plant': '" + id + "', 'crop': 'blackcurrant', 'bed': 'ribes', 'bushes': 2");
            garden.note("counted", "2026-11-10", "'plant': '" + id + "', 'stems': {'1': 8, '2': 4, '3': 4, '4+': 3}");
        }
        return garden.plan("2026-11-25").tasks().stream().filter(task -> task.rule().id().equals("winter-cut"))
                .filter(task -> task.id().contains("@bc-")).toList();
    }

    private static Map<LocalDate, Double> minutes(List<Task> tasks) {
        Map<LocalDate, Double> byDay = new TreeMap<>();
        tasks.forEach(task -> byDay.merge(task.day(), task.minutes().orElseThrow(), Double::sum));
        return byDay;
    }

    @Test
    void a_day_holds_no_more_minutes_than_one_has() {
        // eight pairs of bushes at 12 minutes, half an hour a day: two pairs a day
        List<Task> cuts = cuts(WEEKENDS + ", \"minutesPerDay\": 30");
        Map<LocalDate, Double> byDay = minutes(cuts);

        assertThat(cuts).hasSize(8);
        assertThat(byDay.values()).allMatch(minutes -> minutes <= 30);
        assertThat(byDay).hasSizeGreaterThanOrEqualTo(4);
        assertThat(byDay.keySet()).extracting(LocalDate::getDayOfWeek).containsOnly(DayOfWeek.SATURDAY,
                DayOfWeek.SUNDAY);
    }

    @Test
    void without_such_a_limit_all_may_fall_on_one_day() {
        assertThat(minutes(cuts(WEEKENDS))).hasSize(1).containsValue(96.0);
    }
}
