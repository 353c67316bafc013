package org.oldwood.craft.water;

/** How an account treats a plant that goes short. */
public enum Convention {
    /**
     * FAO-56: what the plants lack in the morning (equation 84) holds back their use that day (equation 81), and only
     * what they use leaves the ground. Ours.
     */
    FAO_56,
    /**
     * The full demand leaves the ground whatever the stress, and stress is told from the evening's depletion. So the R
     * package CropWaterBalance 0.2.0 in its vignette.
     */
    FULL_DEMAND
}
