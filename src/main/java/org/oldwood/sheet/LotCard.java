package org.oldwood.sheet;

import java.util.List;

/**
 * One lot of cuttings.
 *
 * @param title the crop and the method
 * @param id the lot's id
 * @param stands how many were struck and live
 * @param plants how many plants to expect
 * @param chart its steps along the years
 * @param crops what it will bear, season by season
 * @param warnings what to beware of
 */
record LotCard(
        String title, String id, String stands, String plants, Chart chart, List<Crop> crops, List<String> warnings) {

    /**
     * The crop of one season.
     *
     * @param label the season
     * @param share of a full crop, per cent
     * @param kg how much; from what one lot in ten falls short of to what one in ten exceeds
     */
    record Crop(String label, long share, KgBar kg) {}
}
