package org.oldwood.craft.pruning;

/** Why a stem comes out; in the order in which they are taken. */
public enum Why {
    SICK,
    WEAK,
    SPENT,
    FRUITED,
    OLDEST,
    CROWDED,
    CUT_DOWN
}
