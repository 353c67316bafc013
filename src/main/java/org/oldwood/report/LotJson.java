package org.oldwood.report;

import java.util.List;
import java.util.Optional;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LikelyDay;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.Milestone;
import org.oldwood.craft.cuttings.Milestones;
import org.oldwood.craft.cuttings.NurseryBed;
import org.oldwood.craft.cuttings.SeasonCrop;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.craft.cuttings.Want;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.facts.cuttings.LotBook;
import org.oldwood.garden.LotState;
import org.oldwood.store.JsonWriter;

/** Writes lots of cuttings for programs, keys in a fixed order. */
public final class LotJson {
    private LotJson() {}

    /** All lots; one of which nothing can be told has no forecast, only what was noted. */
    public static void lots(JsonWriter json, LotBook book, List<LotState> lots) {
        json.object().array("lots");
        for (LotState lot : lots) {
            json.object().put("lot", lot.id()).put("crop", lot.crop());
            lot.parent().ifPresent(parent -> json.put("parent", parent));
            json.put("form", book.form(lot));
            Optional<Forecast> forecast = book.forecast(lot);
            if (forecast.isPresent()) {
                fields(json, book.counts(lot), forecast.get());
            } else {
                json.put("method", lot.method()).put("struck", (long) lot.struck());
                json.put("struckOn", lot.struckOn().toString());
            }
            json.put(
                    "parentWarnings",
                    book.parentHealth(lot).map(ParentHealth::warnings).orElse(List.of()).stream()
                            .map(ParentHealth.Warning::words)
                            .toList());
            json.endObject();
        }
        json.endArray().endObject();
    }

    /** A lot that is not noted, as an object. */
    public static void lot(JsonWriter json, String crop, LotCounts counts, Forecast forecast) {
        json.object().put("crop", crop);
        fields(json, counts, forecast);
        json.endObject();
    }

    private static void fields(JsonWriter json, LotCounts counts, Forecast forecast) {
        json.put("method", forecast.course().method().id());
        json.put("cut", forecast.course().cut().id());
        json.put("struck", (long) counts.struck())
                .put("struckOn", counts.struckOn().toString());
        json.put("alive", (long) counts.alive())
                .put("countedOn", counts.countedOn().toString());
        json.put("daysOutsideWindow", forecast.line().daysOutside());
        json.object("plants").put("expected", round(forecast.plants().mean()));
        json.put("p10", (long) forecast.plants().quantile(0.1));
        json.put("p50", (long) forecast.plants().quantile(0.5));
        json.put("p90", (long) forecast.plants().quantile(0.9)).endObject();
        json.put("firstPick", forecast.line().firstPick().label());
        json.put("fullCrop", forecast.line().fullCrop().label());
        steps(json, forecast);
        crops(json, forecast);
        json.put("warnings", LotWords.warnings(forecast));
    }

    private static void steps(JsonWriter json, Forecast forecast) {
        json.array("steps");
        for (Milestone step : Milestones.of(forecast.line(), forecast.course())) {
            json.object()
                    .put("step", step.step().key())
                    .put("season", step.season().label());
            json.put("from", step.from().date().toString())
                    .put("to", step.to().date().toString());
            json.put("plusMinusDays", (long) step.from().plusMinusDays());
            json.put("sources", step.sources()).endObject();
        }
        json.endArray();
    }

    private static void crops(JsonWriter json, Forecast forecast) {
        json.array("crops");
        for (SeasonCrop crop : forecast.crops()) {
            json.object().put("season", crop.season().label()).put("share", round(crop.share()));
            json.put("expectedKg", round(crop.expectedKg())).put("p10Kg", round(crop.lowKg()));
            json.put("p50Kg", round(crop.middleKg())).put("p90Kg", round(crop.highKg()));
            json.endObject();
        }
        json.endArray();
    }

    /** A plan to strike, into an open object. */
    public static void plan(JsonWriter json, Want want, StrikePlan plan, Optional<NurseryBed> room) {
        want.plants().ifPresent(number -> json.put("want", (long) number));
        want.kg().ifPresent(kg -> json.put("wantKg", kg));
        json.put("by", want.by().label()).put("sure", want.sure());
        json.put("tooLate", plan.isTooLate()).put("earliest", plan.earliest().label());
        plan.number().ifPresent(number -> json.put("strike", (long) number));
        json.put("chance", round(plan.chance()));
        day(json, "strikeFrom", plan.strikeFrom());
        day(json, "strikeBy", plan.strikeBy());
        plan.latest().ifPresent(latest -> day(json, "latest", latest));
        room.ifPresent(bed -> {
            json.put("rowM", round(bed.rowM()));
            bed.areaM2().ifPresent(area -> json.put("areaM2", round(area)));
        });
    }

    private static void day(JsonWriter json, String key, LikelyDay day) {
        json.put(key, day.date().toString());
    }

    private static double round(double value) {
        return Math.rint(value * 1000) / 1000;
    }
}
