package org.oldwood.cli.feeding;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.feeding.Balance;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.craft.feeding.FeedYear;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.feeding.Recipe;
import org.oldwood.plan.Cautions;
import org.oldwood.report.LedgerJson;
import org.oldwood.store.JsonWriter;
import org.oldwood.words.Words;

/**
 * What the food of one piece of ground comes to, for people and as JSON.
 *
 * @param title what it is about
 * @param ids crop, bed and the like, for JSON: key, value, key, value
 * @param year need, balance and materials
 * @param dressings what is still to give, in order
 * @param arithmetic how it was reckoned, a line for each step
 * @param assumed what was taken for want of knowing
 * @param next when the plan has it, in a garden
 */
record FeedSheet(
        String title,
        List<String> ids,
        FeedYear year,
        List<Dressing> dressings,
        List<String> arithmetic,
        List<String> assumed,
        Optional<String> next)
        implements GroundSheet {
    /** One dressing: when, and of what. */
    record Dressing(String when, FeedPlan plan) {}

    @Override
    public void print(Out out) {
        out.hanging("", 2, title + ": " + ground());
        Balance balance = year.balance();
        out.hanging(
                "  Need   ",
                9,
                FeedPlan.inWords(balance.need()) + " g/m² a year, by "
                        + year.need().school());
        if (balance.given().sum() > 0) {
            out.hanging("  Given  ", 9, FeedPlan.inWords(balance.given()) + " g/m²");
        }
        out.hanging("  Due    ", 9, FeedPlan.inWords(balance.due()) + " g/m²");
        if (balance.surplus().sum() > 0) {
            out.hanging("  Beyond ", 9, FeedPlan.inWords(balance.surplus()) + " g/m²");
        }
        dressings.forEach(dressing -> print(out, dressing));
        next.ifPresent(words -> out.hanging("  Next   ", 9, words));
        GroundSheet.section(out, "  ", "How it was reckoned", arithmetic());
        GroundSheet.section(out, "  ", "Not known, so assumed", notKnown());
        out.line();
    }

    /** What was assumed, and the nutrients of which the school tells no need. */
    private List<String> notKnown() {
        List<String> lines = new ArrayList<>(assumed);
        List<String> untold = new ArrayList<>();
        for (Nutrient nutrient : Nutrient.values()) {
            if (!year.need().known().contains(nutrient)) {
                untold.add(nutrient.words());
            }
        }
        if (!untold.isEmpty()) {
            lines.add(year.need().school() + " tells no need of " + String.join(", ", untold) + "; none is reckoned.");
        }
        return lines;
    }

    private static void print(Out out, Dressing dressing) {
        FeedPlan plan = dressing.plan;
        out.hanging("  Give   ", 9, dressing.when + ": " + plan.words());
        plan.measures().forEach(line -> out.hanging("         ", 11, line));
        plan.notes().forEach(line -> out.hanging("         ", 11, line));
        for (Recipe.Part part : plan.parts()) {
            part.feed()
                    .notRead()
                    .forEach(mark -> out.hanging("         * ", 11, part.feed().name() + ": " + mark));
        }
    }

    private String ground() {
        List<String> parts = new ArrayList<>();
        parts.add(Words.amount(year.ground().areaM2()) + " m²");
        if (year.ground().bushes() > 0) {
            parts.add(Words.count(year.ground().bushes(), "bush", "bushes"));
        }
        if (year.ground().rowM() > 0) {
            parts.add(Words.amount(year.ground().rowM()) + " m of row");
        }
        return String.join(", ", parts);
    }

    /** The arithmetic of need and dressings. */
    @Override
    public List<String> arithmetic() {
        List<String> lines = new ArrayList<>(arithmetic);
        for (Dressing dressing : dressings) {
            lines.addAll(dressing.plan.lines());
            latest(dressing.plan).ifPresent(lines::add);
        }
        return lines;
    }

    private Optional<String> latest(FeedPlan plan) {
        return year.latest(plan)
                .map(day -> "its nitrogen no later than " + words(day) + " (half a year later south of the equator)");
    }

    private static String words(MonthDay day) {
        String month = day.getMonth().name();
        return day.getDayOfMonth() + " " + month.charAt(0) + month.substring(1).toLowerCase(Locale.ROOT);
    }

    @Override
    public List<Cautions.Caution> cautions(Cautions all) {
        return dressings.stream()
                .map(Dressing::plan)
                .flatMap(plan -> all.of(Cautions.Job.of("feed", plan.tags(), plan.cautions())).stream())
                .toList();
    }

    @Override
    public void write(JsonWriter json, Cautions cautions) {
        json.object().put("title", title);
        for (int i = 0; i + 1 < ids.size(); i += 2) {
            json.put(ids.get(i), ids.get(i + 1));
        }
        json.put("areaM2", year.ground().areaM2())
                .put("bushes", (long) year.ground().bushes())
                .put("rowM", year.ground().rowM())
                .put("school", year.need().school());
        LedgerJson.write(json, "need", year.balance().need());
        LedgerJson.write(json, "given", year.balance().given());
        LedgerJson.write(json, "due", year.balance().due());
        LedgerJson.write(json, "surplus", year.balance().surplus());
        json.array("dressings");
        dressings.forEach(dressing -> write(json, dressing));
        json.endArray();
        next.ifPresent(words -> json.put("next", words));
        json.put("arithmetic", arithmetic())
                .put("assumed", notKnown())
                .put("cautions", Cautions.lines(cautions(cautions)))
                .put("sources", year.need().sources())
                .endObject();
    }

    private static void write(JsonWriter json, Dressing dressing) {
        json.object().put("when", dressing.when).array("materials");
        for (Recipe.Part part : dressing.plan.parts()) {
            json.object()
                    .put("material", part.feed().id())
                    .put("name", part.feed().name())
                    .put("grams", part.amount())
                    .put("notRead", part.feed().notRead())
                    .endObject();
        }
        json.endArray();
        LedgerJson.write(json, "gives", dressing.plan.gives());
        json.put("measures", dressing.plan.measures())
                .put("notes", dressing.plan.notes())
                .endObject();
    }
}
