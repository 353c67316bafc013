package org.oldwood.cli.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.cli.command.Out;
import org.oldwood.cli.season.SumCommand.Stretch;
import org.oldwood.words.Words;

/** Tells sums over stretches of days, in text or as JSON; several sums stand below each other. */
record SumReport(List<Measure> measures, List<Line> lines) {
    private static final int LABEL_WIDTH = 24;

    /** What is added up: its key among the models, and its unit in words. */
    record Measure(String key, String unit) {}

    /** What was found for one stretch: a total for each measure. */
    record Line(Stretch stretch, List<Double> totals, int filled) {}

    private record Answer(Optional<String> unit, List<Sum> sums, Optional<List<ChillWants.Told>> crops) {}

    private record Sum(
            LocalDate from, LocalDate to, Optional<Double> total, Optional<List<Total>> totals, int filledDays) {}

    private record Total(String model, String unit, double total) {}

    /** As JSON has it, with what crops want beside the sums. */
    Record answer(Optional<List<ChillWants.Told>> crops) {
        return new Answer(
                Optional.of(measures.get(0).unit()).filter(unit -> isOne()),
                lines.stream().map(this::sum).toList(),
                crops);
    }

    private boolean isOne() {
        return measures.size() == 1;
    }

    private Sum sum(Line line) {
        List<Total> totals = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            Measure measure = measures.get(i);
            totals.add(new Total(
                    measure.key(), measure.unit(), Words.rounded(line.totals().get(i), 4)));
        }
        return new Sum(
                line.stretch().first(),
                line.stretch().last(),
                Optional.of(totals.get(0).total()).filter(any -> isOne()),
                Optional.of(totals).filter(any -> !isOne()),
                line.filled());
    }

    void print(Out out) {
        for (Line line : lines) {
            String label = line.stretch().label();
            String filled = line.filled() == 0 ? "" : ", " + line.filled() + " days not measured";
            if (measures.size() == 1) {
                out.line(padded(label) + total(line, 0) + filled);
            } else {
                out.line(label + filled);
                for (int i = 0; i < measures.size(); i++) {
                    out.line("  " + total(line, i));
                }
            }
        }
    }

    private static String padded(String label) {
        return label + " ".repeat(Math.max(0, LABEL_WIDTH - label.length())) + "  ";
    }

    private String total(Line line, int i) {
        return String.format(
                Locale.ROOT, "%9.1f %s", line.totals().get(i), measures.get(i).unit());
    }
}
