package org.oldwood.craft.pruning;

import java.util.OptionalInt;

final class Bushes {
    private Bushes() {}

    /** The bush, so many seasons after it was planted. */
    static Bush after(int completed, Bush bush) {
        return new Bush(bush.stems(), bush.sick(), bush.weak(), OptionalInt.of(completed), bush.renovationWinter(),
                bush.metres());
    }
}
