package org.oldwood.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nets come off where they may be on: not where the grower said that none went up. */
class NetsTest {
    private static final String SUMMER = "2027-07-20";

    private static boolean asksForNetsOff(TestGarden garden) {
        return garden.plan(SUMMER).find("net-off@ribes.blackcurrant.stool@2027").isPresent();
    }

    private static TestGarden with(String kind, String more) {
        return new TestGarden(52, "").note(kind, "2027-06-14", "'task': 'net-on@ribes.blackcurrant.stool@2027'" + more);
    }

    @Test
    void words_leave_open_whether_a_net_is_on_where_nothing_was_noted() {
        Task task = new TestGarden(52, "").task(SUMMER, "net-off@ribes.blackcurrant.stool@2027");

        assertThat(task.title()).isEqualTo("Take any nets off blackcurrants");
        assertThat(task.rule().text()).startsWith("Where a net is on, ");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"done|", "done|, 'only': ['bc']", "skipped|, 'only': ['bc-2']"})
    void come_off_where_some_may_be_on(String kind, String more) {
        TestGarden garden = with(kind, more == null ? "" : more);
        if (kind.equals("skipped")) {
            garden.note("planted", "2021-11-20", "'plant': 'bc-2', 'crop': 'blackcurrant', 'bed': 'ribes'");
        }
        assertThat(asksForNetsOff(garden)).isTrue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"''", ", 'only': ['bc']"})
    void are_not_asked_about_where_none_went_up(String more) {
        assertThat(asksForNetsOff(with("skipped", more))).isFalse();
    }

    @Test
    void the_reason_names_what_was_not_skipped() {
        assertThat(new TestGarden(52, "").task(SUMMER, "net-off@ribes.blackcurrant.stool@2027").reasons())
                .extracting(Reason::words).contains("net-on is not noted as skipped")
                .anyMatch(words -> words.contains("flowers come off in the first season for plants"));
    }

    @Test
    void a_net_put_up_after_all_comes_off() {
        assertThat(asksForNetsOff(
                with("skipped", "").note("done", "2027-06-16", "'task': 'net-on@ribes.blackcurrant.stool@2027'")))
                .isTrue();
    }
}
