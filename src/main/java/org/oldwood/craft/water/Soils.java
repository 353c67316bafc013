package org.oldwood.craft.water;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.RecordException;

/** The textures, and how soils of each kind feel in the hand; from {@code soils.json}. */
public record Soils(Map<String, Soil> textures, @Key("feel") Map<String, FeelGuide> guideOf, NotKnown whenNotKnown) {
    /**
     * How one kind of soil feels in the hand.
     *
     * @param classes the classes, dry first
     */
    public record FeelGuide(String soils, List<Soil.FeelClass> classes) {
        /** The class of a word, {@code moist} for example. */
        public Optional<Soil.FeelClass> find(String word) {
            return classes.stream().filter(one -> one.word().equals(word)).findFirst();
        }
    }

    /** The texture to take where none is recorded, in open ground and in a tub. */
    @Notes("seen")
    record NotKnown(String texture, String tub) {}

    /** Reads the document. Problems go to the documents'. */
    public static Soils read(Documents documents) {
        Fields root = documents.fields("soils.json");
        root.count("format", 1, 1);
        Map<String, Soil> textures = new LinkedHashMap<>();
        Fields all = root.part("textures");
        all.keys().forEach(id -> textures.put(id, RecordReader.read(all.part(id), Soil.class, Map.of("id", id))));
        return RecordReader.read(root, Soils.class, Map.of("textures", textures));
    }

    /** The texture ids, coarse first. */
    public List<String> ids() { return List.copyOf(textures.keySet()); }

    /** The texture of an id, {@code sandy-loam} for example. */
    public Optional<Soil> find(String id) {
        return Optional.ofNullable(textures.get(id));
    }

    /** The texture that is taken where none is recorded, in open ground or in a tub. */
    public Soil notKnown(boolean tub) {
        String id = tub ? whenNotKnown.tub() : whenNotKnown.texture();
        return find(id).orElseThrow(() -> RecordException.lacks("soils.json", "texture", id, textures.keySet()));
    }

    /** How a soil of this texture feels. */
    public FeelGuide guide(Soil soil) {
        return Optional.ofNullable(guideOf.get(soil.feel()))
                .orElseThrow(() -> RecordException.lacks("soils.json", "guide", soil.feel(), guideOf.keySet()));
    }

    /** All guides, coarse soils first. */
    public List<FeelGuide> guides() { return List.copyOf(guideOf.values()); }
}
