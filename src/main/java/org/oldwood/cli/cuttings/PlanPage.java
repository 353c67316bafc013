package org.oldwood.cli.cuttings;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.cli.command.Out;
import org.oldwood.craft.cuttings.Forecast;
import org.oldwood.craft.cuttings.LotCounts;
import org.oldwood.craft.cuttings.NurseryBed;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.facts.cuttings.ParentStock;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.report.LotJson;

/**
 * How many cuttings to strike, the room they take, and whether the garden's bushes can give them.
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
        out.paragraph(0, StrikeWords.answer(plan, want.by(), want.sure()));
        List<String> lines = new ArrayList<>(StrikeWords.why(plan, ground.course()));
        if (plan.number().isPresent()) {
            lines.addAll(expected(plan.number().getAsInt()));
            lines.add(room.map(StrikeWords::room).orElse("Room: not known; no distance was found for this method."));
        }
        lines.addAll(StrikeWords.measures(ground.course().method()));
        lines.forEach(line -> out.hanging("  - ", 4, line));
        parents.ifPresent(stock -> ParentWords.lines(stock, ground.crop(), plan.number())
                .forEach(line -> out.hanging("  - ", 4, line)));
        LotPage.local(ground.crop()).forEach(line -> out.hanging("  ! ", 4, line));
    }

    /** What that many give, forwards. */
    private List<String> expected(int number) {
        Forecast forecast = Forecast.of(LotCounts.struck(number, plan.strikeFrom().date()), ground.course(),
                ground.survival(), ground.setting());
        return List.of("Of " + number + " struck: " + LotPage.expected(forecast) + ".");
    }

    private record Answer(@JsonUnwrapped LotJson.ToStrike strike,
            @JsonUnwrapped ParentWords.@Nullable Answer parents) {}

    Record answer() {
        return new Answer(LotJson.ToStrike.of(want, plan, room),
                parents.map(stock -> ParentWords.Answer.of(stock, plan.number())).orElse(null));
    }
}
