package org.oldwood.season.place;

import java.util.stream.Stream;

/**
 * A weather station and its mean year.
 *
 * @param latitude degrees, south negative
 * @param longitude degrees, west negative
 * @param heightM above the sea, m
 * @param row its row of {@code season/places.csv}
 */
public record Station(String name, double latitude, double longitude, double heightM, String row) {
    /** Middle of each month as a day of the year, the same in both halves of the earth. */
    private static final double[] MIDDLE = {15.5, 45.1, 74.8, 105.2, 135.8, 166.2, 196.8, 227.8, 258.2, 288.8, 319.2,
            349.8};

    private static final double YEAR = 365.25;

    /** A column of the table. */
    enum Column {
        MAXIMUM(5),
        MINIMUM(6),
        RAIN(7),
        DEW_POINT(8),
        SUN(9);

        private final int at;

        Column(int at) { this.at = at; }
    }

    static Station of(String row) {
        String[] cells = row.split(",", 6);
        return new Station(cells[0], Double.parseDouble(cells[2]), Double.parseDouble(cells[3]),
                Double.parseDouble(cells[4]), row);
    }

    boolean has(Column column) { return !cell(column).isEmpty(); }

    private String cell(Column column) { return row.split(",", -1)[column.at]; }

    /** Twelve monthly values: as printed for rain, else through the station's curve. */
    double[] year(Column column) {
        double[] numbers = Stream.of(cell(column).split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
        if (column == Column.RAIN) { return numbers; }
        double[] year = new double[MIDDLE.length];
        for (int month = 0; month < year.length; month++) {
            double t = 2 * Math.PI * MIDDLE[month] / YEAR;
            year[month] = numbers[0];
            for (int wave = 1; 2 * wave < numbers.length; wave++) {
                year[month] += numbers[2 * wave - 1] * Math.cos(wave * t) + numbers[2 * wave] * Math.sin(wave * t);
            }
        }
        return year;
    }

}
