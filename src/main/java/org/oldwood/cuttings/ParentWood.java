package org.oldwood.cuttings;

/** How many cuttings the parents' wood can give. */
public final class ParentWood {
    private ParentWood() {}

    /**
     * Cuttings from one shoot.
     *
     * @param shootCm length of the shoot, cm
     * @param discardedShare share at the tip that is too soft to use, 0 to below 1
     * @param lengthCm length of a cutting, cm, above 0
     */
    public static int perShoot(double shootCm, double discardedShare, double lengthCm) {
        if (!(shootCm >= 0 && discardedShare >= 0 && discardedShare < 1 && lengthCm > 0)) {
            throw new IllegalArgumentException(
                    "no cuttings can be reckoned from a shoot of "
                            + shootCm
                            + " cm less "
                            + discardedShare
                            + ", cut at "
                            + lengthCm
                            + " cm");
        }
        // A hair is given so that 3 x 20 cm fits into 60 cm whatever the rounding.
        return (int) Math.floor(shootCm * (1 - discardedShare) / lengthCm + 1e-9);
    }

    /** Shoots needed for {@code number} cuttings, at {@code perShoot} each, at least 1. */
    public static int shootsFor(int number, int perShoot) {
        return (number + perShoot - 1) / perShoot;
    }
}
