package org.oldwood.craft.water;

/**
 * A moisture note as the account takes it: hand or probe found the share of the available water, 0 (wilting point) to 1
 * (field capacity), between {@code low} and {@code high}. A class of the hand is wide, so an account that lies within
 * it agrees with it.
 *
 * @param weight how far the account moves towards it, 0 (not at all) to 1 (wholly)
 */
public record MoistureNote(double low, double high, double weight) {
    public static final MoistureNote NONE = new MoistureNote(0, 1, 0);

    public MoistureNote {
        if (!(low >= 0 && high >= low && high <= 1 && weight >= 0 && weight <= 1)) {
            throw new IllegalArgumentException(
                    "shares held and weight must be from 0 to 1 but are %s, %s and %s".formatted(low, high, weight));
        }
    }

    /**
     * A note weighed by spreads: the surer it is beside the account, the further it moves it. Weight = account's
     * variance / (account's + note's variance), the best linear estimate of two independent ones.
     *
     * @param low least share found; held to 0 to 1
     * @param high greatest share found; held to 0 to 1
     * @param noteSpread standard deviation of the note, share of the available water
     * @param accountSpread standard deviation of the account, share of the available water
     */
    public static MoistureNote weighed(double low, double high, double noteSpread, double accountSpread) {
        double account = accountSpread * accountSpread;
        return new MoistureNote(within(low, 0, 1), within(high, 0, 1), account / (account + noteSpread * noteSpread));
    }

    /** The share found that lies nearest to the account's. */
    double nearest(double heldShare) {
        return within(heldShare, low, high);
    }

    private static double within(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
