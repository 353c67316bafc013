package org.oldwood.plan.round;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Key;
import org.oldwood.garden.Wishes;
import org.oldwood.plan.Rule;
import org.oldwood.plan.Task;

/**
 * A kind of outing.
 *
 * @param title for people; {@code {crop}} stands for the crop's plural
 * @param saidBy what tells rounds of this kind apart within a season
 * @param start whether it begins with its first task; otherwise it waits until as much as can be is due
 * @param optional whether nothing is lost where nobody does it
 * @param tools what to take along, beside the materials
 * @param jobs in the order of work
 */
public record RoundKind(String id, String title, @Key("by") Optional<By> saidBy, boolean start, boolean optional,
        List<String> tools, List<Job> jobs) {

    /** What tells rounds of one kind apart; a property of the task that no change of day or progress touches. */
    public enum By {
        SEASON,
        CROP,
        GROUP,
        BED,
        /** The calendar week of the task's day: for what is done again and again, or has to be done just then. */
        WEEK
    }

    /**
     * A step of the work.
     *
     * @param title its verb for the title, where {@code {crop}} stands for the plural of the one crop; empty where the
     *     title need not say it
     * @param everyOtherWeek whether once in two weeks is enough
     * @param opens what is known once it is done, and waits for it; empty for nothing
     */
    public record Job(@Key(maybe = true) String title, boolean everyOtherWeek, @Key(maybe = true) String opens,
            List<String> rules) {}

    /** From which weeks are counted in pairs. */
    private static final LocalDate FIRST_MONDAY = LocalDate.of(1970, 1, 5);

    /** What tells rounds of this kind apart. */
    public By by() { return saidBy.orElse(By.SEASON); }

    /** A rule that no kind names is an outing for itself, so that no task is lost. */
    static RoundKind alone(Rule rule) {
        String title = rule.id().replace('-', ' ');
        By by = rule.repeatDays() > 0 ? By.WEEK : By.SEASON;
        return new RoundKind(rule.id(), title, Optional.of(by), false, false, List.of(),
                List.of(new Job("", false, "", List.of(rule.id()))));
    }

    /** Which round of this kind a task belongs to: {@code cut@2027.blackcurrant}, {@code walk@2027-w31}. */
    String round(Task task, LocalDate today) {
        String season = task.season().label();
        return switch (by()) {
            case SEASON -> "%s@%s".formatted(id, season);
            case CROP -> part(season, task.subject().crop().map(Crop::id).orElse("garden"));
            case GROUP -> part(season, task.subject().crop().map(Crop::group).orElse("garden"));
            case BED -> part(season, task.subject().bed().map(bed -> bed.bed().id()).orElse("garden"));
            case WEEK -> String.format(Locale.ROOT, "%s@%s-w%02d", id, day(task, today).get(IsoFields.WEEK_BASED_YEAR),
                    day(task, today).get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        };
    }

    /** The day for a task: its own, but of a job of every other week one of such a week, as far as that is in time. */
    LocalDate day(Task task, LocalDate today) {
        LocalDate day = task.day();
        boolean waits = task.state() == Task.State.OPEN && isEveryOtherWeek(task)
                && Math.floorMod(ChronoUnit.WEEKS.between(FIRST_MONDAY, day), 2) == 1;
        if (!waits) { return day; }
        LocalDate before = day.minusDays(7);
        LocalDate after = day.plusDays(7);
        return !before.isBefore(task.window().first()) && !before.isBefore(today) ? before
                : after.isAfter(task.window().last()) ? day : after;
    }

    /** Whether once in two weeks is enough for it. */
    boolean isEveryOtherWeek(Task task) {
        return jobs.stream().anyMatch(job -> job.everyOtherWeek && job.rules.contains(task.rule().id()));
    }

    /** Whether the grower wants to be told of such rounds. */
    boolean wanted(Wishes wishes) {
        return !wishes.never().contains(id) && (!optional || wishes.morePlants());
    }

    private String part(String season, String part) { return "%s@%s.%s".formatted(id, season, part); }

    /** The place of a rule in the order of work. */
    public int order(Rule rule) {
        for (int i = 0; i < jobs.size(); i++) {
            if (jobs.get(i).rules().contains(rule.id())) { return i; }
        }
        return jobs.size();
    }
}
