package org.oldwood.report;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LikelyDay;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.Milestone;
import org.oldwood.craft.cuttings.NurseryBed;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.LotState;
import org.oldwood.words.Words;

/** Lots of cuttings as JSON has them; keys are only ever added. */
public final class LotJson {
    private record Lots(List<Object> lots) {}

    private record Told(String lot, String crop, Optional<String> parent, String form, @JsonUnwrapped Fate fate,
            List<String> parentWarnings) {}

    /** One of which nothing can be told: only what was noted. */
    private record Noted(String lot, String crop, Optional<String> parent, String form, String method, int struck,
            LocalDate struckOn, List<String> parentWarnings) {}

    private record NotNoted(String crop, @JsonUnwrapped Fate fate) {}

    private record Plants(double expected, int p10, int p50, int p90) {}

    private record Step(String step, String season, LocalDate from, LocalDate to, int plusMinusDays,
            List<String> sources) {
        static Step of(Milestone one) {
            return new Step(one.step().key(), one.season().label(), one.from().date(), one.to().date(),
                    one.from().plusMinusDays(), one.sources());
        }
    }

    private record Crop(String season, double share, double expectedKg, double p10Kg, double p50Kg, double p90Kg) {
        static Crop of(Forecast.SeasonCrop crop) {
            return new Crop(crop.season().label(), Words.rounded(crop.share(), 3), Words.rounded(crop.expectedKg(), 3),
                    Words.rounded(crop.lowKg(), 3), Words.rounded(crop.middleKg(), 3), Words.rounded(crop.highKg(), 3));
        }
    }

    private record Fate(String method, String cut, int struck, LocalDate struckOn, int alive, LocalDate countedOn,
            long daysOutsideWindow, Plants plants, String firstPick, String fullCrop, List<Step> steps,
            List<Crop> crops, List<String> warnings) {
        static Fate of(LotCounts counts, Forecast forecast) {
            return new Fate(forecast.course().method().id(), forecast.course().cut().id(), counts.struck(),
                    counts.struckOn(), counts.alive(), counts.countedOn(), forecast.line().daysOutside(),
                    new Plants(Words.rounded(forecast.plants().mean(), 3), forecast.plants().quantile(0.1),
                            forecast.plants().quantile(0.5), forecast.plants().quantile(0.9)),
                    forecast.line().firstPick().label(), forecast.line().fullCrop().label(),
                    Milestone.of(forecast.line(), forecast.course()).stream().map(Step::of).toList(),
                    forecast.crops().stream().map(Crop::of).toList(), LotWords.warnings(forecast));
        }
    }

    /** How many to strike, and when. */
    public record ToStrike(OptionalInt want, Optional<Double> wantKg, String by, double sure, boolean tooLate,
            String earliest, OptionalInt strike, double chance, LocalDate strikeFrom, LocalDate strikeBy,
            Optional<LocalDate> latest, Optional<Double> rowM, Optional<Double> areaM2) {
        public static ToStrike of(StrikePlan.Want want, StrikePlan plan, Optional<NurseryBed> room) {
            return new ToStrike(want.plants(), want.kg().stream().boxed().findFirst(), want.by().label(), want.sure(),
                    plan.isTooLate(), plan.earliest().label(), plan.number(), Words.rounded(plan.chance(), 3),
                    plan.strikeFrom().date(), plan.strikeBy().date(), plan.latest().map(LikelyDay::date),
                    room.map(bed -> Words.rounded(bed.rowM(), 3)),
                    room.flatMap(NurseryBed::areaM2).map(area -> Words.rounded(area, 3)));
        }
    }

    private LotJson() {}

    public static Record lots(LotBook book, List<LotState> lots) {
        return new Lots(lots.stream().map(lot -> lot(book, lot)).toList());
    }

    private static Object lot(LotBook book, LotState lot) {
        List<String> warnings = book.parentHealth(lot).map(ParentHealth::warnings).orElse(List.of()).stream()
                .map(ParentHealth.Warning::words).toList();
        Optional<Forecast> forecast = book.forecast(lot);
        return forecast.isPresent()
                ? new Told(lot.id(), lot.crop(), lot.parent(), book.form(lot),
                        Fate.of(book.counts(lot), forecast.get()), warnings)
                : new Noted(lot.id(), lot.crop(), lot.parent(), book.form(lot), lot.method(), lot.struck(),
                        lot.struckOn(), warnings);
    }

    public static Record lot(String crop, LotCounts counts, Forecast forecast) {
        return new NotNoted(crop, Fate.of(counts, forecast));
    }
}
