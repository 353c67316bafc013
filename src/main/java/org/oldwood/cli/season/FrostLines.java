package org.oldwood.cli.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.season.CropFrost;
import org.oldwood.season.FrostYear;
import org.oldwood.words.Words;

/** A crop's risk of frost by stage, in words and in JSON. */
final class FrostLines {
    private FrostLines() {}

    /** The place's mean frosts, one sentence. */
    static String ofPlace(FrostYear year) {
        if (year.last().isEmpty() && year.first().isEmpty()) { return "Frost is rare here, or comes all summer."; }
        return "Half the years have their last frost of spring after %s and their first of autumn before %s, each ± %.0f days (%s)."
                .formatted(day(year.last()), day(year.first()), year.plusMinus().is(), year.plusMinus().seen().words());
    }

    static List<String> of(CropFrost frost) {
        List<String> lines = new ArrayList<>(frost.stages().stream().map(FrostLines::inWords).toList());
        lines.add(frost.bloomRisk()
                .map(risk -> "Frost harms it in flower or just after in " + ofHundred(risk) + " of 100 years.")
                .orElse("How often frost harms its flowers cannot be told: what they stand, or when they come, is not known."));
        return lines;
    }

    private static String inWords(CropFrost.AtStage each) {
        return "Frost, %s: harm begins at %s (%s); such a night from %s to %s%s in %s of 100 years.".formatted(
                each.stage().words(), each.harm().plain(), each.harm().seen().words(), each.from(), each.to(),
                each.plusMinusDays() == 0 ? "" : ", ± " + each.plusMinusDays() + " days,", ofHundred(each.risk()));
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("(frost is rare, or comes all summer)");
    }

    /** A share that would round to none or to all says that it is not quite so. */
    private static String ofHundred(double share) {
        long rounded = Math.round(100 * share);
        if (100 * share < 1) { return "fewer than 1"; }
        return rounded == 100 ? "nearly all" : "about " + rounded;
    }

    /** A year's frosts as JSON has them. */
    record Year(Optional<LocalDate> lastOfSpring, Optional<LocalDate> firstOfAutumn, double plusMinusDays) {
        static Year of(FrostYear year) { return new Year(year.last(), year.first(), year.plusMinus().is()); }
    }

    /** A crop's risk as JSON has it. */
    record Risk(Optional<Double> yearsInHundredInFlower, List<AtStage> stages) {
        static Risk of(CropFrost frost) {
            return new Risk(frost.bloomRisk().map(risk -> Words.rounded(100 * risk, 1)),
                    frost.stages().stream().map(AtStage::of).toList());
        }
    }

    private record AtStage(String stage, double harmBeginsC, String seen, LocalDate from, LocalDate to,
            double yearsInHundred, List<String> sources) {
        static AtStage of(CropFrost.AtStage each) {
            return new AtStage(each.stage().key(), each.harm().is(), each.harm().seen().key(), each.from(), each.to(),
                    Words.rounded(100 * each.risk(), 1), each.harm().sources());
        }
    }
}
