package org.oldwood.craft.mulching;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A layer of mulch as time goes by: it settles within days by the factor of its material, then rots at a steady pace. A
 * rough reckoning, for knowing when to look; a look decides.
 *
 * @param laidCm how deep it lay when it was laid, cm
 * @param laid the day it was laid
 */
public record MulchLayer(Mulch mulch, double laidCm, LocalDate laid) {
    private static final double DAYS_PER_YEAR = 365.25;

    /** Its depth once settled, cm. */
    public double settledCm() { return laidCm / mulch.layFactor().is(); }

    /** Its depth on a day at or after it was laid, cm; never less than nothing. */
    public double depthOn(LocalDate day) {
        double years = ChronoUnit.DAYS.between(laid, day) / DAYS_PER_YEAR;
        return Math.max(0, settledCm() - years * mulch.decayCmPerYear().is());
    }

    /** The day when it has shrunk to {@code depthCm}; empty where it never does. */
    public Optional<LocalDate> reaches(double depthCm) {
        double pace = mulch.decayCmPerYear().is();
        if (pace <= 0) { return Optional.empty(); }
        double years = Math.max(0, settledCm() - depthCm) / pace;
        return Optional.of(laid.plusDays((long) Math.ceil(years * DAYS_PER_YEAR)));
    }
}
