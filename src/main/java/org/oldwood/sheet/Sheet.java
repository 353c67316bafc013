package org.oldwood.sheet;

import java.util.List;
import org.oldwood.crop.Source;

/**
 * The second part of a full sheet, after the rounds and cards.
 *
 * @param outlookWords what the outlooks rest on, where it was not read in print
 * @param waterLacking what must be known before the beds' water can be told; empty for nothing
 */
record Sheet(
        List<Chart> stages,
        List<Year> years,
        List<BushCard> bushes,
        List<String> outlookWords,
        List<BedCard> beds,
        String waterLacking,
        List<String> questions,
        List<Source> sources) {

    /** The charts of one season. */
    record Year(String label, List<Chart> charts) {}
}
