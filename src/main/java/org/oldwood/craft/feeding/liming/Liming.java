package org.oldwood.craft.feeding.liming;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.oldwood.crop.Figure;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * The published figures of liming: {@code liming.json}.
 *
 * @param factors t/ha of ground limestone per pH unit, by class of soil
 * @param gardenPh starting pH values of the American garden table
 * @param gardenTable its g/m² to reach {@code gardenTarget}, by class of soil
 * @param gardenTarget the pH it reaches
 * @param southAfrica a table of lime for one pH unit
 * @param usualLime the lime to reckon with where the grower names none
 * @param usualAcidifier the acidifier to reckon with where the grower names none
 */
public record Liming(Map<String, Double> factors, List<String> factorSources, List<Double> gardenPh,
        Map<String, List<Double>> gardenTable, double gardenTarget, PerUnit southAfrica, Map<String, Figure> figures,
        String usualLime, String usualAcidifier) {
    private static final List<String> CLASSES = List.of("sands", "sandy-and-silt-loams", "clays");
    private static final List<String> GARDEN_CLASSES = List.of("sandy-loam", "loam", "clay-loam");
    private static final List<String> FIGURES = List.of("peatTimes", "peatTarget", "subsoilFactor", "tableDepth",
            "deepest", "referenceNeutralising", "largestDoseSurface", "largestDoseAcidSoil", "largestDoseDugIn",
            "deepHalfAbove", "monthsBetweenDoses", "worksOver", "neverLimeFrom", "harmfulBelow", "overLimedAbove",
            "leastUseful", "leastGap");

    /**
     * Lime for one pH unit, by where the unit starts and by texture.
     *
     * @param fromPh where each unit starts
     * @param gPerM2 g/m² for each unit, by texture
     */
    public record PerUnit(List<Double> fromPh, Map<String, List<Double>> gPerM2) {
        private static final List<String> TEXTURES = List.of("sand", "sandy-loam", "loam", "silt-loam", "clay-loam");

        static PerUnit read(Fields fields) {
            Map<String, List<Double>> columns = new LinkedHashMap<>();
            TEXTURES.forEach(texture -> columns.put(texture, fields.numbers(texture)));
            return new PerUnit(fields.numbers("fromPh"), columns);
        }

        /**
         * g/m² from one pH to another, each unit in proportion; empty for a texture that is not among its own, and
         * outside its units.
         */
        OptionalDouble gPerM2(String texture, double ph, double target) {
            List<Double> column = gPerM2.getOrDefault(texture, List.of());
            double first = fromPh.get(0);
            double last = fromPh.get(fromPh.size() - 1) + 1;
            if (column.isEmpty() || ph < first || target > last) { return OptionalDouble.empty(); }
            double sum = 0;
            for (int i = 0; i < column.size(); i++) {
                double from = Math.max(ph, fromPh.get(i));
                double to = Math.min(target, fromPh.get(i) + 1);
                sum += Math.max(0, to - from) * column.get(i);
            }
            return OptionalDouble.of(sum);
        }
    }

    public static Liming read(Documents documents) {
        Fields fields = documents.fields("liming.json");
        Fields factor = fields.part("factors");
        Fields garden = fields.part("gardenTable");
        Map<String, Double> factors = new LinkedHashMap<>();
        CLASSES.forEach(each -> factors.put(each, factor.number(each, 0, 50)));
        Map<String, List<Double>> table = new LinkedHashMap<>();
        GARDEN_CLASSES.forEach(each -> table.put(each, garden.numbers(each)));
        Map<String, Figure> figures = new LinkedHashMap<>();
        FIGURES.forEach(each -> figures.put(each, Figure.read(fields, each)));
        return new Liming(factors, factor.texts("source"), garden.numbers("startPh"), table,
                garden.number("target", 4, 8), PerUnit.read(fields.part("southAfrica")), figures,
                fields.part("usual").text("lime"), fields.part("usual").text("acidifier"));
    }

    /** The pH from which on nothing is limed. */
    public double neverFrom() { return figure("neverLimeFrom").is(); }

    /** A single figure by its name in the document. */
    public Figure figure(String name) {
        Figure figure = figures.get(name);
        if (figure == null) { throw new IllegalArgumentException("liming.json has no figure " + name); }
        return figure;
    }

    /** t/ha of ground limestone per pH unit for a class of soil. */
    double factor(String soilClass) {
        Double factor = factors.get(soilClass);
        if (factor == null) { throw new IllegalStateException("liming.json has no factor for " + soilClass); }
        return factor;
    }

    /** The neutralising value for which the factors hold. */
    public NeutralisingValue reference() {
        Figure reference = figure("referenceNeutralising");
        return NeutralisingValue.of(reference.is(), reference.unit());
    }

    /**
     * What the American garden table asks to reach its target, g/m² of ground limestone, read between its rows; empty
     * outside them.
     */
    public OptionalDouble gardenTableGPerM2(String soilClass, double startPh) {
        List<Double> row = gardenTable.getOrDefault(soilClass, List.of());
        return row.isEmpty() ? OptionalDouble.empty() : Interpolation.inside(gardenPh, row, startPh);
    }
}
