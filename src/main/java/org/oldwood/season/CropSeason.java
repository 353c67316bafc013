package org.oldwood.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Stage;
import org.oldwood.words.Dates;
import org.oldwood.words.Words;

/** Works out a crop's models in one season, without anything that was seen. */
record CropSeason(Crop crop, CropStages stages, SeasonClimate season, Stages calendar, StageModel model,
        Map<Stage, Modelled> done, Map<Stage, Optional<LocalDate>> days) {

    CropSeason(Crop crop, CropStages stages, SeasonClimate season, Stages calendar) {
        this(crop, stages, season, calendar, season.model(stages.chill()), new EnumMap<>(Stage.class),
                new EnumMap<>(Stage.class));
    }

    /** What is known of a stage, with its words. */
    Modelled at(Stage stage) {
        Modelled found = atPlace(stage);
        return found.basis() == Basis.MODELLED
                ? found.lessSureBy(season.placeDays(stage) * model.shareToCome(found.date()))
                : found;
    }

    /** The same as if the climate were the place's own; worked out when first asked for. */
    private Modelled atPlace(Stage stage) {
        return done.computeIfAbsent(stage,
                each -> stages.rules().containsKey(each) ? byRule(each) : byCalendar(each, ""));
    }

    LocalDate day(Stage stage) { return modelDay(stage).orElseGet(() -> calendarDay(stage).date()); }

    private StageDate calendarDay(Stage stage) { return calendar.date(crop, season.days().season(), stage); }

    /** The day by the crop's own rule; empty where it has none, or the rule is never met. */
    private Optional<LocalDate> modelDay(Stage stage) {
        return days.computeIfAbsent(stage, this::findDay);
    }

    private Optional<LocalDate> findDay(Stage stage) {
        StageRule rule = stages.rules().get(stage);
        if (isUnsuited(stage)) { return Optional.empty(); }
        if (rule instanceof StageRule.Heat heat) { return model.heat(heat); }
        if (rule instanceof StageRule.Days after) {
            return Optional.of(day(after.of()).plusDays((long) after.days().is()));
        }
        if (rule instanceof StageRule.HeatAfter after) {
            return Optional.of(model.heatAfter(after, after.sum(), day(after.of())));
        }
        if (rule instanceof StageRule.MeanRises rises) { return model.meanRises(rises); }
        return rule instanceof StageRule.LeafFall fall ? Optional.of(model.leafFall(fall)) : Optional.empty();
    }

    private Modelled byRule(Stage stage) {
        StageRule rule = stages.rules().get(stage);
        if (rule instanceof StageRule.Heat heat) { return dated(stage, heat, heatWords(heat), heat.sum()); }
        if (rule instanceof StageRule.Days days) { return byDays(stage, days); }
        if (rule instanceof StageRule.HeatAfter after) { return byHeatAfter(stage, after); }
        if (rule instanceof StageRule.MeanRises rises) {
            return dated(stage, rises, "the daily mean rises above %s °C%s"
                    .formatted(Words.fixed(rises.aboveC().is(), 1), rises.aboveC().seen().beside()), rises.aboveC());
        }
        return byLeafFall(stage, (StageRule.LeafFall) java.util.Objects.requireNonNull(rule));
    }

    private String heatWords(StageRule.Heat heat) {
        return "warmth above %s °C adds up to %s °C·d%s%s%s".formatted(Words.fixed(heat.baseC(), 1),
                Words.fixed(heat.sum().is(), 1), heat.sum().seen().beside(),
                heat.dayLength() ? ", long days counting more" : "",
                model.far(heat).isEmpty() ? "" : " (" + model.far(heat) + ")");
    }

    private Modelled byDays(Stage stage, StageRule.Days rule) {
        Modelled of = atPlace(rule.of());
        long days = (long) rule.days().is();
        String words = "%s days %s %s%s".formatted(Math.abs(days), days < 0 ? "before" : "after", rule.of().words(),
                rule.days().seen().beside());
        return follows(stage, of, rule.plusMinus().is(), words, rule.days());
    }

    private Modelled byHeatAfter(Stage stage, StageRule.HeatAfter rule) {
        Modelled of = atPlace(rule.of());
        double kinds = 0;
        if (rule.early().isPresent() && rule.late().isPresent()) {
            LocalDate early = model.heatAfter(rule, rule.early().get(), of.date());
            LocalDate late = model.heatAfter(rule, rule.late().get(), of.date());
            kinds = (late.toEpochDay() - early.toEpochDay()) / 2.0;
        }
        String words = "warmth above %s °C from %s adds up to %s °C·d%s%s".formatted(Words.fixed(rule.baseC(), 1),
                rule.of().words(), Words.fixed(rule.sum().is(), 1), rule.sum().seen().beside(),
                kinds > 0 ? "; early and late cultivars differ" : "");
        return follows(stage, of, Math.hypot(rule.plusMinus().is(), kinds), words, rule.sum());
    }

    private Modelled follows(Stage stage, Modelled of, double plusMinus, String words, Figure figure) {
        List<String> sources = Stream.concat(of.sources().stream(), figure.sources().stream()).distinct().toList();
        return new Modelled(day(stage), Math.hypot(of.plusMinus(), plusMinus), plusMinus, of.basis(),
                words(stage, words, of.basis()) + (of.basis() == Basis.MODELLED ? shortness(stage) : ""), sources);
    }

    private Modelled byLeafFall(Stage stage, StageRule.LeafFall rule) {
        double autumnC = model.autumnC();
        boolean seen = autumnC <= season.autumn().unseenAbove().is() && !season.isSouth();
        double held = model.heldAutumnC();
        String words = "the sun of %s, %s days later for each °C that the mean of %s to %s, %s °C here%s, lies above %s °C%s%s"
                .formatted(Dates.dayMonth(season.days().on(rule.north())), Words.fixed(rule.perC().is(), 1),
                        Dates.dayMonth(season.days().on(season.autumn().from())),
                        Dates.dayMonth(season.days().on(season.autumn().to())), Words.one(autumnC),
                        held == autumnC ? "" : " but held at %s".formatted(Words.one(held)),
                        Words.fixed(rule.atC().is(), 1), rule.perC().seen().beside(),
                        seen ? "" : "; rows are from cooler northern autumns");
        return modelled(stage, (seen ? rule.plusMinus() : rule.unseenPlusMinus()).is(), words, rule.perC());
    }

    private Modelled dated(Stage stage, StageRule rule, String words, Figure figure) {
        if (isUnsuited(stage)) { return byCalendar(stage, "; it will not suit here" + shortness(stage)); }
        if (modelDay(stage).isEmpty()) { return byCalendar(stage, "; here it never comes that " + words); }
        double mild = isSpring(stage) ? stages.chill().map(season::mildPlusMinus).orElse(0.0) : 0;
        double own = rule.plusMinus().is();
        if (rule instanceof StageRule.Heat && model.isMeasured()) {
            own = season.leadDays(model.toCome(day(stage)), own);
        }
        return modelled(stage, Math.max(own, mild), words, figure);
    }

    private Modelled modelled(Stage stage, double plusMinus, String words, Figure figure) {
        return new Modelled(modelDay(stage).orElseThrow(), plusMinus, plusMinus, Basis.MODELLED,
                words(stage, words, Basis.MODELLED) + shortness(stage), figure.sources());
    }

    /** Whether a winter without chill leaves a spring stage that warmth brings to the calendar. */
    private boolean isUnsuited(Stage stage) {
        StageRule rule = stages.rules().get(stage);
        return isSpring(stage) && (rule instanceof StageRule.Heat || rule instanceof StageRule.MeanRises)
                && stages.chill().filter(season::unsuited).isPresent();
    }

    private static boolean isSpring(Stage stage) { return stage.compareTo(Stage.RIPE) < 0; }

    private String shortness(Stage stage) {
        if (!isSpring(stage) || stages.chill().filter(season::isShort).isEmpty()) { return ""; }
        return "; chill falls short, so buds may open late and unevenly: " + season.chill(stages.chill()).inWords();
    }

    private String words(Stage stage, String how, Basis basis) {
        return stage.words() + ": " + how + (basis == Basis.MODELLED ? ", " + season.basis() : "");
    }

    private Modelled byCalendar(Stage stage, String why) { return Modelled.of(calendarDay(stage), why); }
}
