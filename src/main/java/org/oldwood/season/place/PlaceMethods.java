package org.oldwood.season.place;

import org.oldwood.crop.Figure;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Documents;

/**
 * The figures by which stations around make a place's climate, from {@code season/places.json}.
 *
 * @param nearest how many stations take part
 * @param heightCounts how much distance a metre of height counts as, km
 * @param soften what keeps a station next door from deciding alone, km²
 * @param farthest beyond this no climate is told, km
 * @param far where the stations lie farther apart on the average, height counted in, the climate is a guess, km
 * @param farthestSun beyond this no sunshine is told, km
 * @param least the latitude nearer the equator than which only mountains are known, degrees
 * @param mountains where these begin, m
 * @param highAround how high stations around must lie before a garden's height is asked for, m
 * @param error how sure the spring mean is
 */
record PlaceMethods(Figure nearest, Figure heightCounts, Figure soften, Figure farthest, Figure far, Figure farthestSun,
        Figure least, Figure mountains, Figure highAround, Slope maximum, Slope minimum, Slope dewPoint,
        SpringError error) {

    /** How a temperature falls with height, °C/km, and with latitude, °C a degree. */
    record Slope(Figure perKm, Figure perDegree) {}

    /** Standard error of a spring mean: what is always there, by the stations' spread, by their distance. */
    record SpringError(Figure always, Figure ofSpread, Figure perHundredKm) {}

    static PlaceMethods read(Documents documents) {
        return documents
                .made("season/places.json", PlaceMethods.class,
                        fields -> RecordReader.document(fields, PlaceMethods.class))
                .orElseThrow(() -> new IllegalStateException("season/places.json is missing"));
    }
}
