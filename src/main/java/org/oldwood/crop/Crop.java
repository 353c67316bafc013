package org.oldwood.crop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * A crop's profile. What a craft needs to know of it stands in a section of its own, a file beside {@code crop.json}:
 * {@code pruning}, {@code yield}, {@code cuttings}, {@code feeding}, {@code water}, {@code stages}.
 *
 * @param id {@code blackcurrant}
 * @param name for one plant, {@code blackcurrant}
 * @param plural for several, {@code blackcurrants}
 * @param latin botanical name
 * @param group botanical group, {@code ribes}, {@code rubus}, {@code vaccinium} or {@code lonicera}
 * @param like the crop whose sections serve where this crop has none of its own
 * @param forms the forms in which it is grown; the first is the default
 * @param counted {@code bush} where bushes are counted singly, {@code row} where canes of a row are
 * @param spacings how far plants stand apart, by form
 * @param lives productive life in years, by form
 */
public record Crop(
        String id,
        String name,
        String plural,
        String latin,
        String group,
        Optional<String> like,
        List<String> forms,
        String counted,
        Map<String, Spacing> spacings,
        Map<String, Figure> lives,
        Documents documents) {

    static Crop read(String id, Documents documents) {
        Fields fields = documents.fields("crops/" + id + "/crop.json");
        Crop crop = new Crop(
                id,
                fields.text("name"),
                fields.text("plural"),
                fields.text("latin"),
                fields.text("group"),
                fields.optionalText("like"),
                fields.texts("forms"),
                fields.oneOf("counted", List.of("bush", "row")),
                byForm(fields, "spacing", Spacing::read),
                byForm(fields, "life", Figure::of),
                documents);
        if (crop.forms.isEmpty()) {
            fields.wrong("forms", "no-form", "must name at least one form", "");
        }
        fields.count("format", 1, 1);
        fields.done();
        return crop;
    }

    private static <T> Map<String, T> byForm(Fields fields, String key, Function<Fields, T> reader) {
        Map<String, T> all = new LinkedHashMap<>();
        fields.object(key).ifPresent(forms -> {
            for (String form : forms.keys()) {
                forms.object(form).map(reader).ifPresent(it -> all.put(form, it));
            }
        });
        return all;
    }

    /** How far plants of that form stand apart; that of the crop it is like where it has none of its own. */
    public Optional<Spacing> spacing(String form) {
        return Optional.ofNullable(spacings.get(form))
                .or(() -> like.map(other -> alike(other).spacings.get(form)));
    }

    /** Productive life in that form, years; that of the crop it is like where it has none of its own. */
    public Optional<Figure> life(String form) {
        return Optional.ofNullable(lives.get(form))
                .or(() -> like.map(other -> alike(other).lives.get(form)));
    }

    private Crop alike(String other) {
        return documents
                .made("crops/" + other + "/crop.json", Crop.class, any -> read(other, documents))
                .orElseGet(() -> read(other, documents));
    }

    /** The default form. */
    public String form() {
        return forms.get(0);
    }

    public boolean inRows() {
        return counted.equals("row");
    }

    /** What {@code reader} makes of this crop's section, or of that of the crop it is like. Made once. */
    public <T> Optional<T> section(String name, Class<T> kind, Function<Fields, T> reader) {
        Optional<T> own = documents.made("crops/" + id + "/" + name + ".json", kind, reader);
        return own.isPresent() || like.isEmpty()
                ? own
                : documents.made("crops/" + like.get() + "/" + name + ".json", kind, reader);
    }

    /** This crop's section, or that of the crop it is like. Empty where neither has one. */
    public Optional<Fields> section(String name) {
        Optional<Fields> own = documents.optionalFields("crops/" + id + "/" + name + ".json");
        return own.isPresent() || like.isEmpty()
                ? own
                : documents.optionalFields("crops/" + like.get() + "/" + name + ".json");
    }
}
