package org.oldwood.sheet;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.season.Season;
import org.oldwood.season.StageDate;
import org.oldwood.words.Words;

/** When each crop buds, flowers, ripens and drops its leaves in a season, with how sure that is. */
final class StageChart {
    private StageChart() {}

    static Chart of(Ground ground, List<Crop> crops, Season season) {
        Axis axis = Axis.of(season);
        return Chart.of("Stages of growth", axis, axis.months(), ground.state().date(),
                crops.stream().map(crop -> row(ground, axis, crop, season)).toList());
    }

    private static Chart.Row row(Ground ground, Axis axis, Crop crop, Season season) {
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

    private static java.time.LocalDate latest(StageDate from, StageDate to) {
        return to.date().isBefore(from.date()) ? from.date() : to.date();
    }

    private static String in(StageDate from, StageDate to) {
        return Days.span(from.date(), to.date()) + Days.give(Math.max(from.plusMinusDays(), to.plusMinusDays()));
    }
}
