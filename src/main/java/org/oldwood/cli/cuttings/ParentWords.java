package org.oldwood.cli.cuttings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.oldwood.crop.Crop;
import org.oldwood.facts.cuttings.ParentBush;
import org.oldwood.facts.cuttings.ParentStock;
import org.oldwood.store.JsonWriter;

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
        for (ParentBush bush : stock.bushes()) {
            tell(told, bush.fit() ? bush.words() : "not fit as a parent", bush);
        }
        for (ParentBush bush : stock.bushes()) {
            bush.warnings().forEach(warning -> tell(told, warning, bush));
        }
        told.forEach((words, plants) -> lines.add(String.join(", ", plants) + ": " + words));
        return lines;
    }

    /** What holds of several bushes is said once. */
    private static void tell(Map<String, List<String>> told, String words, ParentBush bush) {
        told.computeIfAbsent(words, any -> new ArrayList<>()).add(bush.plant());
    }

    private static String enough(ParentStock stock, int needed) {
        if (!stock.anyFit()) {
            return "Parents: none of the garden's bushes is fit. Buy certified stock.";
        }
        int known = stock.known();
        String start = "Parents: " + needed + " cuttings are needed, one from each good shoot or tip; ";
        if (known >= needed) {
            return start + "the bushes can spare " + known + ". That is enough.";
        }
        return start
                + (stock.allKnown()
                        ? "the bushes can spare %s. That is %s short: strike over two winters, cut longer shoots in two, take shoots that the bush would need itself (it crops less for it), or buy certified stock."
                                .formatted(known, needed - known)
                        : known + " are known of, and not every bush's wood is known (below).");
    }

    static void write(JsonWriter json, ParentStock stock, OptionalInt needed) {
        json.array("parents");
        for (ParentBush bush : stock.bushes()) {
            json.object().put("plant", bush.plant()).put("fit", bush.fit());
            bush.cuttings().ifPresent(number -> json.put("cuttings", (long) number));
            json.put("words", bush.words()).put("warnings", bush.warnings()).endObject();
        }
        json.endArray();
        json.put("parentsGive", (long) stock.known());
        json.put("parentsAllKnown", stock.allKnown());
        needed.ifPresent(number -> {
            if (stock.allKnown() || stock.known() >= number) {
                json.put("parentsEnough", stock.known() >= number);
            }
        });
    }
}
