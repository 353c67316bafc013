package org.oldwood.garden;

import org.oldwood.crop.Stems;

/**
 * A plant's stems as they stood in a season, so that ages follow from the day asked about. Never changed.
 *
 * @param season the year of the season in which they were last counted or cut
 */
public record CountedStems(Stems stems, int season) {
    static final CountedStems UNKNOWN = new CountedStems(Stems.NONE, 0);

    public boolean known() { return !stems.isEmpty(); }

    public Stems in(int year) { return known() ? stems.older(year - season) : Stems.NONE; }

    /** The stems after an entry of a season: counted anew, or less what was cut out. Other entries change nothing. */
    public CountedStems after(Entry entry, int year) {
        return switch (entry.kind()) {
            case COUNTED -> new CountedStems(in(year).recounted(entry.stems()), year);
            case PRUNED -> new CountedStems(in(year).less(entry.stems()), year);
            default -> this;
        };
    }
}
