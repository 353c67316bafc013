package org.oldwood.cli.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.sheet.round.Wood;

/**
 * What the page shows of the garden on a day; it becomes JSON as it stands.
 *
 * @param units in which amounts are noted
 * @param monthFirst whether days are told as May 20
 * @param rounds what is to be done now, the most urgent first
 * @param bushes all plants in walking order
 * @param materials what can be given, by kind of entry ({@code fed}, {@code mulched})
 * @param feels the classes of soil moisture by the hand, by bed
 * @param findings what can be found on an ill bush
 * @param growth how strongly a bed's plants may grow
 * @param noted today's entries that count, the newest first
 */
record PageView(String garden, String units, boolean monthFirst, LocalDate today, List<Round> rounds, List<Bush> bushes,
        Map<String, List<Choice>> materials, Map<String, List<Choice>> feels, List<Choice> stages,
        List<Choice> findings, List<Choice> growth, List<Noted> noted) {

    /**
     * One outing.
     *
     * @param until the last good day
     * @param caution the one that matters most
     */
    record Round(String id, String title, LocalDate until, Optional<Integer> minutes, Optional<String> caution,
            List<Line> lines) {}

    /**
     * One task of a round.
     *
     * @param until the last day of its own time
     * @param plant the bush, where it is about one
     * @param kind the kind of entry that usually tells it
     * @param how what to do, line by line
     * @param planned stems to take out, by age class, where that is the work
     * @param begun percent of it that is done already, 0 where it was begun and nobody said how much
     */
    record Line(String task, String title, LocalDate until, Optional<Integer> begun, Optional<String> plant,
            Optional<String> kind, Optional<String> amount, List<String> how, Map<String, Integer> planned) {}

    /**
     * One plant, or one row.
     *
     * @param row whether it is a row of canes
     * @param wood its stems drawn by age; empty where they were not counted
     * @param expected stems by age class as the record has them, to begin a count with; of a row the canes of this
     *     summer as 1, those that fruited as 2
     */
    record Bush(String id, String name, String bed, String bedName, boolean row, List<Wood.Age> wood,
            Map<String, Integer> expected, Optional<String> taken) {}

    /** A word of the record and what it means. */
    record Choice(String key, String words) {}

    /**
     * An entry of today that counts.
     *
     * @param act the first of those that it was noted at once with
     * @param kind of a taking back {@code withdrawn}, its words being those of what it takes back
     * @param booked what a tick booked with it, each in words
     */
    record Noted(String id, String act, String kind, String words, List<String> booked) {}
}
