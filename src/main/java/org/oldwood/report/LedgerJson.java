package org.oldwood.report;

import java.util.List;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.facts.Purchase;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.plan.ShoppingList;
import org.oldwood.store.JsonWriter;

/** Ledgers and shopping lists as JSON; keys are only ever added. */
public final class LedgerJson {
    private LedgerJson() {}

    /** The ledgers of some beds. */
    public static void write(JsonWriter json, List<BedLedger> ledgers) {
        json.object().put("format", 1).array("beds");
        for (BedLedger ledger : ledgers) {
            json.object()
                    .put("bed", ledger.bed().id())
                    .put("name", ledger.bed().name())
                    .put("areaM2", ledger.bed().areaM2());
            json.array("given");
            ledger.lines().forEach(line -> write(json, line));
            json.endArray().array("seasons");
            ledger.seasons().forEach(sum -> write(json, sum));
            json.endArray().endObject();
        }
        json.endArray().endObject();
    }

    private static void write(JsonWriter json, BedLedger.Line line) {
        json.object()
                .put("date", line.date().toString())
                .put("season", line.season().label())
                .put("entry", line.kind().key())
                .put("material", line.material())
                .put("name", line.name());
        line.plant().ifPresent(plant -> json.put("plant", plant));
        json.put("amount", line.amount()).put("gPerM2", rounded(line.gPerM2()));
        write(json, "gives", line.gives());
        write(json, "leaves", line.leaves());
        json.put("known", line.known()).put("notRead", line.notRead()).endObject();
    }

    private static void write(JsonWriter json, BedLedger.Sum sum) {
        json.object().put("season", sum.season().label());
        write(json, "given", sum.given());
        write(json, "left", sum.left());
        json.put("limestoneGPerM2", rounded(sum.limestone()))
                .put("sulphurGPerM2", rounded(sum.sulphur()))
                .endObject();
    }

    /** Nutrients in g/m² under a key. */
    public static void write(JsonWriter json, String key, Nutrients nutrients) {
        json.object(key);
        for (Nutrient nutrient : Nutrient.values()) {
            json.put(nutrient.symbol(), rounded(nutrients.of(nutrient)));
        }
        json.endObject();
    }

    /** A shopping list. */
    public static void write(JsonWriter json, ShoppingList list) {
        json.object()
                .put("format", 1)
                .put("from", list.from().toString())
                .put("until", list.until().toString());
        json.array("materials");
        list.items().forEach(item -> write(json, item));
        json.endArray().put("lacking", list.lacking()).endObject();
    }

    private static void write(JsonWriter json, ShoppingList.Item item) {
        Purchase total = item.total();
        json.object()
                .put("material", total.material())
                .put("name", total.name())
                .put("amount", rounded(total.amount()))
                .put("unit", total.unit())
                .put("kept", item.kept())
                .put("neededBy", item.neededBy().toString());
        total.pack().ifPresent(pack -> json.put("packs", total.packs())
                .put("pack", pack.size().inWords())
                .put("packSeen", pack.size().seen().key()));
        json.put("notRead", total.notRead()).array("uses");
        for (ShoppingList.Use use : item.uses()) {
            json.object()
                    .put("task", use.task())
                    .put("day", use.day().toString())
                    .put("bed", use.bed())
                    .put("amount", rounded(use.amount()))
                    .endObject();
        }
        json.endArray().endObject();
    }

    /** As the text rounds: no more than two decimals. */
    public static double rounded(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
