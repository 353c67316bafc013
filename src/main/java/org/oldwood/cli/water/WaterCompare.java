package org.oldwood.cli.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.cli.command.Out;
import org.oldwood.facts.water.Summers;
import org.oldwood.facts.water.Summers.BedSummers;
import org.oldwood.facts.water.Summers.Fared;
import org.oldwood.garden.Bed;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/** Sets the beds side by side, the one that would be short least first. */
record WaterCompare(Summers summers, List<BedSummers> beds) {

    void print(Out out) {
        out.paragraph(0,
                "As if full-grown %s filled each bed, rooted as deep as the ground allows, nobody watered and nothing lay on the soil; %s:"
                        .formatted(summers.crop().name(), span()));
        out.line();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("bed", "holds", "held", "short", "worst", "roof", "roots", "light, wind"));
        beds.forEach(one -> rows.add(row(one)));
        out.columns(0, rows);
        out.line();
        out.paragraph(0, legend());
        if (!summers.measured()) {
            out.paragraph(0, "Mean rain is spread over each month, so this tells the beds apart but not how"
                    + " dry a summer gets. Past summers tell that: oldwood weather add FILE.");
        }
        verdict(out);
        remarks().forEach(words -> out.paragraph(0, "Taken for granted: " + words + "."));
    }

    private String span() {
        int count = summers.seasons().size();
        if (!summers.measured()) { return "in a summer of mean weather"; }
        return count == 1 ? "in the measured summer " + summers.seasons().get(0).label()
                : "means of %s measured summers, %s to %s".formatted(count, summers.seasons().get(0).label(),
                        summers.seasons().get(count - 1).label());
    }

    private String legend() {
        return "holds: what the roots can draw from full ground; held: mean share of it; short: days without enough%s; roof: what a roof sheds onto the bed in a summer; roots: share that neighbours' roots take. The damp place stands first; of two alike choose the airier."
                .formatted(summers.measured() ? "; worst: the same in the bed's driest summer" : "");
    }

    private List<String> row(BedSummers one) {
        Bed bed = one.ground().bed();
        Fared worst = one.worst();
        return List.of(bed.id(), Words.whole(one.water().totalAvailableMm()) + " mm",
                WaterWords.percent(one.meanHeld()), Words.whole(one.meanDaysShort()) + " d",
                summers.measured() && worst.daysShort() > 0 ? worst.daysShort() + " d in " + worst.season().label()
                        : "-",
                bed.roof().isEmpty() ? "-" : Words.whole(one.meanRoofLitres()) + " l",
                WaterWords.percent(bed.competing()), light(bed));
    }

    private static String light(Bed bed) {
        return (bed.shade() == 0 ? "full sun" : WaterWords.percent(bed.shade()) + " shade")
                + (bed.windy() ? ", windy" : "");
    }

    private void verdict(Out out) {
        if (beds.size() < 2) { return; }
        BedSummers best = beds.get(0);
        BedSummers poorest = beds.get(beds.size() - 1);
        double fewer = poorest.meanDaysShort() - best.meanDaysShort();
        out.paragraph(0,
                fewer < 1 ? "The beds hardly differ: choose by light and air."
                        : "A bush is best off in %s: %s days a summer less short than in %s."
                                .formatted(best.ground().bed().name(), one(fewer), poorest.ground().bed().name()));
    }

    private static String one(double value) { return value < 10 ? Words.one(value) : Words.whole(value); }

    private Set<String> remarks() {
        Set<String> remarks = new TreeSet<>();
        beds.forEach(one -> one.ground().remarks()
                .forEach(words -> remarks.add("in " + one.ground().bed().name() + " " + words)));
        return remarks;
    }

    Record answer() {
        return new Answer(summers.crop().id(), summers.measured(),
                summers.seasons().stream().map(Season::label).toList(), beds.stream().map(OneBed::of).toList());
    }

    private record Answer(String crop, boolean measured, List<String> summers, List<OneBed> beds) {}

    private record OneBed(String bed, String texture, double totalAvailableMm, double meanHeldShare,
            double meanDaysShort, double meanRoofLitres, String worstSummer, double competing, double shade,
            boolean windy, List<String> takenForGranted, List<Summer> summers) {
        static OneBed of(BedSummers one) {
            Bed bed = one.ground().bed();
            return new OneBed(bed.id(), one.ground().soil().id(), Words.rounded(one.water().totalAvailableMm(), 3),
                    Words.rounded(one.meanHeld(), 3), Words.rounded(one.meanDaysShort(), 3),
                    Words.rounded(one.meanRoofLitres(), 3), one.worst().season().label(), bed.competing(), bed.shade(),
                    bed.windy(), one.ground().remarks(), one.summers().stream().map(Summer::of).toList());
        }
    }

    private record Summer(String season, int daysShort, double meanHeldShare, double roofLitres, double drainedMm) {
        static Summer of(Fared one) {
            return new Summer(one.season().label(), one.daysShort(), Words.rounded(one.meanHeld(), 3),
                    Words.rounded(one.roofLitres(), 3), Words.rounded(one.drainedMm(), 3));
        }
    }
}
