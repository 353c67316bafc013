package org.oldwood.cli.cuttings;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.MeasureWords;
import org.oldwood.craft.cuttings.Method;
import org.oldwood.craft.cuttings.NurseryBed;
import org.oldwood.craft.cuttings.StrikePlan;
import org.oldwood.report.LotWords;
import org.oldwood.season.Season;

/** Words a plan to strike cuttings. */
final class StrikeWords {
    private StrikeWords() {}

    static String answer(StrikePlan plan, Season season, double sure) {
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

    static List<String> why(StrikePlan plan, Course course) {
        return List.of(
                "Rooted by %s; lifted and planted out from %s; first season in place %s.".formatted(
                        LotWords.around(plan.line().rooted()), LotWords.around(plan.line().plantOut()),
                        plan.line().inPlace().label()),
                "First pick in season %s, full crop in %s, for plants %s.".formatted(plan.line().firstPick().label(),
                        plan.line().fullCrop().label(), course.cut().words()));
    }

    /** The method's measures, and those that are not known. */
    static List<String> measures(Method method) {
        List<String> lines = new ArrayList<>();
        MeasureWords.known(method).ifPresent(words -> lines.add("Cuttings: " + words + "."));
        List<String> unknown = MeasureWords.unknown(method);
        if (!unknown.isEmpty()) { lines.add("Not known, no figure was found: " + String.join(", ", unknown) + "."); }
        return lines;
    }

    static String room(NurseryBed bed) {
        return "Room: %s m of row%s.".formatted(LotWords.number(bed.rowM()),
                bed.areaM2().map(area -> ", " + LotWords.number(area) + " m²").orElse(""));
    }
}
