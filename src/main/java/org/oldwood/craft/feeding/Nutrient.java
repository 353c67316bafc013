package org.oldwood.craft.feeding;

/**
 * A plant food that is counted, in the form in which tables and labels give it: nitrogen as the element, phosphate,
 * potash and magnesia as oxides.
 */
public enum Nutrient {
    N("N", "nitrogen"),
    P2O5("P2O5", "phosphate"),
    K2O("K2O", "potash"),
    MGO("MgO", "magnesia");

    private final String symbol;
    private final String words;

    Nutrient(String symbol, String words) {
        this.symbol = symbol;
        this.words = words;
    }

    /** As on a label and in the data: {@code P2O5}. */
    public String symbol() { return symbol; }

    /** For people: {@code phosphate}. */
    public String words() { return words; }
}
