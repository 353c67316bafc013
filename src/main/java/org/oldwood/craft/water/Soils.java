package org.oldwood.craft.water;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Seen;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/** The textures, and how soils of each kind feel in the hand; from {@code soils.json}. */
public final class Soils {
    private final Map<String, Soil> textures = new LinkedHashMap<>();
    private final Map<String, FeelGuide> guides = new LinkedHashMap<>();
    private String whenNotKnown = "";

    /**
     * How one kind of soil feels in the hand.
     *
     * @param soils for which soils it is
     * @param classes the classes, dry first
     */
    public record FeelGuide(String soils, List<Soil.FeelClass> classes) {
        public FeelGuide {
            classes = List.copyOf(classes);
        }

        /** The class of a word, {@code moist} for example. */
        public Optional<Soil.FeelClass> find(String word) {
            return Soil.find(classes, word);
        }
    }

    private Soils() {}

    /** Reads the document. Problems go to the documents'. */
    public static Soils read(Documents documents) {
        Soils soils = new Soils();
        Fields root = documents.fields("soils.json");
        root.count("format", 1, 1);
        root.object("textures").ifPresent(all -> {
            for (String id : all.keys()) {
                all.object(id).ifPresent(one -> soils.textures.put(id, Soil.read(id, one)));
            }
        });
        root.object("feel").ifPresent(all -> {
            for (String id : all.keys()) {
                all.object(id).ifPresent(one -> soils.guides.put(id, guide(one)));
            }
        });
        Fields notKnown = Parts.must(root, "whenNotKnown");
        soils.whenNotKnown = notKnown.oneOf("texture", List.copyOf(soils.textures.keySet()));
        Parts.grounds(notKnown);
        root.done();
        return soils;
    }

    private static FeelGuide guide(Fields fields) {
        String soils = fields.text("soils");
        List<Soil.FeelClass> classes = new ArrayList<>();
        for (Fields one : fields.objects("classes")) {
            String word = one.text("word");
            double low = one.number("low", 0, 1);
            classes.add(new Soil.FeelClass(
                    word,
                    low,
                    one.number("high", low, 1),
                    one.text("text"),
                    one.text("source"),
                    one.oneOf("seen", Seen.keys())));
            one.done();
        }
        fields.done();
        return new FeelGuide(soils, classes);
    }

    /** The texture ids, coarse first. */
    public List<String> ids() {
        return List.copyOf(textures.keySet());
    }

    /** The texture of an id, {@code sandy-loam} for example. */
    public Optional<Soil> find(String id) {
        return Optional.ofNullable(textures.get(id));
    }

    /** The texture that is taken where none is recorded. */
    public Soil whenNotKnown() {
        return find(whenNotKnown)
                .orElseThrow(() -> new IllegalStateException("soils.json has no texture " + whenNotKnown));
    }

    /** How a soil of this texture feels. */
    public FeelGuide guide(Soil soil) {
        return Optional.ofNullable(guides.get(soil.feel()))
                .orElseThrow(() -> new IllegalStateException("soils.json has no feel guide " + soil.feel()));
    }

    /** All guides, coarse soils first. */
    public List<FeelGuide> guides() {
        return List.copyOf(guides.values());
    }
}
