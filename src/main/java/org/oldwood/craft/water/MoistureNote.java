package org.oldwood.craft.water;

/**
 * A moisture note as the account takes it.
 *
 * @param heldShare share of the available water that hand or probe found, 0 (wilting point) to 1 (field capacity)
 * @param weight how far the account moves towards it, 0 (not at all) to 1 (wholly)
 */
public record MoistureNote(double heldShare, double weight) {
    /** No note. */
    public static final MoistureNote NONE = new MoistureNote(0, 0);

    public MoistureNote {
        if (!(heldShare >= 0 && heldShare <= 1 && weight >= 0 && weight <= 1)) {
            throw new IllegalArgumentException(
                    "share held and weight must be from 0 to 1 but are " + heldShare + " and " + weight);
        }
    }

    /**
     * A note weighed by spreads: the surer it is beside the account, the further it moves it. Weight = account's
     * variance / (account's + note's variance), the best linear estimate of two independent ones.
     *
     * @param heldShare share found; held to 0 to 1
     * @param noteSpread standard deviation of the note, share of the available water
     * @param accountSpread standard deviation of the account, share of the available water
     */
    public static MoistureNote weighed(double heldShare, double noteSpread, double accountSpread) {
        double account = accountSpread * accountSpread;
        double weight = account / (account + noteSpread * noteSpread);
        return new MoistureNote(Math.max(0, Math.min(1, heldShare)), weight);
    }

    /** Standard deviation of a value that lies anywhere in a class of this width. */
    public static double spreadOfClass(double width) {
        return width / Math.sqrt(12);
    }
}
