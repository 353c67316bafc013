package org.oldwood.facts.feeding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.craft.feeding.liming.Acidifier;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.crop.Figure;
import org.oldwood.facts.Amount;
import org.oldwood.facts.Purchase;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/** What is told of a lime and of an acidifier alike. */
public record SoilStuff(EntryKind kind, String id, String name, Optional<Figure> density, Optional<Figure> pack,
        List<String> tags, List<String> cautions) {
    public static SoilStuff of(Lime lime) {
        return new SoilStuff(EntryKind.LIMED, lime.id(), lime.name(), lime.density(), lime.pack(), lime.tags(),
                lime.cautions());
    }

    public static SoilStuff of(Acidifier it) {
        return new SoilStuff(EntryKind.ACIDIFIED, it.id(), it.name(), it.density(), it.pack(), it.tags(),
                it.cautions());
    }

    /** The work of which cautions tell. */
    public String work() { return kind == EntryKind.LIMED ? "lime" : "acidify"; }

    Amount.Noted noted(double grams) {
        return new Amount.Noted(kind, Map.of("material", id, "grams", Words.amount(grams)));
    }

    Purchase purchase(double grams) {
        return new Purchase(id, name, grams, "g", pack.map(Purchase.Pack::ofKilograms), List.of());
    }
}
