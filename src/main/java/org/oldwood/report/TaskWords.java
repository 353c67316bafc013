package org.oldwood.report;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Subject;
import org.oldwood.plan.Task;
import org.oldwood.words.Dates;

/** A task in words: what, how much, how, when, why, cautions, sources. */
public final class TaskWords {
    private TaskWords() {}

    public static String headline(Task task) { return task.title() + amount(task); }

    /** {@code : 3 stems}, to follow a title; empty where there is none, or where one bush is that one bush. */
    public static String amount(Task task) {
        boolean named = task.subject() instanceof Subject.OnePlant;
        return task.amount().filter(amount -> !(named && amount.words().equals("1 plant")))
                .map(amount -> ": " + inWords(amount)).orElse("");
    }

    /** The title of several tasks of one rule, with their crops in place of their names. */
    public static String title(List<Task> alike, String crops, String bed) {
        return alike.get(0).rule().title().replaceAll("\\{(subject|crops|crop)}", Matcher.quoteReplacement(crops))
                .replace("{count}", Integer.toString(alike.size())).replace("{season}", alike.get(0).season().label())
                .replace("{bed}", bed);
    }

    /** The amount in words, with its number in front where the words do not say it. */
    public static String inWords(Amount amount) {
        String number = Long.toString(Math.round(amount.value()));
        String words = amount.words();
        boolean said = amount.value() == 0 || words.contains(number) || Character.isDigit(words.charAt(0));
        return said ? words : number + " " + amount.unit() + ", " + words;
    }

    /**
     * {@code from 24 Nov 2026 to 3 Mar 2027, both included, ± 9 days}: the last part where it hangs on stages of growth
     * that are not yet seen. Where all is frozen at first, from the thaw on, as in calendars.
     */
    public static String window(Task task) {
        int plusMinus = task.window().plusMinusDays();
        return days(task) + (plusMinus == 0 ? "" : ", ± " + plusMinus + " days");
    }

    private static String days(Task task) {
        String last = Dates.shortDay(task.window().last());
        return task.from().equals(task.window().last()) ? "on " + last
                : "from %s to %s, both included".formatted(Dates.shortDay(task.from()), last);
    }

    public static Optional<String> minutes(Task task) { return task.minutes().map(TaskWords::minutes); }

    /** How minutes are known: no figure of work was read in print. */
    public static final String MINUTES_SEEN = "by your notes, else assumed";

    public static String minutes(double minutes) {
        return "about %s min (%s)".formatted(Math.round(minutes), MINUTES_SEEN);
    }
}
