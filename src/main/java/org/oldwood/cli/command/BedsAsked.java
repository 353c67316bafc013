package org.oldwood.cli.command;

import java.util.Optional;
import org.oldwood.garden.Bed;
import org.oldwood.garden.GardenState;
import org.oldwood.words.Words;

/** The bed that a command was asked about. */
public final class BedsAsked {
    private BedsAsked() {}

    /** Stops with a message where there is no such bed. */
    public static void check(GardenCommand command, Optional<String> bed, GardenState state) {
        if (bed.isPresent() && state.bed(bed.get()).isEmpty()) {
            throw command.noSuch("bed", bed.get(), state.beds().keySet());
        }
    }

    /** {@code upper terrace (upper-terrace), 18 m²}. */
    public static String heading(Bed bed) {
        String id = bed.name().equals(bed.id()) ? "" : " (" + bed.id() + ")";
        return bed.name() + id + ", " + Words.amount(bed.areaM2()) + " m²";
    }
}
