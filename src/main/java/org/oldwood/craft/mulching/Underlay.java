package org.oldwood.craft.mulching;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;
import org.oldwood.words.Words;

/**
 * Paper or card laid under a mulch.
 *
 * @param id {@code paper}
 * @param name for people
 * @param layers sheets one on another
 * @param widthCm width of a sheet, cm
 * @param heightCm height of a sheet, cm
 * @param overlap how far the sheets lie over each other, cm
 * @param gramsPerM2 weight of a sheet, g/m², where known
 * @param cautions ids of cautions to show
 */
public record Underlay(
        String id,
        String name,
        Figure layers,
        double widthCm,
        double heightCm,
        Figure overlap,
        Optional<Figure> gramsPerM2,
        List<String> cautions) {
    static Underlay read(Fields fields) {
        Fields sheet =
                fields.object("sheetCm").orElseThrow(() -> new IllegalStateException("an underlay has no sheetCm"));
        fields.texts("tags");
        Underlay underlay = new Underlay(
                fields.text("id"),
                fields.text("name"),
                Figure.read(fields, "layers"),
                sheet.number("width", 1, 500),
                sheet.number("height", 1, 500),
                Figure.read(fields, "overlap"),
                Figure.optional(fields, "gramsPerM2"),
                fields.texts("cautions"));
        fields.done();
        return underlay;
    }

    /** {@code 40 sheets of newspaper, 6 on one another, overlapping 10 cm, wetted}. */
    public String inWords(long sheets) {
        return "%s of %s, %s%s%s, overlapping %s cm%s, wetted"
                .formatted(
                        Words.count(sheets, "sheet", "sheets"),
                        name,
                        Words.amount(layers.is()),
                        layers.is() == 1 ? " thick" : " on one another",
                        layers.seen().beside(),
                        Words.amount(overlap.is()),
                        overlap.seen().beside());
    }

    /** Sheets for one square metre, all layers. */
    public double sheetsPerM2() {
        return MulchVolume.sheetsPerM2(widthCm, heightCm, overlap.is()) * layers.is();
    }
}
