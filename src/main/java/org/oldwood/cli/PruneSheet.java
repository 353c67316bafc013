package org.oldwood.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Yield;
import org.oldwood.pruning.Bush;
import org.oldwood.pruning.Cut;
import org.oldwood.pruning.CutWords;
import org.oldwood.pruning.FormPruning;
import org.oldwood.pruning.Habit;
import org.oldwood.pruning.Look;
import org.oldwood.pruning.Outlook;
import org.oldwood.pruning.Pruning;
import org.oldwood.pruning.School;
import org.oldwood.pruning.Stems;
import org.oldwood.pruning.Step;
import org.oldwood.pruning.Taken;
import org.oldwood.store.JsonWriter;

/** One plant's cut list and outlook, for people and for programs. */
record PruneSheet(
        String title,
        Crop crop,
        Pruning pruning,
        FormPruning form,
        School school,
        Bush bush,
        Optional<Stems> done,
        Optional<Integer> newShoots) {

    private static final int SEASONS = 6;

    void print(Out out, boolean withOutlook) {
        Cut cut = school.winter(bush);
        out.line(title + " (" + cut.life().words() + ", way: " + school.id() + ")");
        String taken = CutWords.taken(cut);
        out.paragraph(2, taken.substring(0, 1).toUpperCase(Locale.ROOT) + taken.substring(1) + ".");
        CutWords.bars(cut).forEach(out::line);
        out.line("  ages; | stays, x goes");
        CutWords.remarks(cut).forEach(remark -> out.paragraph(2, remark));
        for (Look look : pruning.looks()) {
            out.paragraph(2, look.of() + " wood: " + look.words());
        }
        for (Step step : form.steps(school, "winter", cut.life())) {
            out.paragraph(2, step.inWords());
        }
        out.paragraph(2, "Sources: " + String.join(", ", school.teaching().sources()) + ".");
        if (withOutlook) {
            outlooks().forEach((name, outlook) -> print(out, name, outlook));
            out.paragraph(
                    2,
                    "The crop rests on assumed weights of wood by age: read the range. Stems that"
                            + " stay are not let die, and as many new ones come unpruned.");
            Yield.read(crop)
                    .map(Yield::unpruned)
                    .filter(words -> !words.isEmpty())
                    .ifPresent(words -> out.paragraph(2, words));
        }
        out.line();
    }

    private static void print(Out out, String name, Outlook outlook) {
        out.line("  " + name + ":");
        int winter = 1;
        for (Outlook.Winter one : outlook.winters()) {
            String kg =
                    one.kg()
                            .map(
                                    range ->
                                            String.format(
                                                    Locale.ROOT,
                                                    "%.1f kg (%.1f to %.1f)",
                                                    range.is(),
                                                    range.low(),
                                                    range.high()))
                            .orElse("crop not known");
            out.line(
                    String.format(
                            Locale.ROOT,
                            "    winter %d  %-24s bearing %3.0f %%  %s",
                            winter++,
                            one.cut().after(),
                            100 * one.bearingShare(),
                            kg));
        }
    }

    private Map<String, Outlook> outlooks() {
        Map<String, Outlook> all = new LinkedHashMap<>();
        if (form.newShoots().isEmpty()) {
            return all;
        }
        School aim =
                school.target(bush).total() == 0 && form.craft().equals("renewal")
                        ? form.school()
                        : school;
        Outlook.Basis basis =
                new Outlook.Basis(
                        aim, form.form(), Yield.read(crop), shoots(form.newShoots().get()));
        all.put("With the plan", Outlook.of(bush, Habit.plan(school, aim), basis, SEASONS));
        all.put("Without pruning", Outlook.of(bush, Habit.none(), basis, SEASONS));
        done.ifPresent(
                taken ->
                        all.put(
                                "As done last time",
                                Outlook.of(bush, Habit.asDone(taken), basis, SEASONS)));
        return all;
    }

    private Figure shoots(Figure figure) {
        return newShoots
                .map(n -> new Figure(n, n, n, "shoots", figure.sources(), figure.seen(), ""))
                .orElse(figure);
    }

    void write(JsonWriter json, boolean withOutlook) {
        Cut cut = school.winter(bush);
        json.object()
                .put("plant", title)
                .put("crop", crop.id())
                .put("form", form.form())
                .put("variant", school.id())
                .put("lifeStage", cut.life().words())
                .put("before", cut.before().toString())
                .put("after", cut.after().toString())
                .put("heldBack", (long) cut.heldBack())
                .array("takeOut");
        for (Taken taken : cut.taken()) {
            json.object()
                    .put("age", cut.before().label(taken.age()))
                    .put("number", (long) taken.number())
                    .put("why", taken.why().words())
                    .endObject();
        }
        json.endArray()
                .put("remarks", CutWords.remarks(cut))
                .put(
                        "steps",
                        form.steps(school, "winter", cut.life()).stream()
                                .map(Step::inWords)
                                .toList())
                .put("sources", List.copyOf(school.teaching().sources()));
        if (withOutlook) {
            json.array("outlooks");
            outlooks().forEach((name, outlook) -> write(json, name, outlook));
            json.endArray();
        }
        json.endObject();
    }

    private static void write(JsonWriter json, String name, Outlook outlook) {
        json.object().put("habit", name).array("winters");
        for (Outlook.Winter winter : outlook.winters()) {
            json.object()
                    .put("after", winter.cut().after().toString())
                    .put("bearing", (long) winter.bearing())
                    .put("bearingShare", winter.bearingShare());
            winter.kg()
                    .ifPresent(
                            kg ->
                                    json.put("kgLow", kg.low())
                                            .put("kg", kg.is())
                                            .put("kgHigh", kg.high()));
            json.endObject();
        }
        json.endArray().endObject();
    }
}
