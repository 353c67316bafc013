package org.oldwood.craft.pruning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Key;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.store.Fields;

/** How a crop is pruned, from its {@code pruning} section. */
public record Pruning(List<WoodLook> looks, Map<String, FormPruning> forms) {

    public static Optional<Pruning> read(Crop crop) { return crop.section("pruning", Pruning.class, Pruning::of); }

    private static Pruning of(Fields fields) {
        Map<String, FormPruning> forms = new LinkedHashMap<>();
        fields.object("forms")
                .ifPresent(all -> all.keys().forEach(form -> forms.put(form, FormPruning.read(form, all.part(form)))));
        fields.count("format", 1, 1);
        return RecordReader.read(fields, Pruning.class, Map.of("forms", forms));
    }

    public Optional<FormPruning> form(String form) { return Optional.ofNullable(forms.get(form)); }

    /** How wood of that kind looks: {@code spent}, {@code bearing} or {@code new}. */
    public List<WoodLook> looks(String of) {
        return looks.stream().filter(look -> look.of().equals(of)).toList();
    }

    /**
     * How wood of one kind looks.
     *
     * @param of {@code spent}, {@code bearing} or {@code new}
     */
    public record WoodLook(@Key(words = {"spent", "bearing", "new"}) String of, String words, List<String> sources,
            Seen seen){}
}
