package org.oldwood.plan.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oldwood.plan.SmallGarden;
import org.oldwood.plan.Task;
import org.oldwood.store.Documents;

/** What is done first has its day first. */
class DiaryTest {
    private static final Rounds ROUNDS = Rounds.read(Documents.bundled());

    /** Two crops in one bed and a third in another. */
    private static SmallGarden garden(double latitude, String first, String third, String workDays) {
        String beds = "{'id':'a','name':'Bed A','areaM2':9},{'id':'b','name':'Bed B','areaM2':9}";
        return new SmallGarden(latitude, beds, ",'workDays':" + workDays)
                .note("2018-05-15", "'planted','plant':'p-1','crop':'%s','bed':'a'".formatted(first))
                .note("2018-05-15", "'planted','plant':'p-2','crop':'autumn-raspberry','bed':'a','lengthM':3")
                .note("2018-05-15", "'planted','plant':'p-3','crop':'%s','bed':'b'".formatted(third));
    }

    /** Feed goes under the mulch: in a bed of several crops no mulch comes before the last of them is fed. */
    @ParameterizedTest
    @CsvSource({"52, 2027-02-01, gooseberry, summer-raspberry", "-42, 2026-08-01, gooseberry, summer-raspberry",
            "52, 2027-02-01, blueberry, haskap", "-42, 2026-08-01, blueberry, haskap"})
    void no_bed_is_mulched_before_all_in_it_are_fed(double latitude, LocalDate from, String first, String third) {
        SmallGarden garden = garden(latitude, first, third, "['sunday']");
        for (LocalDate day = from; day.isBefore(from.plusDays(110)); day = day.plusDays(11)) {
            List<Round> rounds = ROUNDS.of(garden.plan(day.toString()), garden.on(day.toString()));
            for (Round round : rounds) {
                round.due().stream().filter(task -> task.rule().id().equals("mulch"))
                        .forEach(mulch -> assertThat(rounds)
                                .filteredOn(fed -> fed.due().stream().anyMatch(comesBefore(mulch)))
                                .extracting(Round::day)
                                .allMatch(fed -> !fed.isAfter(round.day()), "not after " + round.day()));
            }
        }
    }

    private static Predicate<Task> comesBefore(Task task) {
        return first -> task.rule().after().contains(first.rule().id())
                && first.works().contains(new Task.Work(first.rule().id(), task.subject().id(), task.season().year()));
    }
}
