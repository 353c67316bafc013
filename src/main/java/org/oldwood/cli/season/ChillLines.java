package org.oldwood.cli.season;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.oldwood.season.sums.ChillReport;
import org.oldwood.words.Words;

/** A winter's chill beside what a crop wants, in words and in JSON. */
final class ChillLines {
    private ChillLines() {}

    static String of(ChillReport report) {
        return "Chill from " + report.from() + " to " + report.to() + ": " + report.verdict() + ".";
    }

    record Answer(LocalDate from, LocalDate to, double portions, String answer, @JsonUnwrapped @Nullable Wanted need,
            String words) {
        static Answer of(ChillReport report) {
            return new Answer(report.from(), report.to(), Words.rounded(report.portions(), 1), report.answer().words(),
                    report.need().map(Wanted::of).orElse(null), report.verdict());
        }
    }

    private record Wanted(String model, double given, double wanted, double wantedLeast, double wantedMost, String unit,
            String seen, List<String> sources) {
        static Wanted of(ChillReport.Need need) {
            return new Wanted(need.model(), Words.rounded(need.total(), 1), need.wants().is(), need.wants().low(),
                    need.wants().high(), need.wants().unit(), need.wants().seen().key(), need.wants().sources());
        }
    }
}
