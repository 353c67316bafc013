package org.oldwood.sheet.round;

import java.util.List;
import java.util.Optional;

/**
 * A page of rounds to pin up.
 *
 * @param month whether it is of one month, to stand on one sheet of paper
 * @param facts the day, and how much there is to do
 * @param missed what was not done in its time, a line for each kind of work
 * @param strip the months of the strip beside the rounds
 * @param groups the rounds, most urgent group first
 * @param looks how old wood is told by its bark, a line for each crop
 * @param cards the bushes to cut; those of the next open cuts
 * @param undrawn what is to be cut and not drawn, in words; may be empty
 * @param beds the beds from above, with what is due at each plant
 * @param next the rounds of the month after, in words; may be empty
 */
public record RoundPage(String title, boolean month, List<String> facts, List<String> missed, List<Tick> strip,
        List<Group> groups, List<String> looks, List<Card> cards, String undrawn, List<BedPlan> beds, List<String> buy,
        String next) {

    /** The first day of a month on the strip; {@code x} in per cent of its width. */
    public record Tick(String label, String x) {}

    public record Group(String heading, List<Line> lines) {
        static List<Group> filled(List<Group> groups) {
            return groups.stream().filter(group -> !group.lines.isEmpty()).toList();
        }
    }

    /**
     * A round.
     *
     * @param sign the sign of the craft of its first job
     * @param day the day to go out
     * @param until the last good day
     * @param minutes how long it takes; empty where nothing is known of it
     * @param optional whether nothing is lost without it
     * @param title what, how many, where
     * @param beds where, in walking order; empty where the title says it, or it is in many
     * @param care the gravest caution, where it was not said before on the page; else empty
     * @param bar its good days on the strip
     * @param brief whether its jobs stand in brief, with one box each
     */
    public record Line(String id, String sign, String day, String until, String minutes, boolean optional, String title,
            String beds, List<Job> jobs, String care, Bar bar, boolean brief) {

        /** Whether the title says all of its one job, so that the box stands there. */
        public boolean isOneJob() {
            return brief && jobs.size() == 1 && jobs.get(0).boxes().get(0).tasks().size() > 1;
        }
    }

    /** From where to where on the strip, per cent of its width. */
    public record Bar(String x, String width) {}

    /**
     * One kind of work of a round.
     *
     * @param how how; one sentence, or empty
     * @param amount how much; may be empty
     */
    public record Job(String words, String how, List<Box> boxes, String amount) {
        /** Whether its words stand for its one box too. */
        public boolean isOneBox() {
            return boxes.size() == 1 && boxes.get(0).words().isEmpty();
        }
    }

    /** One box to tick: its tasks, whom they are done to, how much. */
    public record Box(List<String> tasks, String words, String amount) {}

    /**
     * What to take from a bush, or from several that are alike.
     *
     * @param facts where, how grown, when
     * @param wood its stems; absent where they were not counted
     * @param taken what comes out, in the task's own words
     * @param note what else to know; may be empty
     */
    public record Card(List<String> tasks, String crop, List<String> who, List<String> facts, Optional<Wood> wood,
            String taken, String note) {

        /** What comes out but for the ages, which the drawing tells. */
        public String inShort() {
            int ages = taken.indexOf(": ");
            return ages < 0 || wood.isEmpty() ? taken : taken.substring(0, ages);
        }
    }
}
