package org.oldwood.craft.feeding;

import java.util.List;
import java.util.Optional;

/** In which class of each published table a soil texture falls. */
public record SoilClasses(List<Row> soils) {
    private static final String LIGHT = "light-sand";

    /**
     * One texture.
     *
     * @param nitrogen class of the British nitrogen tables
     * @param lime class of the British lime table
     * @param sulphur class of the sulphur table
     * @param gardenLime class of the American garden table of lime
     * @param organic whether it is no mineral soil but peat
     */
    public record Row(String texture, String nitrogen, String lime, String sulphur, String gardenLime,
            boolean organic) {}

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
        return soils.stream().filter(row -> row.texture.equals(texture)).findFirst();
    }

    /** The textures that are known, light to heavy. */
    public List<String> textures() {
        return soils.stream().map(Row::texture).toList();
    }
}
