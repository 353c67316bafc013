package org.oldwood.craft.feeding.liming;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.oldwood.craft.feeding.FieldUnits;
import org.oldwood.crop.Figure;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * Elemental sulphur that brings a soil down to pH 4.5, by texture and pH at the start; read between the rows, never
 * outside them.
 *
 * <p>Source: the table of Michigan State University, quoted; it stands in {@code acidifying.json}. Checked against
 * {@code reference/sulphur.csv}. For a target above 4.5 the amount that the table gives from that target down is taken
 * off.
 *
 * @param target the pH that the table reaches
 * @param startPh the pH values of its rows; the first is the target itself, which needs nothing
 * @param lbPerAcre its columns by class of soil
 * @param freeLimeSources source keys of the refusal where free lime is present
 * @param perUnit another school: g/m² for one pH unit, on sand and on heavier soil
 */
public record SulphurTable(double target, List<Double> startPh, Map<String, List<Double>> lbPerAcre,
        List<String> sources, List<String> freeLimeSources, Map<String, Double> perUnit, Map<String, Figure> figures) {
    private static final String HEAVIER = "heavier";
    private static final List<String> CLASSES = List.of("sand", "loam", "clay");
    private static final List<String> FIGURES = List.of("splitAbove", "firstShare", "retestAfter",
            "yearlyMostAroundBushes", "leadMonths", "hardAbove", "coolerThan");

    public static SulphurTable read(Documents documents) {
        Fields fields = documents.fields("acidifying.json");
        Fields table = fields.part("table");
        double target = table.number("target", 3, 7);
        Map<String, List<Double>> columns = new LinkedHashMap<>();
        CLASSES.forEach(each -> columns.put(each, startingAt(0, table.numbers(each))));
        Map<String, Figure> figures = new LinkedHashMap<>();
        FIGURES.forEach(each -> figures.put(each, Figure.read(fields, each)));
        Fields perUnit = fields.part("perUnit");
        return new SulphurTable(target, startingAt(target, table.numbers("startPh")), columns, table.texts("source"),
                fields.object("refusedOnFreeLime").map(inner -> inner.texts("source")).orElse(List.of()),
                Map.of("sand", perUnit.number("sand", 0, 1000), HEAVIER, perUnit.number(HEAVIER, 0, 1000)), figures);
    }

    /** Sulphur for one pH unit by the other school, g/m². */
    double perUnit(String soilClass) {
        Double own = perUnit.get(soilClass);
        return own == null ? perUnit.getOrDefault(HEAVIER, 0.0) : own;
    }

    private static List<Double> startingAt(double first, List<Double> rest) {
        return Stream.concat(Stream.of(first), rest.stream()).toList();
    }

    public double highestStart() { return startPh.get(startPh.size() - 1); }

    /**
     * Sulphur in g/m² from one pH to another. Empty where either lies outside the table; nothing where the start is at
     * the goal or below.
     */
    public OptionalDouble gPerM2(String soilClass, double start, double goal) {
        List<Double> column = lbPerAcre.get(soilClass);
        if (column == null) { throw new IllegalArgumentException("no class " + soilClass + " among " + CLASSES); }
        OptionalDouble from = Interpolation.inside(startPh, column, start);
        OptionalDouble to = Interpolation.inside(startPh, column, goal);
        return from.isEmpty() || to.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(FieldUnits.gPerM2FromLbPerAcre(Math.max(0, from.getAsDouble() - to.getAsDouble())));
    }

    /** A single figure by its name in the document. */
    public Figure figure(String name) {
        Figure figure = figures.get(name);
        if (figure == null) { throw new IllegalArgumentException("acidifying.json has no figure " + name); }
        return figure;
    }
}
