package org.oldwood.craft.cuttings;

import java.util.Locale;

/** What happens to a lot, in the usual order. */
public enum LotStep {
    STRIKE("strike"),
    KEEP_MOIST("keep moist"),
    CHECK("count the living"),
    LIFT("lift"),
    PLANT_OUT("plant out"),
    CUT_BACK("cut back"),
    FLOWERS_OFF("take the flowers off"),
    FIRST_PICK("first pick"),
    FULL_CROP("full crop");

    private final String words;

    LotStep(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** For programs: {@code plant-out}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
