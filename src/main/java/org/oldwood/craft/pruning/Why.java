package org.oldwood.craft.pruning;

/** Why a stem comes out; in the order in which they are taken. */
public enum Why {
    SICK("dead or diseased"),
    WEAK("weak, damaged or low"),
    SPENT("spent"),
    FRUITED("has fruited"),
    OLDEST("the oldest"),
    CROWDED("more than its age needs"),
    CUT_DOWN("the whole bush is cut down");

    private final String words;

    Why(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
