package org.oldwood.calendar.format;

/**
 * Colour names of CSS3 for calendars and items (RFC 7986, 5.9). Only looks: nothing is told by colour alone, and
 * several clients ignore it.
 */
public final class Colours {
    public static final String CALENDAR = "darkolivegreen";

    private Colours() {}

    public static String of(String category) {
        return switch (category) {
            case "pruning" -> "sienna";
            case "cuttings" -> "mediumseagreen";
            case "feeding" -> "goldenrod";
            case "mulching" -> "tan";
            case "water" -> "steelblue";
            case "soil" -> "saddlebrown";
            case "picking" -> "crimson";
            case "season" -> "slategray";
            default -> CALENDAR;
        };
    }
}
