package org.oldwood.cli.season;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.oldwood.cli.command.Out;
import org.oldwood.cli.season.SumCommand.Stretch;
import org.oldwood.store.JsonWriter;

/** Tells sums over stretches of days, in text or as JSON; several sums stand below each other. */
record SumReport(List<Measure> measures, List<Line> lines) {
    private static final int LABEL_WIDTH = 24;

    /** What is added up: its key among the models, and its unit in words. */
    record Measure(String key, String unit) {}

    /** What was found for one stretch: a total for each measure. */
    record Line(Stretch stretch, List<Double> totals, int filled) {}

    /** Writes one object, with what is told beside the sums as its last members. */
    void write(JsonWriter writer, Consumer<JsonWriter> beside) {
        writer.object();
        if (measures.size() == 1) {
            writer.put("unit", measures.get(0).unit());
        }
        writer.array("sums");
        for (Line line : lines) {
            write(line, writer);
        }
        writer.endArray();
        beside.accept(writer);
        writer.endObject();
    }

    private void write(Line line, JsonWriter writer) {
        writer.object()
                .put("from", line.stretch().first().toString())
                .put("to", line.stretch().last().toString());
        if (measures.size() == 1) {
            writer.put("total", rounded(line.totals().get(0)));
        } else {
            writer.array("totals");
            for (int i = 0; i < measures.size(); i++) {
                writer.object()
                        .put("model", measures.get(i).key())
                        .put("unit", measures.get(i).unit())
                        .put("total", rounded(line.totals().get(i)))
                        .endObject();
            }
            writer.endArray();
        }
        writer.put("filledDays", (long) line.filled()).endObject();
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

    private static double rounded(double value) {
        return Math.round(value * 1e4) / 1e4;
    }
}
