package org.oldwood.season;

/** How a stage date is known. */
public enum Basis {
    /** Noted by the grower this season. */
    SEEN("seen"),
    /** Computed from weather or climate, corrected by what was seen in past seasons. */
    MODELLED("modelled"),
    /** From a table by month and hemisphere. */
    CALENDAR("calendar");

    private final String words;

    Basis(String words) { this.words = words; }

    public String words() { return words; }
}
