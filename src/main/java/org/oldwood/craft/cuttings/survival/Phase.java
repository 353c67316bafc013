package org.oldwood.craft.cuttings.survival;

/** A part of a cutting's life in which it may be lost, in order. */
public enum Phase {
    /** From striking until it has roots and grows. */
    ROOTING("rooting"),
    /** From rooted until it is lifted: the summer and what follows in the nursery bed. */
    NURSERY("nursery bed"),
    /** From planting out until it has stood one growing season in its place. */
    PLANTING_OUT("planting out");

    private final String words;

    Phase(String words) { this.words = words; }

    public String words() { return words; }
}
