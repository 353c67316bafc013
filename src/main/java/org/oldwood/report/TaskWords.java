package org.oldwood.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.care.Amount;
import org.oldwood.care.Reason;
import org.oldwood.care.Task;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Source;
import org.oldwood.crop.Sources;

/** A task in words: what, how much, how, when, why, cautions, sources. */
public final class TaskWords {
    private final Sources sources;

    public TaskWords(Sources sources) {
        this.sources = sources;
    }

    /** The title, with the amount where there is one. */
    public static String headline(Task task) {
        return task.title() + task.amount().map(amount -> ": " + inWords(amount)).orElse("");
    }

    /** The amount in words, with its number in front where the words do not say it. */
    public static String inWords(Amount amount) {
        String number = Long.toString(Math.round(amount.value()));
        String words = amount.words();
        boolean said =
                amount.value() == 0 || words.contains(number) || Character.isDigit(words.charAt(0));
        return said ? words : number + " " + amount.unit() + ", " + words;
    }

    /**
     * {@code from 24 Nov 2026 to 3 Mar 2027, both included, ± 9 days}: the last part where it hangs
     * on stages of growth that are not yet seen.
     */
    public static String window(Task task) {
        int plusMinus = task.window().plusMinusDays();
        return days(task) + (plusMinus == 0 ? "" : ", ± " + plusMinus + " days");
    }

    private static String days(Task task) {
        return task.window().days() == 1
                ? "on " + Dates.shortDay(task.window().first())
                : "from "
                        + Dates.shortDay(task.window().first())
                        + " to "
                        + Dates.shortDay(task.window().last())
                        + ", both included";
    }

    /** How many minutes, where it is known. */
    public static Optional<String> minutes(Task task) {
        return task.minutes().map(minutes -> "about " + Math.round(minutes) + " min");
    }

    /** The lines of a calendar's description. */
    public List<String> lines(Task task) {
        List<String> lines = new ArrayList<>();
        task.amount().ifPresent(amount -> lines.add("How much: " + inWords(amount)));
        task.amount().map(Amount::lines).ifPresent(lines::addAll);
        if (!task.rule().text().isEmpty()) {
            lines.add("How: " + task.rule().text());
        }
        minutes(task).ifPresent(minutes -> lines.add("Time: " + minutes));
        int plusMinus = task.window().plusMinusDays();
        if (plusMinus > 0) {
            lines.add(
                    "How sure: the days hang on stages of growth, ± "
                            + plusMinus
                            + " days; note a stage when you see it, and they move.");
        }
        lines.add("Why: " + task.rule().reason());
        for (Reason reason : task.reasons().subList(1, task.reasons().size())) {
            lines.add("- " + reason.words());
        }
        task.cautions().forEach(caution -> lines.add("Take care: " + caution));
        lines.add("Source: " + sources(task));
        return lines;
    }

    /** The sources' short names, with the mark of those that were not read in print. */
    public String sources(Task task) {
        List<String> words = new ArrayList<>();
        for (String key : task.sources()) {
            String mark =
                    sources.find(key)
                            .map(Source::seen)
                            .filter(seen -> seen != Seen.READ)
                            .map(Seen::words)
                            .orElse("");
            words.add(
                    mark.isEmpty() || key.equals("common-practice")
                            ? key
                            : key + " (" + mark + ")");
        }
        return String.join(", ", words);
    }
}
