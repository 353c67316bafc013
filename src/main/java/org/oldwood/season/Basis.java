package org.oldwood.season;

import java.util.Locale;

/** How a stage date is known. */
public enum Basis {
    /** Noted by the grower this season. */
    SEEN,
    /** Computed from weather or climate, corrected by what was seen in past seasons. */
    MODELLED,
    /** From a table by month and hemisphere. */
    CALENDAR;

    public String words() { return name().toLowerCase(Locale.ROOT); }
}
