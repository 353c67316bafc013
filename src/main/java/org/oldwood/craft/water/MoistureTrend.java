package org.oldwood.craft.water;

import java.util.List;
import java.util.Optional;

/**
 * What repeated moisture notes say of the account: that the bed loses more, or less, than modelled. Told only when
 * several notes in a row pull the same way and by more than a hand errs.
 *
 * @param notes how many notes in a row pull this way
 * @param mmPerWeek by how much the bed dries faster than modelled; below 0 where slower
 */
public record MoistureTrend(int notes, double mmPerWeek) {
    /**
     * Looks at the latest notes.
     *
     * @param corrections what each note did, oldest first
     * @param leastNotes how many must pull the same way, 2 or more
     * @param noiseMm what one note may be wrong by, mm
     */
    public static Optional<MoistureTrend> of(List<WaterDays.Correction> corrections, int leastNotes, double noiseMm) {
        int last = corrections.size() - 1;
        int first = last;
        while (first > 0 && corrections.get(first - 1).drierMm() * corrections.get(last).drierMm() > 0) {
            first--;
        }
        int notes = last - first + 1;
        if (notes < leastNotes) { return Optional.empty(); }
        double pull = 0;
        double fresh = 0;
        for (int i = first; i <= last; i++) {
            pull += corrections.get(i).drierMm();
            fresh += i == first ? 0 : since(corrections.get(i - 1), corrections.get(i));
        }
        int days = corrections.get(last).day() - corrections.get(first).day();
        if (days == 0 || Math.abs(pull / notes) <= noiseMm || fresh * pull <= 0) { return Optional.empty(); }
        return Optional.of(new MoistureTrend(notes, 7 * fresh / days));
    }

    /** What came up since the note before, which the account took in only in part. */
    private static double since(WaterDays.Correction before, WaterDays.Correction now) {
        return now.drierMm() - (1 - before.weight()) * before.drierMm();
    }

    /** Whether the bed is drier than modelled. */
    public boolean drier() { return mmPerWeek > 0; }
}
