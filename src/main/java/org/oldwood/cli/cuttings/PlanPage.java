package org.oldwood.cli.cuttings;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.NurseryBed;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.crop.Crop;
import org.oldwood.facts.cuttings.ParentStock;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.report.LotJson;
import org.oldwood.report.LotWords;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * How many cuttings to strike, the room they take, whether the garden's bushes can give them and what speaks against
 * each.
 *
 * @param parents the garden's bushes; empty without a garden
 */
record PlanPage(StrikePlan.Want want, StrikePlan plan, Optional<NurseryBed> room, Optional<ParentStock> parents,
        CuttingsGround ground) {

    static PlanPage of(StrikePlan.Want want, CuttingsGround ground) {
        StrikePlan plan = StrikePlan.of(want, ground.course(), ground.survival(), ground.setting());
        Optional<NurseryBed> room = plan.number().isPresent()
                ? NurseryBed.of(plan.number().getAsInt(), ground.course().method().measures())
                : Optional.empty();
        Optional<ParentStock> parents = ground.garden()
                .map(own -> ParentStock.of(
                        own.state().standing().stream().filter(plant -> plant.plant().crop().equals(ground.crop().id()))
                                .toList(),
                        plant -> PruningCase.of(plant, ground.crop(), plan.line().firstSeason(), own.state()),
                        own.book(), ground.course(), plan.line().firstSeason()));
        return new PlanPage(want, plan, room, parents, ground);
    }

    void tell(Out out) {
        out.paragraph(0, answer(plan, want.by(), want.sure()));
        List<String> lines = new ArrayList<>(why(plan, ground.course()));
        if (plan.number().isPresent()) {
            lines.addAll(expected(plan.number().getAsInt()));
            lines.add(room
                    .map(bed -> "Room: %s m of row%s.".formatted(Words.one(bed.rowM()),
                            bed.areaM2().map(area -> ", " + Words.one(area) + " m²").orElse("")))
                    .orElse("Room: not known; no distance was found for this method."));
        }
        lines.addAll(LotPage.measures(ground.course().method()));
        lines.forEach(line -> out.hanging("  - ", 4, line));
        parents.ifPresent(
                stock -> parents(stock, ground.crop(), plan.number()).forEach(line -> out.hanging("  - ", 4, line)));
        LotPage.local(ground.crop()).forEach(line -> out.hanging("  ! ", 4, line));
    }

    /** What that many give, forwards. */
    private List<String> expected(int number) {
        Forecast forecast = Forecast.of(LotCounts.struck(number, plan.strikeFrom().date()), ground.course(),
                ground.survival(), ground.setting());
        return List.of("Of " + number + " struck: " + LotPage.expected(forecast) + ".");
    }

    private record Answer(@JsonUnwrapped LotJson.ToStrike strike, @JsonUnwrapped @Nullable Parents parents) {}

    Record answer() {
        return new Answer(LotJson.ToStrike.of(want, plan, room),
                parents.map(stock -> Parents.of(stock, plan.number())).orElse(null));
    }

    private static String answer(StrikePlan plan, Season season, double sure) {
        if (plan.isTooLate()) {
            return "Too late for season %s: the earliest that cuttings can bear is season %s. Young plants bought now may come sooner."
                    .formatted(season.label(), plan.earliest().label());
        }
        if (plan.number().isEmpty()) {
            return "No number of cuttings up to %s gives that with a chance of %s: ask for less, be content with less sureness, choose another method, or buy plants."
                    .formatted(StrikePlan.MOST, sure);
        }
        return "Strike %s, from %s to %s: the chance is %s %%. Latest of all for season %s: %s.".formatted(
                plan.number().getAsInt(), LotWords.around(plan.strikeFrom()), LotWords.around(plan.strikeBy()),
                Math.round(plan.chance() * 1000) / 10.0, season.label(),
                plan.latest().map(LotWords::around).orElse("none"));
    }

    private static List<String> why(StrikePlan plan, Course course) {
        return List.of(
                "Rooted by %s; lifted and planted out from %s; first season in place %s.".formatted(
                        LotWords.around(plan.line().rooted()), LotWords.around(plan.line().plantOut()),
                        plan.line().inPlace().label()),
                "First pick in season %s, full crop in %s, for plants %s.".formatted(plan.line().firstPick().label(),
                        plan.line().fullCrop().label(), course.cut().words()));
    }

    private static List<String> parents(ParentStock stock, Crop crop, OptionalInt needed) {
        if (stock.bushes().isEmpty()) {
            return List.of(
                    "Parents: no %s stands in this garden. Buy certified stock, or take wood from a bush that you know to be healthy."
                            .formatted(crop.name()));
        }
        List<String> lines = new ArrayList<>();
        needed.ifPresent(number -> lines.add(enough(stock, number)));
        stock.forTwo().ifPresent(lines::add);
        Map<String, List<String>> told = new LinkedHashMap<>();
        stock.bushes().forEach(bush -> tell(told, bush.fit() ? bush.words() : "not fit as a parent", bush));
        stock.bushes().forEach(bush -> bush.warnings().forEach(warning -> tell(told, warning, bush)));
        told.forEach((words, plants) -> lines.add(String.join(", ", plants) + ": " + words));
        return lines;
    }

    /** What holds of several bushes is said once. */
    private static void tell(Map<String, List<String>> told, String words, ParentStock.ParentBush bush) {
        told.computeIfAbsent(words, any -> new ArrayList<>()).add(bush.plant());
    }

    private static String enough(ParentStock stock, int needed) {
        if (!stock.anyFit()) { return "Parents: none of the garden's bushes is fit. Buy certified stock."; }
        int known = stock.known();
        String start = "Parents: " + needed + " cuttings are needed, one from each good shoot or tip; ";
        if (known >= needed) { return start + "the bushes can spare " + known + ". That is enough."; }
        return start + (stock.allKnown()
                ? "the bushes can spare %s. That is %s short: strike over two winters, cut longer shoots in two, take shoots that the bush would need itself (it crops less for it), or buy certified stock."
                        .formatted(known, needed - known)
                : known + " are known of, and not every bush's wood is known (below).");
    }

    /** What the bushes can spare, as JSON has it. */
    private record Parents(List<ParentStock.ParentBush> parents, int parentsGive, boolean parentsAllKnown,
            Optional<Boolean> parentsEnough) {
        static Parents of(ParentStock stock, OptionalInt needed) {
            boolean told = needed.isPresent() && (stock.allKnown() || stock.known() >= needed.getAsInt());
            return new Parents(stock.bushes(), stock.known(), stock.allKnown(),
                    told ? Optional.of(stock.known() >= needed.getAsInt()) : Optional.empty());
        }
    }
}
