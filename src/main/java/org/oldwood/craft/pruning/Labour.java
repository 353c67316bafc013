package org.oldwood.craft.pruning;

import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;

/**
 * Minutes that a piece of pruning takes, until the grower's own minutes are known.
 *
 * @param winter the winter cut; also the cane work of a row, where it is done once
 * @param canes taking out fruited canes and tying in new ones
 */
public record Labour(Optional<Figure> winter, Optional<Figure> summer, Optional<Figure> canes) {
    static final Labour NONE = new Labour(Optional.empty(), Optional.empty(), Optional.empty());
    static final List<String> UNITS = List.of("min/bush", "min/m");

    /** The figure for a time of work; {@code renovation} takes as long as {@code winter}. */
    public Optional<Figure> of(String time) {
        return switch (time) {
            case "summer" -> summer;
            case "canes" -> canes;
            default -> winter;
        };
    }

    /** Minutes for one bush, or for a row of that many metres. */
    public static double minutes(Figure figure, double metres) {
        return figure.unit().equals("min/m") ? figure.is() * metres : figure.is();
    }
}
