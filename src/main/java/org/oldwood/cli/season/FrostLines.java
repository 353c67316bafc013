package org.oldwood.cli.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.season.CropFrost;
import org.oldwood.season.FrostYear;
import org.oldwood.store.JsonWriter;

/** A crop's risk of frost by stage, in words and in JSON. */
final class FrostLines {
    private FrostLines() {}

    /** The place's mean frosts, one sentence. */
    static String ofPlace(FrostYear year) {
        if (year.last().isEmpty() && year.first().isEmpty()) {
            return "Frost is rare here, or comes all summer.";
        }
        return "Half the years have their last frost of spring after %s and their first of autumn before %s."
                .formatted(day(year.last()), day(year.first()));
    }

    /** One crop's. */
    static List<String> of(CropFrost frost) {
        List<String> lines = new ArrayList<>();
        frost.stages().forEach(each -> lines.add(inWords(each)));
        lines.add(frost.bloomRisk()
                .map(risk -> "Frost harms it in flower or just after in " + ofHundred(risk) + " of 100 years.")
                .orElse("What cold its flowers stand is not known."));
        return lines;
    }

    private static String inWords(CropFrost.AtStage each) {
        return "Frost, %s: harm begins at %s (%s); such a night from %s to %s%s in %s of 100 years."
                .formatted(
                        each.stage().words(),
                        each.harm().inWords(),
                        each.harm().seen().words(),
                        each.from(),
                        each.to(),
                        each.plusMinusDays() == 0 ? "" : ", ± " + each.plusMinusDays() + " days,",
                        ofHundred(each.risk()));
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("(frost is rare, or comes all summer)");
    }

    /** A share that would round to none or to all says that it is not quite so. */
    private static String ofHundred(double share) {
        long rounded = Math.round(100 * share);
        if (100 * share < 1) {
            return "fewer than 1";
        }
        return rounded == 100 ? "nearly all" : "about " + rounded;
    }

    static void write(JsonWriter json, FrostYear year) {
        json.object("frost");
        year.last().ifPresent(day -> json.put("lastOfSpring", day.toString()));
        year.first().ifPresent(day -> json.put("firstOfAutumn", day.toString()));
        json.endObject();
    }

    static void write(JsonWriter json, CropFrost frost) {
        json.object("frost");
        frost.bloomRisk().ifPresent(risk -> json.put("yearsInHundredInFlower", rounded(risk)));
        json.array("stages");
        for (CropFrost.AtStage each : frost.stages()) {
            json.object()
                    .put("stage", each.stage().key())
                    .put("harmBeginsC", each.harm().is())
                    .put("seen", each.harm().seen().words())
                    .put("from", each.from().toString())
                    .put("to", each.to().toString())
                    .put("yearsInHundred", rounded(each.risk()))
                    .put("sources", each.harm().sources())
                    .endObject();
        }
        json.endArray().endObject();
    }

    private static double rounded(double share) {
        return Math.round(1000 * share) / 10.0;
    }
}
