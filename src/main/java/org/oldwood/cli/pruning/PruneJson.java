package org.oldwood.cli.pruning;

import java.util.List;
import java.util.stream.Stream;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.Outlook;
import org.oldwood.craft.pruning.StagedRenovation;
import org.oldwood.craft.pruning.Step;
import org.oldwood.craft.pruning.Taken;
import org.oldwood.facts.pruning.CutWords;
import org.oldwood.report.LedgerJson;
import org.oldwood.store.JsonWriter;

/** Plants' cut lists and outlooks for programs. */
final class PruneJson {
    private PruneJson() {}

    static void write(JsonWriter json, Stream<PruneSheet> sheets, boolean withOutlook) {
        json.object().array("plants");
        sheets.forEach(sheet -> write(json, sheet, withOutlook));
        json.endArray().endObject();
    }

    private static void write(JsonWriter json, PruneSheet sheet, boolean withOutlook) {
        Cut cut = sheet.cut();
        json.object()
                .put("plant", sheet.title())
                .put("crop", sheet.crop().id())
                .put("form", sheet.form().form())
                .put("variant", sheet.school().id())
                .put("lifeStage", sheet.life().words())
                .put("counted", sheet.uncounted().isEmpty())
                .put("todo", sheet.todo());
        if (sheet.uncounted().isEmpty()) {
            counts(json, cut);
        }
        json.put("notes", sheet.notes());
        json.object("steps");
        for (String time : List.of("planting", "renovation", "winter", "canes", "summer")) {
            json.put(time, sheet.steps(time, cut).stream().map(Step::inWords).toList());
        }
        json.endObject();
        sheet.minutes().ifPresent(all -> json.put("minutes", all));
        json.put("sources", List.copyOf(sheet.school().teaching().sources()));
        if (withOutlook && sheet.uncounted().isEmpty()) {
            json.array("outlooks");
            sheet.futures()
                    .of(sheet.bush(), sheet.form(), sheet.school(), sheet.crop())
                    .forEach((name, outlook) -> write(json, name, outlook));
            json.endArray().put("outlookNotes", sheet.futures().notes(sheet.crop()));
        }
        json.endObject();
    }

    private static void counts(JsonWriter json, Cut cut) {
        json.put("before", cut.before().toString())
                .put("after", cut.after().toString())
                .put("heldBack", (long) cut.heldBack())
                .array("takeOut");
        for (Taken taken : cut.taken()) {
            json.object()
                    .put("age", cut.before().label(taken.age()))
                    .put("number", (long) taken.number())
                    .put("why", CutWords.why(taken.why()))
                    .endObject();
        }
        json.endArray().put("remarks", CutWords.remarks(cut));
        cut.staged().ifPresent(part -> renovation(json, part));
    }

    private static void renovation(JsonWriter json, StagedRenovation.Part part) {
        StagedRenovation staged = part.renovation();
        json.object("renovation")
                .put("id", staged.id())
                .put("words", staged.words())
                .put("winter", (long) part.winter())
                .put("winters", (long) staged.number())
                .put("due", (long) part.due())
                .put("now", (long) part.now())
                .put("meanwhile", staged.meanwhile())
                .array("later");
        part.later().forEach(json::add);
        json.endArray().array("instead");
        for (StagedRenovation.Instead other : staged.instead()) {
            json.object()
                    .put("variant", other.way())
                    .put("words", other.words())
                    .endObject();
        }
        json.endArray().put("sources", staged.sources()).endObject();
    }

    private static void write(JsonWriter json, String name, Outlook outlook) {
        json.object().put("habit", name).array("winters");
        for (Outlook.Winter winter : outlook.winters()) {
            json.object()
                    .put("after", winter.cut().after().toString())
                    .put("bearing", (long) winter.bearing())
                    .put("bearingShare", LedgerJson.rounded(winter.bearingShare()));
            winter.share().ifPresent(it -> json.put("shareLow", LedgerJson.rounded(it.low()))
                    .put("shareHigh", LedgerJson.rounded(it.high())));
            winter.berry()
                    .ifPresent(it -> json.put("berryWeight", it.weight().is()).put("pickingSpeed", it.speed()));
            winter.kg().ifPresent(kg -> json.put("kgLow", LedgerJson.rounded(kg.low()))
                    .put("kgHigh", LedgerJson.rounded(kg.high())));
            json.endObject();
        }
        json.endArray().endObject();
    }
}
