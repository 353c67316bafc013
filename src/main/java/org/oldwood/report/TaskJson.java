package org.oldwood.report;

import org.oldwood.facts.Amount;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Reason;
import org.oldwood.plan.Task;
import org.oldwood.plan.settle.Share;
import org.oldwood.store.JsonWriter;

/** Plans and tasks as JSON. The shape is described in {@code docs/record.md}; keys are only ever added. */
public final class TaskJson {
    private TaskJson() {}

    public static void write(JsonWriter json, Plan plan) {
        json.object()
                .put("format", 1)
                .put("from", plan.from().toString())
                .put("until", plan.until().toString());
        json.array("tasks");
        plan.tasks().forEach(task -> write(json, task));
        json.endArray().put("notices", plan.notices()).array("missed");
        for (Missed missed : plan.missed()) {
            json.object()
                    .put("task", missed.task())
                    .put("title", missed.title())
                    .put("last", missed.last().toString())
                    .put("harm", missed.rule().ifMissed().harm())
                    .put("then", missed.then())
                    .endObject();
        }
        json.endArray().endObject();
    }

    public static void write(JsonWriter json, Task task) {
        json.object()
                .put("id", task.id())
                .put("rule", task.rule().id())
                .put("craft", task.rule().craft());
        json.object("subject")
                .put("kind", task.subject().kind())
                .put("id", task.subject().id())
                .put("words", task.subject().words());
        task.subject().crop().ifPresent(crop -> json.put("crop", crop.id()));
        task.subject().bed().ifPresent(bed -> json.put("bed", bed.bed().id()));
        json.endObject().put("season", task.season().label()).put("title", task.title());
        json.put("state", task.state().name().toLowerCase(java.util.Locale.ROOT));
        json.object("window")
                .put("first", task.window().first().toString())
                .put("last", task.window().last().toString())
                .put("plusMinusDays", task.window().plusMinusDays())
                .put("words", task.window().words())
                .endObject();
        json.put("day", task.day().toString());
        json.array("shares");
        for (Share share : task.shares()) {
            json.object()
                    .put("id", share.id())
                    .put("bushes", share.bushes())
                    .put("done", share.done())
                    .put("skipped", share.skipped())
                    .endObject();
        }
        json.endArray();
        task.finished().ifPresent(day -> json.put("finished", day.toString()));
        task.amount().ifPresent(amount -> write(json, amount));
        task.minutes().ifPresent(minutes -> json.put("minutes", minutes));
        json.put("text", task.rule().text());
        json.array("reasons");
        task.reasons().forEach(reason -> write(json, reason));
        json.endArray()
                .put("cautions", Cautions.lines(task.cautions()))
                .put("sources", task.sources())
                .endObject();
    }

    private static void write(JsonWriter json, Amount amount) {
        json.object("amount")
                .put("value", amount.value())
                .put("unit", amount.unit())
                .put("words", amount.words())
                .put("lines", amount.lines())
                .put("arithmetic", amount.arithmetic())
                .endObject();
    }

    /** A reason with its sources. */
    public static void write(JsonWriter json, Reason reason) {
        json.object()
                .put("holds", reason.holds())
                .put("words", reason.words())
                .put("sources", reason.sources())
                .endObject();
    }
}
