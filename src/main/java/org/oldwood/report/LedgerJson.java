package org.oldwood.report;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.feeding.Nutrient;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.facts.Purchase;
import org.oldwood.facts.feeding.Applications;
import org.oldwood.facts.feeding.BedLedger;
import org.oldwood.plan.ShoppingList;
import org.oldwood.words.Words;

/** Ledgers and shopping lists as JSON has them; keys are only ever added. */
public final class LedgerJson {
    private record Ledgers(int format, List<Ledger> beds) {}

    private record Ledger(String bed, String name, double areaM2, List<Given> given, List<Sum> seasons) {
        static Ledger of(BedLedger ledger) {
            return new Ledger(ledger.bed().id(), ledger.bed().name(), ledger.bed().areaM2(),
                    ledger.lines().stream().map(Given::of).toList(), ledger.seasons().stream().map(Sum::of).toList());
        }
    }

    private record Given(LocalDate date, String season, String entry, String material, String name,
            Optional<String> plant, String amount, double gPerM2, Map<String, Double> gives, Map<String, Double> leaves,
            boolean known, List<String> notRead) {
        static Given of(Applications.Given line) {
            return new Given(line.date(), line.season().label(), line.kind().key(), line.material(), line.name(),
                    line.plant(), line.amount(), Words.rounded(line.gPerM2(), 2), nutrients(line.now()),
                    nutrients(line.next()), line.known(), line.notRead());
        }
    }

    private record Sum(String season, Map<String, Double> given, Map<String, Double> left, double limestoneGPerM2,
            double sulphurGPerM2) {
        static Sum of(BedLedger.Sum sum) {
            return new Sum(sum.season().label(), nutrients(sum.given()), nutrients(sum.left()),
                    Words.rounded(sum.limestone(), 2), Words.rounded(sum.sulphur(), 2));
        }
    }

    private record Shopping(int format, LocalDate from, LocalDate until, List<Material> materials,
            List<String> lacking) {}

    private record Material(String material, String name, double amount, String unit, boolean kept, LocalDate neededBy,
            Optional<Long> packs, Optional<String> pack, Optional<String> packSeen, List<String> notRead,
            List<ShoppingList.Use> uses) {
        static Material of(ShoppingList.Item item) {
            Purchase total = item.total();
            return new Material(total.material(), total.name(), Words.rounded(total.amount(), 2), total.unit(),
                    item.kept(), item.neededBy(), total.pack().map(pack -> total.packs()),
                    total.pack().map(pack -> pack.size().plain()), total.pack().map(pack -> pack.size().seen().key()),
                    total.notRead(), item.uses().stream().map(use -> new ShoppingList.Use(use.task(), use.day(),
                            use.bed(), Words.rounded(use.amount(), 2))).toList());
        }
    }

    private LedgerJson() {}

    public static Record of(List<BedLedger> ledgers) {
        return new Ledgers(1, ledgers.stream().map(Ledger::of).toList());
    }

    public static Record of(ShoppingList list) {
        return new Shopping(1, list.from(), list.until(), list.items().stream().map(Material::of).toList(),
                list.lacking());
    }

    /** By symbol, g/m². */
    public static Map<String, Double> nutrients(Nutrients nutrients) {
        Map<String, Double> bySymbol = new LinkedHashMap<>();
        for (Nutrient nutrient : Nutrient.values()) {
            bySymbol.put(nutrient.symbol(), Words.rounded(nutrients.of(nutrient), 2));
        }
        return bySymbol;
    }
}
