package org.oldwood.cli.season;

import org.oldwood.season.sums.ChillReport;
import org.oldwood.store.JsonWriter;

/** A winter's chill beside what a crop wants, in words and in JSON. */
final class ChillLines {
    private ChillLines() {}

    static String of(ChillReport report) {
        return "Chill from " + report.from() + " to " + report.to() + ": " + report.verdict() + ".";
    }

    static void write(JsonWriter json, ChillReport report) {
        json.object("chill")
                .put("from", report.from().toString())
                .put("to", report.to().toString())
                .put("portions", tenths(report.portions()))
                .put("answer", report.answer().words());
        report.need().ifPresent(need -> json.put("model", need.model())
                .put("given", tenths(need.total()))
                .put("wanted", need.wants().is())
                .put("wantedLeast", need.wants().low())
                .put("wantedMost", need.wants().high())
                .put("unit", need.wants().unit())
                .put("seen", need.wants().seen().words())
                .put("sources", need.wants().sources()));
        json.put("words", report.verdict()).endObject();
    }

    private static double tenths(double value) {
        return Math.round(10 * value) / 10.0;
    }
}
