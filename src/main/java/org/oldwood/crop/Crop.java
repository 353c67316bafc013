package org.oldwood.crop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.Nearest;
import org.oldwood.words.Texts;

/**
 * A crop's profile. What a craft needs to know of it stands in a section of its own, a file beside {@code crop.json}:
 * {@code pruning}, {@code yield}, {@code cuttings}, {@code feeding}, {@code water}, {@code stages}.
 *
 * @param id {@code blackcurrant}
 * @param name for one plant, {@code blackcurrant}
 * @param plural for several, {@code blackcurrants}
 * @param called what else people call it, or crops of which it is one: {@code cassis}, {@code currant}
 * @param group botanical group, {@code ribes}, {@code rubus}, {@code vaccinium} or {@code lonicera}
 * @param like the crops whose sections serve where this crop has none of its own, nearest first; their rules too
 * @param ownRules true where its rules all name it, and those of the crops it is like do not hold for it
 * @param forms the forms in which it is grown; the first is the default
 * @param counted {@code bush} where bushes are counted singly, {@code row} where canes of a row are
 * @param spacings how far plants stand apart, by form
 * @param lives productive life in years, by form
 */
public record Crop(String id, String name, String plural, List<String> called, String latin, String group,
        List<String> like, boolean ownRules, List<String> forms, @Key(words = {
                "bush", "row"}) String counted,
        @Key("spacing") Map<String, Spacing> spacings, @Key("life") Map<String, Figure> lives,
        Documents documents) implements Checked{

    static Crop read(String id, Documents documents) {
        Fields fields = documents.fields("crops/" + id + "/crop.json");
        fields.count("format", 1, 1);
        List<String> like = lineage(id, fields, documents);
        return RecordReader.read(fields, Crop.class, Map.of("id", id, "like", like, "documents", documents));
    }

    @Override
    public void check(Fields fields) { fields.tellIf(forms.isEmpty(), "forms", "no-form"); }

    /** The crops that it is like, nearest first; each is named once, and a ring of them is told. */
    private static List<String> lineage(String id, Fields fields, Documents documents) {
        List<String> line = new ArrayList<>();
        Optional<String> next = fields.optionalText("like");
        while (next.isPresent()) {
            String other = next.get();
            if (other.equals(id) || line.contains(other)) {
                fields.tell("like", "like-ring", String.join(", ", line), other);
                break;
            }
            Optional<Fields> profile = documents.optionalFields("crops/" + other + "/crop.json");
            if (profile.isEmpty()) {
                fields.tell("like", "unknown-crop like", other, Nearest.hint(other, documents.names("crops")));
                break;
            }
            line.add(other);
            next = profile.get().optionalText("like");
        }
        return List.copyOf(line);
    }

    /** How far plants of that form stand apart; that of the crop it is like where it has none of its own. */
    public Optional<Spacing> spacing(String form) {
        return nearest(crop -> Optional.ofNullable(crop.spacings.get(form)));
    }

    /** Metres of a row that one plant takes; 1 where the crop has no spacing of that form. */
    public double inRowM(String form) {
        return spacing(form).map(found -> found.inRow().is()).orElse(1.0);
    }

    /** Productive life in that form, years; that of the crop it is like where it has none of its own. */
    public Optional<Figure> life(String form) {
        return nearest(crop -> Optional.ofNullable(crop.lives.get(form)));
    }

    private <T> Optional<T> nearest(Function<Crop, Optional<T>> wanted) {
        return Stream.concat(Stream.of(this), like.stream().map(this::alike))
                .flatMap(crop -> wanted.apply(crop).stream()).findFirst();
    }

    private Crop alike(String other) {
        return documents.made("crops/" + other + "/crop.json", Crop.class, any -> read(other, documents))
                .orElseGet(() -> read(other, documents));
    }

    /**
     * Whether a rule or a caution for the crops of these ids is for this one: it is named, or one that it is like is.
     * Nothing is taken over beyond a crop that has rules of its own.
     */
    public boolean isAmong(Collection<String> ids) {
        return ids.contains(id) || (!ownRules && !like.isEmpty() && alike(like.get(0)).isAmong(ids));
    }

    /** Whether people may mean this crop by a word, in whatever spelling. */
    boolean isCalled(String word) {
        return Stream.concat(Stream.of(id, name, plural), called.stream()).anyMatch(it -> bare(it).equals(bare(word)));
    }

    private static String bare(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "").replaceAll("ies$", "y").replaceAll("s$", "");
    }

    /** What the trade says of a fruit or form of which nothing is known here. */
    static Optional<String> other(String word) {
        return Texts.sections("others.txt").entrySet().stream()
                .filter(each -> Stream.of(each.getKey().split(", ")).anyMatch(it -> bare(it).equals(bare(word))))
                .map(Map.Entry::getValue).findFirst();
    }

    /** What to say of a form in which it is not grown here: which comes nearest, and which there are. */
    public String formHint(String form) {
        return other("form " + form).map(text -> text.split(": ")).filter(near -> forms.contains(near[0]))
                .map(near -> "Nearest is \"%s\": %s (common practice). Known here: %s".formatted(near[0], near[1],
                        String.join(", ", forms)))
                .orElseGet(() -> Nearest.hint(form, forms));
    }

    /** The default form. */
    public String form() { return forms.get(0); }

    public boolean inRows() { return counted.equals("row"); }

    /** This crop's section as a record, or that of the crop it is like. Read once. */
    public <R extends Record> Optional<R> section(String name, Class<R> kind) {
        return section(name, kind, fields -> RecordReader.document(fields, kind));
    }

    /** What {@code reader} makes of this crop's section, or of that of the crop it is like. Made once. */
    public <T> Optional<T> section(String name, Class<T> kind, Function<Fields, T> reader) {
        return files(name).flatMap(file -> documents.made(file, kind, reader).stream()).findFirst();
    }

    /** This crop's section, or that of the crop it is like. Empty where neither has one. */
    public Optional<Fields> section(String name) {
        return files(name).flatMap(file -> documents.optionalFields(file).stream()).findFirst();
    }

    private Stream<String> files(String section) {
        return Stream.concat(Stream.of(id), like.stream()).map(crop -> "crops/%s/%s.json".formatted(crop, section));
    }

    /**
     * How far plants of one form stand apart.
     *
     * @param inRow from plant to plant along the row, metres
     * @param betweenRows from row to row, metres
     */
    public record Spacing(Figure inRow, Figure betweenRows) {

        /** Ground that one plant takes, square metres. */
        public double areaM2() {
            return inRow.is() * betweenRows.is();
        }
    }
}
