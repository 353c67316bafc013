package org.oldwood.cli.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.oldwood.facts.Purchase;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.RoundKind;
import org.oldwood.report.TaskWords;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/**
 * What a round says beneath its title: how much, how and one caution first, since many programs show no more; then bed
 * by bed and bush by bush. Reasons and sources stand elsewhere; the last line says where.
 */
final class RoundText {
    private static final int MOST_HOW = 80;
    private static final int MOST_LINES = 60;

    private RoundText() {}

    static String of(Round round) {
        List<Task> due = round.due().isEmpty() ? round.all() : round.due();
        List<String> lines = new ArrayList<>();
        lines.add(first(round));
        List<String> how = inOrder(round, due).stream().map(task -> task.rule().text()).distinct().toList();
        // what is seen to on a walk is many small things, which their titles tell
        boolean isWalk = round.kind().by() == RoundKind.By.WEEK && how.size() > 1;
        lines.add(isWalk ? "" : how(how));
        round.cautions().stream().limit(1).forEach(caution -> lines.add("Take care: " + caution.line()));
        List<String> parts = parts(round, due);
        parts.stream().limit(MOST_LINES).forEach(lines::add);
        if (parts.size() > MOST_LINES) { lines.add("... and %s lines more".formatted(parts.size() - MOST_LINES)); }
        round.later().stream().map(task -> task.window().first()).min(LocalDate::compareTo)
                .ifPresent(from -> lines.add("Later, from %s: %s.".formatted(Dates.dayMonth(from),
                        Words.count(round.later().size(), "more job", "more jobs"))));
        if (round.open() && !round.finished().isEmpty()) {
            lines.add("Done already: %s of %s jobs.".formatted(round.finished().size(), round.all().size()));
        }
        lines.add("More: oldwood tasks %s".formatted(round.id()));
        lines.removeIf(String::isEmpty);
        return String.join("\n", lines);
    }

    /** Job by job, as they are done; the order of the beds stays. */
    private static List<Task> inOrder(Round round, List<Task> tasks) {
        List<String> rules = round.kind().jobs().stream().flatMap(job -> job.rules().stream()).toList();
        return tasks.stream().sorted(Comparator.comparingInt(task -> rules.indexOf(task.rule().id()))).toList();
    }

    private static String first(Round round) {
        List<String> all = new ArrayList<>(round.kind().tools());
        round.materials().forEach(material -> all.add(material.told()));
        String along = all.isEmpty() ? "" : "Take along: %s.".formatted(Words.list(all));
        if (round.minutes() == 0) { return along; }
        String bushes = round.bushesInWords();
        return "%sAbout %s min (by your notes, else assumed). %s"
                .formatted(bushes.isEmpty() ? "" : bushes + ". ", Math.round(round.minutes()), along).strip();
    }

    /** The first sentence of each job, as many as are short enough. */
    private static String how(List<String> texts) {
        StringBuilder how = new StringBuilder();
        for (String text : texts) {
            int end = text.indexOf(". ");
            String sentence = end < 0 ? text : text.substring(0, end + 1);
            int half = sentence.indexOf("; ");
            if (sentence.length() > MOST_HOW && half > 0) { sentence = sentence.substring(0, half) + "."; }
            boolean isNew = how.indexOf(sentence) < 0;
            if (how.isEmpty() || (isNew && how.length() + sentence.length() < MOST_HOW)) {
                how.append(how.isEmpty() ? "" : " ").append(sentence);
            }
        }
        return how.toString();
    }

    /** A line for each job, bed by bed, under a heading for each bed where there are several. */
    private static List<String> parts(Round round, List<Task> tasks) {
        Map<String, List<Task>> byBed = tasks.stream()
                .collect(Collectors.groupingBy(task -> task.subject().bed().map(in -> in.bed().name()).orElse(""),
                        LinkedHashMap::new, Collectors.toList()));
        List<String> lines = new ArrayList<>();
        boolean isSaid = byBed.size() == 1 || byBed.keySet().stream().allMatch(
                bed -> byBed.getOrDefault(bed, List.of()).stream().allMatch(task -> task.title().contains(bed)));
        if (isSaid) { return jobs(round, tasks); }
        byBed.forEach((bed, its) -> {
            List<String> jobs = jobs(round, its);
            boolean isNamed = bed.isEmpty() || its.stream().allMatch(task -> task.title().contains(bed));
            if (isNamed) {
                lines.addAll(jobs);
            } else if (jobs.size() == 1) {
                lines.add("%s: %s".formatted(bed, jobs.get(0)));
            } else {
                lines.add("%s%s:".formatted(bed, weighed(its)));
                jobs.forEach(job -> lines.add(job.startsWith(" ") ? job : "- " + job));
            }
        });
        return lines;
    }

    /** What several jobs of a bed take together, so that each material is weighed once and shared out there. */
    private static String weighed(List<Task> tasks) {
        List<Task> taking = tasks.stream().filter(task -> task.amount().filter(it -> !it.buys().isEmpty()).isPresent())
                .toList();
        return taking.size() < 2 ? ""
                : ", in all %s".formatted(Words.list(Round.materials(taking).stream().map(Purchase::told).toList()));
    }

    private static List<String> jobs(Round round, List<Task> tasks) {
        Map<String, List<Task>> jobs = new LinkedHashMap<>();
        inOrder(round, tasks)
                .forEach(task -> jobs.computeIfAbsent(task.rule().id(), rule -> new ArrayList<>()).add(task));
        return jobs.values().stream().flatMap(job -> job(job).stream()).toList();
    }

    /** The tasks of one rule: what their titles have in common is said once, where that is shorter. */
    private static List<String> job(List<Task> tasks) {
        Map<String, List<Task>> byTitle = new LinkedHashMap<>();
        tasks.forEach(task -> byTitle.computeIfAbsent(title(task), title -> new ArrayList<>()).add(task));
        List<String> apart = new ArrayList<>();
        byTitle.forEach((title, its) -> apart.add("%s%s%s".formatted(title, TaskWords.amount(its.get(0)), days(its))));
        List<String> titles = List.copyOf(byTitle.keySet());
        if (titles.size() == 1) { return apart; }
        String before = common(titles);
        String after = reversed(
                common(titles.stream().map(title -> reversed(title.substring(before.length()))).toList()));
        List<String> together = new ArrayList<>();
        List<String> names = titles.stream()
                .map(title -> title.substring(before.length(), title.length() - after.length())).toList();
        together.add("%s%s%s".formatted(before, Words.names(names), after));
        List<List<Task>> each = List.copyOf(byTitle.values());
        for (int i = 0; i < names.size(); i++) {
            String more = TaskWords.amount(each.get(i).get(0)) + days(each.get(i));
            if (!more.isEmpty()) { together.add("  %s%s".formatted(names.get(i), more)); }
        }
        return String.join("", together).length() < String.join("", apart).length() ? together : apart;
    }

    private static String title(Task task) {
        return task.title().replace(task.subject().words(), task.subject().label());
    }

    /** With what all begin, up to a space and the marks beside it. */
    private static String common(List<String> texts) {
        String common = texts.get(0);
        for (String text : texts) {
            while (!text.startsWith(common)) {
                common = common.substring(0, common.length() - 1);
            }
        }
        int end = common.lastIndexOf(' ') + 1;
        while (end < common.length() && ":;,.".indexOf(common.charAt(end)) >= 0) {
            end++;
        }
        return common.substring(0, end);
    }

    private static String reversed(String text) { return new StringBuilder(text).reverse().toString(); }

    /** What comes again within the week. */
    private static String days(List<Task> tasks) {
        int every = tasks.get(0).rule().repeatDays();
        if (every == 0 || tasks.size() == 1) { return ""; }
        return ", every %s days: %s".formatted(every, tasks.stream().map(Task::day).sorted().map(Dates::weekday)
                .distinct().collect(Collectors.joining(", ")));
    }

    static String of(Task task) {
        List<String> lines = new ArrayList<>();
        TaskWords.minutes(task).ifPresent(lines::add);
        if (!task.rule().text().isEmpty()) { lines.add(task.rule().text()); }
        Cautions.lines(task.cautions()).stream().limit(1).forEach(line -> lines.add("Take care: " + line));
        lines.add("More: oldwood why %s".formatted(task.id()));
        return String.join("\n", lines);
    }
}
