package org.oldwood.cli.season;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.oldwood.season.sums.ChillReport;

/** A winter's chill beside what a crop wants, in words and in JSON. */
final class ChillLines {
    private ChillLines() {}

    static String of(ChillReport report) {
        return "Chill from " + report.from() + " to " + report.to() + ": " + report.verdict() + ".";
    }

    /** As JSON has it. */
    record Answer(
            LocalDate from,
            LocalDate to,
            double portions,
            String answer,
            @JsonUnwrapped @Nullable Wanted need,
            String words) {
        static Answer of(ChillReport report) {
            return new Answer(
                    report.from(),
                    report.to(),
                    tenths(report.portions()),
                    report.answer().words(),
                    report.need().map(Wanted::of).orElse(null),
                    report.verdict());
        }
    }

    private record Wanted(
            String model,
            double given,
            double wanted,
            double wantedLeast,
            double wantedMost,
            String unit,
            String seen,
            List<String> sources) {
        static Wanted of(ChillReport.Need need) {
            return new Wanted(
                    need.model(),
                    tenths(need.total()),
                    need.wants().is(),
                    need.wants().low(),
                    need.wants().high(),
                    need.wants().unit(),
                    need.wants().seen().words(),
                    need.wants().sources());
        }
    }

    private static double tenths(double value) {
        return Math.round(10 * value) / 10.0;
    }
}
