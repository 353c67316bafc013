package org.oldwood.report;

import java.util.List;
import org.oldwood.facts.Amount;
import org.oldwood.plan.Cautions;
import org.oldwood.plan.Missed;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Reason;
import org.oldwood.plan.Task;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.settle.Share;
import org.oldwood.store.JsonWriter;

/** Plans and tasks as JSON. The shape is described in {@code docs/record.md}; keys are only ever added. */
public final class TaskJson {
    private TaskJson() {}

    /** A plan, with the rounds that its tasks are gathered into. */
    public static void write(JsonWriter json, Plan plan, List<Round> rounds) {
        json.object()
                .put("format", 1)
                .put("from", plan.from().toString())
                .put("until", plan.until().toString());
        rounds(json, "rounds", rounds);
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

    /** Rounds under a key of the object that is open. */
    public static void rounds(JsonWriter json, String key, List<Round> rounds) {
        json.array(key);
        for (Round round : rounds) {
            json.object()
                    .put("id", round.id())
                    .put("kind", round.kind().id())
                    .put("title", round.title())
                    .put("open", round.open())
                    .put("day", round.day().toString())
                    .put("firstGoodDay", round.firstGoodDay().toString())
                    .put("lastGoodDay", round.lastGoodDay().toString())
                    .put("minutes", Math.round(round.minutes()))
                    .put("bushes", round.bushes())
                    .put("beds", List.copyOf(round.beds()))
                    .put("takeAlong", round.takeAlong())
                    .put(
                            "cautions",
                            round.cautions().stream()
                                    .map(Cautions.Caution::line)
                                    .toList())
                    .put("tasks", round.all().stream().map(Task::id).toList())
                    .endObject();
        }
        json.endArray();
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

    private static void write(JsonWriter json, Reason reason) {
        json.object()
                .put("holds", reason.holds())
                .put("words", reason.words())
                .put("sources", reason.sources())
                .endObject();
    }
}
