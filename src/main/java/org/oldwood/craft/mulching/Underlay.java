package org.oldwood.craft.mulching;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.words.Words;

/**
 * Paper or card laid under a mulch.
 *
 * @param id {@code paper}
 * @param layers sheets one on another
 * @param overlap how far the sheets lie over each other, cm
 * @param gramsPerM2 weight of a sheet, g/m², where known
 * @param cautions ids of cautions to show
 */
@Notes("tags")
public record Underlay(String id, String name, Figure layers, Sheet sheetCm, Figure overlap,
        Optional<Figure> gramsPerM2, List<String> cautions) {
    /** Width and height of a sheet, cm. */
    record Sheet(@Key(least = 1, most = 500) double width, @Key(least = 1, most = 500) double height) {}

    /** {@code 40 sheets of newspaper, 6 on one another, overlapping 10 cm, wetted}. */
    public String inWords(long sheets) {
        return "%s of %s, %s%s%s, overlapping %s cm%s, wetted".formatted(Words.count(sheets, "sheet", "sheets"), name,
                Words.amount(layers.is()), layers.is() == 1 ? " thick" : " on one another", layers.seen().beside(),
                Words.amount(overlap.is()), overlap.seen().beside());
    }

    /** Sheets for one square metre, all layers. */
    public double sheetsPerM2() {
        return MulchVolume.sheetsPerM2(sheetCm.width(), sheetCm.height(), overlap.is()) * layers.is();
    }
}
