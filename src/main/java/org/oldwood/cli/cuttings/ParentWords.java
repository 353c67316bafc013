package org.oldwood.cli.cuttings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.oldwood.crop.Crop;
import org.oldwood.facts.cuttings.ParentStock;

/** Words what a garden's own bushes can give in cuttings, and what speaks against each. */
final class ParentWords {
    private ParentWords() {}

    static List<String> lines(ParentStock stock, Crop crop, OptionalInt needed) {
        if (stock.bushes().isEmpty()) {
            return List.of(
                    "Parents: no %s stands in this garden. Buy certified stock, or take wood from a bush that you know to be healthy."
                            .formatted(crop.name()));
        }
        List<String> lines = new ArrayList<>();
        needed.ifPresent(number -> lines.add(enough(stock, number)));
        stock.forTwo().ifPresent(lines::add);
        Map<String, List<String>> told = new LinkedHashMap<>();
        for (ParentStock.ParentBush bush : stock.bushes()) {
            tell(told, bush.fit() ? bush.words() : "not fit as a parent", bush);
        }
        for (ParentStock.ParentBush bush : stock.bushes()) {
            bush.warnings().forEach(warning -> tell(told, warning, bush));
        }
        told.forEach((words, plants) -> lines.add(String.join(", ", plants) + ": " + words));
        return lines;
    }

    /** What holds of several bushes is said once. */
    private static void tell(Map<String, List<String>> told, String words, ParentStock.ParentBush bush) {
        told.computeIfAbsent(words, any -> new ArrayList<>()).add(bush.plant());
    }

    private static String enough(ParentStock stock, int needed) {
        if (!stock.anyFit()) { return "Parents: none of the garden's bushes is fit. Buy certified stock."; }
        int known = stock.known();
        String start = "Parents: " + needed + " cuttings are needed, one from each good shoot or tip; ";
        if (known >= needed) { return start + "the bushes can spare " + known + ". That is enough."; }
        return start + (stock.allKnown()
                ? "the bushes can spare %s. That is %s short: strike over two winters, cut longer shoots in two, take shoots that the bush would need itself (it crops less for it), or buy certified stock."
                        .formatted(known, needed - known)
                : known + " are known of, and not every bush's wood is known (below).");
    }

    /** What the bushes can spare, as JSON has it. */
    record Answer(List<OneBush> parents, int parentsGive, boolean parentsAllKnown, Optional<Boolean> parentsEnough) {
        static Answer of(ParentStock stock, OptionalInt needed) {
            boolean told = needed.isPresent() && (stock.allKnown() || stock.known() >= needed.getAsInt());
            return new Answer(stock.bushes().stream().map(OneBush::of).toList(), stock.known(), stock.allKnown(),
                    told ? Optional.of(stock.known() >= needed.getAsInt()) : Optional.empty());
        }
    }

    private record OneBush(String plant, boolean fit, OptionalInt cuttings, String words, List<String> warnings) {
        static OneBush of(ParentStock.ParentBush bush) {
            return new OneBush(bush.plant(), bush.fit(), bush.cuttings(), bush.words(), bush.warnings());
        }
    }
}
