package org.oldwood.craft.feeding.liming;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;

/**
 * A material that lowers the pH of a soil.
 *
 * @param id {@code sulphur}
 * @param tags what keep-apart pairs and exclusions look at
 * @param timesSulphur its weight that does the work of one weight of elemental sulphur
 * @param density kg per litre, where it was read
 * @param pack kg in a usual pack
 * @param cautions ids of cautions to show
 */
public record Acidifier(String id, String name, List<String> tags, Figure timesSulphur, Optional<Figure> density,
        Optional<Figure> pack, List<String> cautions) {}
