package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.plan.Task;
import org.oldwood.plan.Window;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;
import org.oldwood.words.Words;

/** A season drawn over its months: its stages of growth, and its tasks as spans, bed by bed. */
final class YearCharts {
    /** Spans named in the words beside a row; more are told by their number. */
    private static final int NAMED = 3;

    private static final int MOST_ROWS = 16;

    private YearCharts() {}

    static List<Season> seasons(List<Task> tasks) {
        return tasks.stream().map(Task::season).distinct().sorted().toList();
    }

    /** A chart for each bed that has tasks in the season, the whole garden's first. */
    static List<Chart> of(Ground ground, List<Task> tasks, Season season) {
        Axis axis = Axis.of(season);
        Map<String, List<TaskGroup>> byBed = new LinkedHashMap<>();
        byBed.put("", new ArrayList<>());
        ground.state().beds().keySet().forEach(id -> byBed.put(id, new ArrayList<>()));
        for (TaskGroup group : TaskGroup.of(tasks.stream().filter(it -> it.season().equals(season)).toList())) {
            byBed.computeIfAbsent(group.bed(), id -> new ArrayList<>()).add(group);
        }
        List<Chart> charts = new ArrayList<>();
        byBed.forEach((bed, groups) -> {
            // in parts, so that the months stand above every bar on paper too
            for (int from = 0; from < groups.size(); from += MOST_ROWS) {
                charts.add(Chart.of(title(ground, bed) + (from > 0 ? ", more" : ""), axis, ground.state().date(),
                        groups.subList(from, Math.min(groups.size(), from + MOST_ROWS)).stream()
                                .map(it -> row(axis, it)).toList()));
            }
        });
        return charts;
    }

    private static String title(Ground ground, String bed) {
        return bed.isEmpty() ? "The whole garden" : ground.state().bed(bed).map(it -> it.bed().name()).orElse(bed);
    }

    private static Chart.Row row(Axis axis, TaskGroup group) {
        Set<Window> windows = new LinkedHashSet<>();
        Set<LocalDate> days = new LinkedHashSet<>();
        Set<LocalDate> done = new LinkedHashSet<>();
        for (Task task : group.tasks()) {
            Window window = task.window();
            windows.add(new Window(window.first(), window.last(), window.plusMinusDays(), ""));
            (task.state() == Task.State.OPEN ? days : done).add(task.day());
        }
        List<Mark> marks = new ArrayList<>();
        maybe(axis, windows, marks);
        windows.forEach(it -> marks.add(Mark.span("window", axis, it.first(), it.last())));
        done.stream().filter(axis::holds).forEach(day -> marks.add(Mark.on("done", axis, day)));
        days.stream().filter(axis::holds).forEach(day -> marks.add(Mark.on("day", axis, day)));
        return new Chart.Row(group.rule().id() + "@" + group.bed(), group.rule().craft(),
                group.title() + (group.tasks().size() > 1 ? " (" + several(group) + ")" : ""),
                words(List.copyOf(windows)), marks);
    }

    /** How far off the windows may lie; spans that touch are drawn as one. */
    private static void maybe(Axis axis, Set<Window> windows, List<Mark> marks) {
        LocalDate from = LocalDate.MIN;
        LocalDate to = LocalDate.MIN;
        List<Window> inOrder = new ArrayList<>(windows);
        inOrder.sort(Comparator.comparing(it -> it.first().minusDays(it.plusMinusDays())));
        for (Window window : inOrder) {
            LocalDate first = window.first().minusDays(window.plusMinusDays());
            LocalDate last = window.last().plusDays(window.plusMinusDays());
            if (first.isAfter(to)) {
                span(axis, from, to, marks);
                from = first;
            }
            to = last.isAfter(to) ? last : to;
        }
        span(axis, from, to, marks);
    }

    private static void span(Axis axis, LocalDate from, LocalDate to, List<Mark> marks) {
        if (to.isAfter(LocalDate.MIN)) { marks.add(Mark.span("maybe", axis, from, to)); }
    }

    private static String several(TaskGroup group) {
        long subjects = group.tasks().stream().map(it -> it.subject().id()).distinct().count();
        return subjects > 1 ? Long.toString(subjects) : group.tasks().size() + " times";
    }

    private static String words(List<Window> windows) {
        if (windows.size() > NAMED) {
            LocalDate last = windows.stream().map(Window::last).max(LocalDate::compareTo).orElseThrow();
            return windows.size() + " spans, " + Shown.span(windows.get(0).first(), last);
        }
        return windows.stream().map(it -> Shown.span(it.first(), it.last()) + Shown.give(it.plusMinusDays()))
                .collect(Collectors.joining("; "));
    }

    /** When each crop buds, flowers, ripens and drops its leaves in a season, with how sure that is. */
    static Chart stages(Ground ground, List<Crop> crops, Season season) {
        Axis axis = Axis.of(season);
        return Chart.of("Stages of growth", axis, ground.state().date(),
                crops.stream().map(crop -> stages(ground, axis, crop, season)).toList());
    }

    private static Chart.Row stages(Ground ground, Axis axis, Crop crop, Season season) {
        StageDate bud = ground.stages().date(crop, season, Stage.BUD_BURST);
        StageDate flower = ground.stages().date(crop, season, Stage.FIRST_FLOWER);
        StageDate petals = ground.stages().date(crop, season, Stage.PETAL_FALL);
        StageDate ripe = ground.stages().date(crop, season, Stage.RIPE);
        StageDate leaf = ground.stages().date(crop, season, Stage.LEAF_FALL_BEGINS);
        StageDate bare = ground.stages().date(crop, season, Stage.LEAF_FALL_DONE);
        List<Mark> marks = new ArrayList<>();
        for (StageDate[] pair : new StageDate[][]{{bud, bud}, {flower, petals}, {ripe, ripe}, {leaf, bare}}) {
            maybe(axis, pair[0], pair[1], marks);
        }
        marks.add(Mark.on("bud", axis, bud.date()));
        marks.add(Mark.span("flower", axis, flower.date(), latest(flower, petals)));
        marks.add(Mark.on("ripe", axis, ripe.date()));
        marks.add(Mark.span("leaf", axis, leaf.date(), latest(leaf, bare)));
        String words = "buds %s, flower %s, ripe %s, leaf fall %s".formatted(in(bud, bud), in(flower, petals),
                in(ripe, ripe), in(leaf, bare));
        return new Chart.Row("stages@" + crop.id(), "", Words.capital(crop.plural()), words, marks);
    }

    private static void maybe(Axis axis, StageDate from, StageDate to, List<Mark> marks) {
        if (from.plusMinusDays() + to.plusMinusDays() > 0) {
            marks.add(Mark.span("maybe", axis, from.date().minusDays(from.plusMinusDays()),
                    latest(from, to).plusDays(to.plusMinusDays())));
        }
    }

    private static LocalDate latest(StageDate from, StageDate to) {
        return to.date().isBefore(from.date()) ? from.date() : to.date();
    }

    private static String in(StageDate from, StageDate to) {
        return Shown.span(from.date(), to.date()) + Shown.give(Math.max(from.plusMinusDays(), to.plusMinusDays()));
    }
}
