package org.oldwood.craft.feeding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Fields;

/** In which class of each published table a soil texture falls. */
public final class SoilClasses {
    private static final String LIGHT = "light-sand";

    private final Map<String, Row> rows = new LinkedHashMap<>();

    /**
     * One texture.
     *
     * @param nitrogen class of the British nitrogen tables
     * @param lime class of the British lime table
     * @param sulphur class of the sulphur table
     * @param gardenLime class of the American garden table of lime
     * @param organic whether it is no mineral soil but peat
     */
    public record Row(String nitrogen, String lime, String sulphur, String gardenLime, boolean organic) {}

    static SoilClasses read(Fields fields) {
        SoilClasses all = new SoilClasses();
        for (Fields soil : fields.objects("soils")) {
            all.rows.put(
                    soil.text("texture"),
                    new Row(
                            soil.text("nitrogen"),
                            soil.text("lime"),
                            soil.text("sulphur"),
                            soil.text("gardenLime"),
                            soil.flag("organic", false)));
            soil.done();
        }
        return all;
    }

    /** Its class in the nitrogen tables; empty where the texture is not known. */
    public Optional<String> nitrogen(Optional<String> texture) {
        return texture.flatMap(this::of).map(Row::nitrogen);
    }

    /** Whether a texture is light sand, off which rain takes a large dressing. */
    boolean lightSand(Optional<String> texture) {
        return nitrogen(texture).filter(LIGHT::equals).isPresent();
    }

    /** Whether a texture is peat. */
    public boolean organic(Optional<String> texture) {
        return texture.flatMap(this::of).filter(Row::organic).isPresent();
    }

    public Optional<Row> of(String texture) {
        return Optional.ofNullable(rows.get(texture));
    }

    /** The textures that are known, light to heavy. */
    public List<String> textures() {
        return new ArrayList<>(rows.keySet());
    }
}
