package org.oldwood.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.garden.Season;

/**
 * Puts what was seen beside what was modelled, for one crop in one season. A stage seen this season
 * is its own date. The others are the models' dates, moved by the mean difference of past seasons,
 * shrunk where there were few, and then by the difference of the latest stage seen this season.
 */
final class SeenStages {
    private final ModelledStages stages;
    private final Crop crop;
    private final Season season;
    private final Map<Stage, LocalDate> seen;
    private final double shrink;
    private final double toAutumn;

    /**
     * By how many days past seasons move a stage, from how many seasons, and how much these weigh.
     */
    private record Past(double days, int seasons, double weight, Stage from) {}

    SeenStages(ModelledStages stages, Crop crop, Season season) {
        this.stages = stages;
        this.crop = crop;
        this.season = season;
        this.seen = stages.sightings().in(crop.id(), season);
        this.shrink = stages.methods().shrink().is();
        this.toAutumn = stages.methods().carriedToAutumn().is();
    }

    Map<Stage, StageDate> dates() {
        Map<Stage, StageDate> dates = new EnumMap<>(Stage.class);
        LocalDate earliest = LocalDate.MIN;
        for (Stage stage : Stage.values()) {
            if (stage != Stage.DORMANT) {
                StageDate date = inOrder(date(stage), stage, earliest);
                dates.put(stage, date);
                earliest = date.date();
            }
        }
        return dates;
    }

    /** Corrections differ by stage; they must not bring the stages out of their order. */
    private StageDate inOrder(StageDate date, Stage stage, LocalDate earliest) {
        if (date.basis() == Basis.SEEN) {
            return date;
        }
        Optional<Stage> later = firstSeenAfter(stage);
        LocalDate latest = later.map(this::seenOn).orElse(LocalDate.MAX);
        if (date.date().isAfter(latest)) {
            return new StageDate(
                    latest,
                    date.plusMinusDays(),
                    Basis.MODELLED,
                    date.words() + "; before " + later.get().words() + ", seen on " + latest,
                    date.sources());
        }
        return date.date().isBefore(earliest) ? date.on(earliest) : date;
    }

    private Optional<Stage> firstSeenAfter(Stage stage) {
        return seen.keySet().stream()
                .filter(each -> each.compareTo(stage) > 0)
                .min(Stage::compareTo);
    }

    private StageDate date(Stage stage) {
        LocalDate own = seen.get(stage);
        if (own != null) {
            String words = stage.words() + " seen in the garden on " + own;
            return new StageDate(own, 0, Basis.SEEN, words, List.of());
        }
        Modelled model = modelledAt(stage);
        Optional<Past> past = past(stage);
        double days = corrected(stage, past);
        StringBuilder words = new StringBuilder(model.words());
        past.ifPresent(each -> words.append(pastWords(each, Math.round(days))));
        Optional<Stage> before = lastSeenBefore(stage);
        double plusMinus = model.plusMinus() * narrowed(past);
        LocalDate date = model.date().plusDays(Math.round(days));
        if (before.isPresent()) {
            date = afterSeen(stage, before.get(), date);
            plusMinus = follows(stage, before.get()) ? model.own() : plusMinus;
            words.append("; moved by ").append(before.get().words()).append(", seen on ");
            words.append(seenOn(before.get()));
        }
        return new StageDate(
                date,
                (int) Math.ceil(plusMinus),
                basis(model, past, before),
                words.toString(),
                model.sources());
    }

    /** A calendar date that was moved by what was seen here is no mere calendar date any more. */
    private static Basis basis(Modelled model, Optional<Past> past, Optional<Stage> before) {
        return past.isPresent() || before.isPresent() ? Basis.MODELLED : model.basis();
    }

    private static String pastWords(Past past, long days) {
        String how =
                days == 0
                        ? "; borne out by "
                        : "; "
                                + Math.abs(days)
                                + (Math.abs(days) == 1 ? " day" : " days")
                                + (days < 0 ? " earlier" : " later")
                                + " for ";
        return how
                + past.from().words()
                + " as seen in "
                + past.seasons()
                + (past.seasons() == 1 ? " past season" : " past seasons");
    }

    private Modelled modelledAt(Stage stage) {
        return stages.modelled(crop, season, stage);
    }

    private LocalDate seenOn(Stage stage) {
        return java.util.Objects.requireNonNull(seen.get(stage));
    }

    private Optional<Stage> lastSeenBefore(Stage stage) {
        return seen.keySet().stream()
                .filter(each -> each.compareTo(stage) < 0)
                .max(Stage::compareTo);
    }

    /** Whether the stage's own rule starts from that other stage. */
    private boolean follows(Stage stage, Stage before) {
        StageRule rule = stages.of(crop).rules().get(stage);
        return (rule instanceof StageRule.Days days && days.of() == before)
                || (rule instanceof StageRule.HeatAfter after && after.of() == before);
    }

    private LocalDate afterSeen(Stage stage, Stage before, LocalDate corrected) {
        LocalDate on = seenOn(before);
        LocalDate expected =
                modelledAt(before).date().plusDays(Math.round(corrected(before, past(before))));
        long early = on.toEpochDay() - expected.toEpochDay();
        LocalDate moved = corrected.plusDays(Math.round(early * carried(before, stage)));
        if (stages.of(crop).rules().get(stage) instanceof StageRule.HeatAfter rule
                && rule.of() == before) {
            moved = stages.after(crop, season, rule, on).orElse(moved);
        }
        return moved.isAfter(on) ? moved : on.plusDays(1);
    }

    private double carried(Stage from, Stage to) {
        return isAutumn(to) && !isAutumn(from) ? toAutumn : 1;
    }

    private static boolean isAutumn(Stage stage) {
        return stage.compareTo(Stage.LEAF_FALL_BEGINS) >= 0;
    }

    private double corrected(Stage stage, Optional<Past> past) {
        return past.map(each -> each.days() * carried(each.from(), stage)).orElse(0.0);
    }

    /** The variance between gardens shrinks with each season; that between years does not. */
    private double narrowed(Optional<Past> past) {
        double seasons = past.map(Past::weight).orElse(0.0);
        return Math.sqrt((shrink + shrink / (seasons + shrink)) / (shrink + 1));
    }

    /**
     * From the stage's own sightings, or at half their weight those of the nearest earlier stage,
     * of the nearest later one where no earlier one was seen.
     */
    private Optional<Past> past(Stage stage) {
        Optional<Past> own = pastOf(stage, 1);
        if (own.isPresent()) {
            return own;
        }
        Optional<Past> nearest = Optional.empty();
        for (Stage other : Stage.values()) {
            boolean earlier = other.compareTo(stage) < 0;
            if (earlier || (nearest.isEmpty() && !isAutumn(other))) {
                Optional<Past> past = pastOf(other, 0.5);
                nearest = past.isPresent() ? past : nearest;
            }
        }
        return nearest;
    }

    private Optional<Past> pastOf(Stage stage, double weight) {
        List<Double> differences = new ArrayList<>();
        for (Season each : stages.sightings().before(crop.id(), season)) {
            LocalDate on = stages.sightings().in(crop.id(), each).get(stage);
            if (on != null) {
                LocalDate model = stages.modelledDay(crop, each, stage);
                differences.add((double) (on.toEpochDay() - model.toEpochDay()));
            }
        }
        if (differences.isEmpty()) {
            return Optional.empty();
        }
        double seasons = differences.size() * weight;
        double mean = differences.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return Optional.of(
                new Past(mean * seasons / (seasons + shrink), differences.size(), seasons, stage));
    }
}
