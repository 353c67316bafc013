package org.oldwood.sheet.round;

import java.util.List;
import java.util.Optional;

/**
 * A page of rounds to pin up.
 *
 * @param title what the page is of
 * @param month whether it is of one month, to stand on one sheet of paper
 * @param facts the day, and how much there is to do
 * @param missed what was not done in its time, a line for each kind of work
 * @param strip the months of the strip beside the rounds
 * @param groups the rounds, most urgent group first
 * @param looks how old wood is told by its bark, a line for each crop
 * @param cards the bushes to cut; those of the next open cuts
 * @param undrawn what is to be cut and not drawn, in words; may be empty
 * @param buy what to have at hand
 * @param next the rounds of the month after, in words; may be empty
 */
public record RoundPage(
        String title,
        boolean month,
        List<String> facts,
        List<String> missed,
        List<Tick> strip,
        List<Group> groups,
        List<String> looks,
        List<Card> cards,
        String undrawn,
        List<String> buy,
        String next) {

    /** So many rounds, jobs and rows of cards fill a sheet of paper where each job also says how it is done. */
    private static final int FULL = 36;

    private static final int CARDS_IN_A_ROW = 4;
    private static final int ROW = 12;

    /** Whether how a job is done is said: not on a month's page that would run over its sheet of paper. */
    public boolean saysHow() {
        int lines = groups.stream()
                .flatMap(group -> group.lines().stream())
                .mapToInt(line -> 1 + line.jobs().size() + (line.care().isEmpty() ? 0 : 1))
                .sum();
        int rows = (cards.size() + CARDS_IN_A_ROW - 1) / CARDS_IN_A_ROW;
        return !month || lines + ROW * rows <= FULL;
    }

    /** The first day of a month on the strip; {@code x} in per cent of its width. */
    public record Tick(String label, String x) {}

    /** Rounds under one heading. */
    public record Group(String heading, List<Line> lines) {
        /** The groups that have rounds. */
        static List<Group> filled(List<Group> groups) {
            return groups.stream().filter(group -> !group.lines.isEmpty()).toList();
        }
    }

    /**
     * A round.
     *
     * @param id its id
     * @param sign the sign of the craft of its first job
     * @param day the day to go out
     * @param until the last good day
     * @param minutes how long it takes; empty where nothing is known of it
     * @param optional whether nothing is lost without it
     * @param title what, how many, where
     * @param care the gravest caution, where it was not said before on the page; else empty
     * @param bar its good days on the strip
     */
    public record Line(
            String id,
            String sign,
            String day,
            String until,
            String minutes,
            boolean optional,
            String title,
            List<Job> jobs,
            String care,
            Bar bar) {}

    /** From where to where on the strip, per cent of its width. */
    public record Bar(String x, String width) {}

    /**
     * One kind of work of a round in one bed.
     *
     * @param words what is done
     * @param how how; one sentence
     * @param boxes what to tick
     * @param amount how much, of each where there are several
     */
    public record Job(String words, String how, List<Box> boxes, String amount) {}

    /** One box to tick: its task, whom it is done to, how much. */
    public record Box(String task, String words, String amount) {}

    /**
     * What to take from a bush, or from several that are alike.
     *
     * @param tasks the tasks' ids
     * @param crop the crop
     * @param who the plants
     * @param facts where, how grown, when
     * @param wood its stems; absent where they were not counted
     * @param taken what comes out, in the task's own words
     * @param note what else to know; may be empty
     */
    public record Card(
            List<String> tasks,
            String crop,
            List<String> who,
            List<String> facts,
            Optional<Wood> wood,
            String taken,
            String note) {}
}
