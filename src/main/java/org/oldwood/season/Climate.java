package org.oldwood.season;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Nearest;
import org.oldwood.store.Problems;

/**
 * A place's mean year: twelve monthly means of the days' greatest and least temperature, and rain where it is known.
 *
 * @param name for people: {@code Leuchars, Fife, Scotland (1991-2020)}, or {@code the garden's own monthly means}
 * @param latitude of the station, degrees, south negative; empty where the garden gave the means
 * @param meanMaxC means of the days' greatest temperature, January first, °C
 * @param meanMinC means of the days' least temperature, January first, °C
 * @param rainMm monthly rain, mm; empty where not known
 * @param sources source keys; empty for the garden's own means
 * @param note what to know about these means
 * @param errorC standard error of the spring mean where other places gave it, °C; 0 where it was measured
 */
public record Climate(String name, Optional<Double> latitude, Months meanMaxC, Months meanMinC, Optional<Months> rainMm,
        List<String> sources, String note, double errorC) {

    /** The same with the rain of stations around where its own is not known. */
    public Climate withRain(Climate around) {
        return new Climate(name, latitude, meanMaxC, meanMinC, around.rainMm,
                Stream.concat(sources.stream(), around.sources.stream()).toList(), (note + " " + around.note).strip(),
                errorC);
    }

    /** Whether the temperatures are the place's own and the rain is that of stations around. */
    public boolean hasOthersRain() {
        return errorC == 0 && sources.contains("dwd-climat");
    }

    /** Means of the days' mean temperature, °C. */
    public Months meanC() { return meanMaxC.mean(meanMinC); }

    /**
     * The climate that a garden declares: the name of a bundled climate, or its own monthly means {@code {"meanMaxC":
     * [12], "meanMinC": [12], "rainMm": [12]}}. Empty where it has problems.
     */
    public static Optional<Climate> of(Json declared, Documents documents, Problems problems) {
        if (declared instanceof Json.Text text) { return named(text, documents, problems); }
        Fields fields = Fields.of(declared, problems);
        Climate climate = read(fields, "the garden's own monthly means");
        fields.done();
        return fields.ok() ? Optional.of(climate) : Optional.empty();
    }

    private static Optional<Climate> named(Json.Text name, Documents documents, Problems problems) {
        List<String> known = documents.names("climates");
        if (known.contains(name.value())) { return Optional.of(bundled(name.value(), documents)); }
        problems.tell("unknown-climate", name.place(), name.value(), Nearest.hint(name.value(), known));
        return Optional.empty();
    }

    /** A climate among {@code climates/}, by its name. */
    public static Climate bundled(String id, Documents documents) {
        Fields fields = documents.fields("climates/" + id + ".json");
        fields.count("format", 1, 1);
        String years = fields.text("years", "");
        String name = fields.text("name") + (years.isEmpty() ? "" : " (" + years + ")");
        fields.optionalNumber("heightM", -430, 6000);
        Climate climate = read(fields, name);
        fields.done();
        return climate;
    }

    private static Climate read(Fields fields, String name) {
        Climate climate = new Climate(name,
                fields.has("latitude") ? Optional.of(fields.number("latitude", -90, 90)) : Optional.empty(),
                twelve(fields, "meanMaxC", -60, 60), twelve(fields, "meanMinC", -70, 45),
                fields.has("rainMm") ? Optional.of(twelve(fields, "rainMm", 0, 3000)) : Optional.empty(),
                fields.texts("source"), fields.text("note", ""), 0);
        fields.optionalText("seen");
        for (int month = 1; month <= 12; month++) {
            if (climate.meanMinC.in(month) > climate.meanMaxC.in(month)) {
                fields.tell("meanMinC", "least-above-greatest", month, climate.meanMinC.in(month),
                        climate.meanMaxC.in(month));
                return climate;
            }
        }
        return climate;
    }

    private static Months twelve(Fields fields, String key, double least, double most) {
        List<Double> numbers = fields.numbers(key);
        if (numbers.size() != 12 || numbers.stream().anyMatch(number -> !(number >= least && number <= most))) {
            fields.tell(key, "not-twelve-means", (int) least, (int) most, numbers);
            return Months.of(new double[12]);
        }
        return Months.of(numbers.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
