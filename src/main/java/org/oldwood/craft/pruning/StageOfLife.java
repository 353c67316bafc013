package org.oldwood.craft.pruning;

/** Where a plant stands in its life, as far as its pruning goes. */
public enum StageOfLife {
    /** Planted, and no growing season completed yet. */
    FIRST_YEAR("planting-year"),
    /** Its structure is being built up. */
    YOUNG("young"),
    /** In bearing, with its wood in order. */
    BEARING("bearing"),
    /** More spent wood than can come out in one winter. */
    NEGLECTED("neglected"),
    /** At the end of its productive life. */
    AGEING("ageing");

    private final String words;

    StageOfLife(String words) { this.words = words; }

    /** {@code planting-year}, {@code young}, {@code bearing}, {@code neglected}, {@code ageing}. */
    public String words() {
        return words;
    }
}
