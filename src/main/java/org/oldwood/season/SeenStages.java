package org.oldwood.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;

/**
 * Puts what was seen beside what was modelled, for one crop in one season. A stage seen this season is its own date.
 * The others are the models' dates, moved by the mean difference of past seasons, shrunk where there were few, and then
 * by the difference of the latest stage seen this season.
 */
final class SeenStages {
    private static final List<Stage> ALL = List.of(Stage.values());

    private final ModelledStages stages;
    private final Crop crop;
    private final Season season;
    private final Map<Stage, LocalDate> seen;
    private final double shrink;
    private final double toAutumn;

    private final Map<Stage, Optional<Past>> pasts = new EnumMap<>(Stage.class);
    private final Map<Stage, StageDate> dates = new EnumMap<>(Stage.class);
    private final Map<Stage, LocalDate> days;

    /** By how many days past seasons move a stage, from how many seasons, and how much these weigh. */
    private record Past(double days, int seasons, double weight, Stage from) {}

    SeenStages(ModelledStages stages, Crop crop, Season season) {
        this.stages = stages;
        this.crop = crop;
        this.season = season;
        this.seen = stages.believed(crop, season);
        this.shrink = stages.methods().sightings().shrink().is();
        this.toAutumn = stages.methods().sightings().carriedToAutumn().is();
        this.days = inOrder();
    }

    /** The day of a stage other than {@link Stage#DORMANT}. */
    LocalDate day(Stage stage) {
        LocalDate day = days.get(stage);
        if (day == null) { throw new IllegalStateException("no date for " + stage + " of " + crop.id()); }
        return day;
    }

    /** The date of a stage other than {@link Stage#DORMANT}, with its words. */
    StageDate at(Stage stage) {
        return dates.computeIfAbsent(stage, this::date);
    }

    /** Corrections differ by stage; they must not bring the stages out of their order. */
    private Map<Stage, LocalDate> inOrder() {
        Map<Stage, LocalDate> all = new EnumMap<>(Stage.class);
        LocalDate earliest = LocalDate.MIN;
        for (Stage stage : ALL) {
            if (stage == Stage.DORMANT) { continue; }
            LocalDate day = seen.get(stage);
            if (day == null) {
                day = corrected(stage);
                LocalDate latest = firstSeenAfter(stage).map(this::seenOn).orElse(LocalDate.MAX);
                if (day.isAfter(latest)) {
                    day = latest;
                } else if (day.isBefore(earliest)) { day = earliest; }
            }
            all.put(stage, day);
            earliest = day;
        }
        return all;
    }

    /** The models' day, moved by what was seen; not yet in order with the other stages. */
    private LocalDate corrected(Stage stage) {
        LocalDate day = stages.modelledDay(crop, season, stage).plusDays(Math.round(corrected(stage, past(stage))));
        Optional<Stage> before = lastSeenBefore(stage);
        return before.isPresent() ? afterSeen(stage, before.get(), day) : day;
    }

    private Optional<Stage> firstSeenAfter(Stage stage) {
        return seen.keySet().stream().filter(each -> each.compareTo(stage) > 0).min(Comparator.naturalOrder());
    }

    private StageDate date(Stage stage) {
        LocalDate own = seen.get(stage);
        if (own != null) {
            String words = stage.words() + " seen in the garden on " + own;
            return new StageDate(own, 0, Basis.SEEN, words, List.of());
        }
        Modelled model = stages.modelled(crop, season, stage);
        Optional<Past> past = past(stage);
        StringBuilder words = new StringBuilder(model.words());
        if (past.isPresent()) { words.append(pastWords(past.get(), Math.round(corrected(stage, past)))); }
        Optional<Stage> before = lastSeenBefore(stage);
        double plusMinus = model.plusMinus() * narrowed(past);
        if (before.isPresent()) {
            plusMinus = Math.min(plusMinus, seen.keySet().stream().filter(each -> each.compareTo(stage) < 0)
                    .mapToDouble(each -> Math.sqrt(variance(stage, each))).min().orElse(plusMinus));
            words.append("; moved by %s, seen on %s".formatted(before.get().words(), seenOn(before.get())));
        }
        if (stages.of(crop).rules().get(stage) instanceof StageRule.HeatAfter rule) {
            stages.far(crop, season, rule, day(rule.of())).ifPresent(far -> words.append("; ").append(far));
        }
        // a calendar date that was moved by what was seen here is no mere calendar date any more
        Basis basis = past.isPresent() || before.isPresent() ? Basis.MODELLED : model.basis();
        Optional<Stage> later = firstSeenAfter(stage);
        if (later.isPresent() && corrected(stage).isAfter(seenOn(later.get()))) {
            basis = Basis.MODELLED;
            words.append("; before %s, seen on %s".formatted(later.get().words(), seenOn(later.get())));
        }
        return new StageDate(day(stage), (int) Math.ceil(plusMinus), basis, words.toString(), model.sources());
    }

    private static String pastWords(Past past, long days) {
        String how = days == 0 ? "; borne out by "
                : "; %s%s%s for ".formatted(Math.abs(days), Math.abs(days) == 1 ? " day" : " days",
                        days < 0 ? " earlier" : " later");
        return how + past.from().words() + " as seen in " + past.seasons()
                + (past.seasons() == 1 ? " past season" : " past seasons");
    }

    private LocalDate seenOn(Stage stage) { return java.util.Objects.requireNonNull(seen.get(stage)); }

    private Optional<Stage> lastSeenBefore(Stage stage) {
        return seen.keySet().stream().filter(each -> each.compareTo(stage) < 0).max(Comparator.naturalOrder());
    }

    /** What the rules that lead from one stage to another leave open between the two, days²; infinite where none do. */
    private double variance(Stage one, Stage other) {
        if (one == other) { return 0; }
        double up = start(one).map(each -> own(one) + variance(each, other)).orElse(Double.POSITIVE_INFINITY);
        double down = start(other).map(each -> own(other) + variance(one, each)).orElse(Double.POSITIVE_INFINITY);
        return Math.min(up, down);
    }

    private double own(Stage stage) {
        double own = stages.modelled(crop, season, stage).own();
        return own * own;
    }

    /** The stage that the stage's own rule starts from. */
    private Optional<Stage> start(Stage stage) {
        StageRule rule = stages.of(crop).rules().get(stage);
        if (rule instanceof StageRule.Days days) { return Optional.of(days.of()); }
        return rule instanceof StageRule.HeatAfter after ? Optional.of(after.of()) : Optional.empty();
    }

    private LocalDate afterSeen(Stage stage, Stage before, LocalDate corrected) {
        LocalDate on = seenOn(before);
        LocalDate expected = stages.modelledDay(crop, season, before)
                .plusDays(Math.round(corrected(before, past(before))));
        long early = on.toEpochDay() - expected.toEpochDay();
        LocalDate moved = corrected.plusDays(Math.round(early * carried(before, stage)));
        if (stages.of(crop).rules().get(stage) instanceof StageRule.HeatAfter rule && rule.of() == before) {
            moved = stages.after(crop, season, rule, on).orElse(moved);
        }
        return moved.isAfter(on) ? moved : on.plusDays(1);
    }

    private double carried(Stage from, Stage to) { return isAutumn(to) && !isAutumn(from) ? toAutumn : 1; }

    private static boolean isAutumn(Stage stage) { return stage.compareTo(Stage.LEAF_FALL_BEGINS) >= 0; }

    private double corrected(Stage stage, Optional<Past> past) {
        return past.map(each -> each.days() * carried(each.from(), stage)).orElse(0.0);
    }

    /** The variance between gardens shrinks with each season; that between years does not. */
    private double narrowed(Optional<Past> past) {
        double seasons = past.map(Past::weight).orElse(0.0);
        return Math.sqrt((shrink + shrink / (seasons + shrink)) / (shrink + 1));
    }

    /**
     * From the stage's own sightings, or at half their weight those of the nearest earlier stage, of the nearest later
     * one where no earlier one was seen.
     */
    private Optional<Past> past(Stage stage) {
        return pasts.computeIfAbsent(stage,
                each -> stages.sightings().before(crop.id(), season).isEmpty() ? Optional.empty() : findPast(each));
    }

    private Optional<Past> findPast(Stage stage) {
        Optional<Past> own = pastOf(stage, 1);
        if (own.isPresent()) { return own; }
        Optional<Past> nearest = Optional.empty();
        for (Stage other : ALL) {
            boolean earlier = other.compareTo(stage) < 0;
            if (earlier || (nearest.isEmpty() && !isAutumn(other))) {
                Optional<Past> past = pastOf(other, 0.5);
                nearest = past.isPresent() ? past : nearest;
            }
        }
        return nearest;
    }

    private Optional<Past> pastOf(Stage stage, double weight) {
        long sum = 0;
        int count = 0;
        for (Season each : stages.sightings().before(crop.id(), season)) {
            LocalDate on = stages.believed(crop, each).get(stage);
            if (on != null) {
                LocalDate model = stages.modelledDay(crop, each, stage);
                sum += on.toEpochDay() - model.toEpochDay();
                count++;
            }
        }
        if (count == 0) { return Optional.empty(); }
        double seasons = count * weight;
        double mean = (double) sum / count;
        return Optional.of(new Past(mean * seasons / (seasons + shrink), count, seasons, stage));
    }
}
