package org.oldwood.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oldwood.craft.cuttings.Around;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.Milestone;
import org.oldwood.craft.cuttings.Milestones;
import org.oldwood.craft.cuttings.SeasonCrop;
import org.oldwood.garden.LotState;
import org.oldwood.report.LotWords;

/** Shows what becomes of the lots of cuttings. */
final class LotCards {
    private static final double PERCENT = 100;

    private LotCards() {}

    static List<LotCard> of(Ground ground, List<LotState> lots) {
        List<LotCard> cards = new ArrayList<>();
        for (LotState lot : lots) {
            ground.lots().forecast(lot).ifPresent(it -> cards.add(card(ground, lot, it)));
        }
        return cards;
    }

    private static LotCard card(Ground ground, LotState lot, Forecast forecast) {
        String crop = ground.world().crops().get(lot.crop()).name();
        return new LotCard(
                crop.substring(0, 1).toUpperCase(Locale.ROOT)
                        + crop.substring(1)
                        + ", "
                        + forecast.course().method().name(),
                lot.id(),
                LotWords.stands(ground.lots().counts(lot)),
                LotWords.plants(forecast),
                chart(ground, forecast),
                crops(forecast),
                LotWords.warnings(forecast));
    }

    private static Chart chart(Ground ground, Forecast forecast) {
        List<Milestone> steps = Milestones.of(forecast.line(), forecast.course());
        LocalDate last = steps.stream()
                .map(it -> it.to().date().plusDays(it.to().plusMinusDays()))
                .max(LocalDate::compareTo)
                .orElseThrow();
        LocalDate first = steps.stream()
                .map(it -> it.from().date().minusDays(it.from().plusMinusDays()))
                .min(LocalDate::compareTo)
                .orElseThrow();
        Axis axis = new Axis(first.withDayOfMonth(1), last.plusMonths(1).withDayOfMonth(1));
        List<Chart.Row> rows = new ArrayList<>();
        for (Milestone step : steps) {
            rows.add(new Chart.Row(
                    step.step().key() + "@" + step.season().label(),
                    "",
                    step.step().words(),
                    when(step),
                    marks(axis, step)));
        }
        return Chart.of("", axis, axis.years(), ground.state().date(), rows);
    }

    private static List<Mark> marks(Axis axis, Milestone step) {
        List<Mark> marks = new ArrayList<>();
        Around from = step.from();
        Around to = step.to();
        if (from.plusMinusDays() + to.plusMinusDays() > 0) {
            marks.add(Mark.span(
                    "maybe",
                    axis,
                    from.date().minusDays(from.plusMinusDays()),
                    to.date().plusDays(to.plusMinusDays())));
        }
        marks.add(
                from.date().isBefore(to.date())
                        ? Mark.span("window", axis, from.date(), to.date())
                        : Mark.on("day", axis, from.date()));
        return marks;
    }

    private static String when(Milestone step) {
        return step.from().equals(step.to())
                ? LotWords.around(step.from())
                : LotWords.around(step.from()) + " to " + LotWords.around(step.to());
    }

    private static List<LotCard.Crop> crops(Forecast forecast) {
        List<SeasonCrop> all = forecast.crops();
        double most = all.stream().mapToDouble(SeasonCrop::highKg).max().orElse(0);
        return all.stream()
                .filter(it -> it.share() > 0)
                .map(it -> new LotCard.Crop(
                        it.season().label(),
                        Math.round(PERCENT * it.share()),
                        new KgBar(it.lowKg(), it.middleKg(), it.highKg(), most)))
                .toList();
    }
}
