package org.oldwood.season.place;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The table of weather stations. Only the rows that take part in an answer are read whole. */
final class Stations {
    private static final String FILE = "/org/oldwood/season/places.csv";
    private static final double EARTH_KM = 6371;
    private static final int POSITION = 2;

    private final List<Row> rows = new ArrayList<>();

    /** Where a row lies, and the row. */
    private record Row(double latitude, double longitude, double heightM, String text) {}

    /**
     * A station as seen from a place.
     *
     * @param km great-circle distance
     * @param apart the same with the difference in height counted in, km
     */
    record Near(Station station, double km, double apart) {}

    private record Apart(Row row, double km, double apart) {}

    private Stations() {}

    static Stations read() {
        try (InputStream in = Stations.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("no bundled table " + FILE);
            }
            Stations stations = new Stations();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .forEach(stations::add);
            return stations;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void add(String line) {
        String[] cells = line.split(",", POSITION + 4);
        rows.add(new Row(
                Double.parseDouble(cells[POSITION]),
                Double.parseDouble(cells[POSITION + 1]),
                Double.parseDouble(cells[POSITION + 2]),
                line));
    }

    List<Station> all() {
        return rows.stream().map(row -> Station.of(row.text())).toList();
    }

    /** The stations on the same side of the equator that are wanted, the least apart first. */
    List<Near> near(Spot spot, double leaveOutKm, double kmPerMetre, int count, Predicate<Station> wanted) {
        return rows.stream()
                .filter(row -> row.latitude() * spot.latitude() >= 0)
                .map(row -> apart(row, spot, kmPerMetre))
                .filter(each -> each.km() >= leaveOutKm)
                .sorted(Comparator.comparingDouble(Apart::apart))
                .map(each -> new Near(Station.of(each.row().text()), each.km(), each.apart()))
                .filter(each -> wanted.test(each.station()))
                .limit(count)
                .toList();
    }

    private static Apart apart(Row row, Spot spot, double kmPerMetre) {
        double km = km(row.latitude(), row.longitude(), spot.latitude(), spot.longitude());
        return new Apart(row, km, km + kmPerMetre * Math.abs(row.heightM() - spot.heightM()));
    }

    private static double km(double latitude, double longitude, double toLatitude, double toLongitude) {
        double a = Math.toRadians(latitude);
        double b = Math.toRadians(toLatitude);
        double south = Math.sin((b - a) / 2);
        double east = Math.sin(Math.toRadians(toLongitude - longitude) / 2);
        double half = south * south + Math.cos(a) * Math.cos(b) * east * east;
        return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(half)));
    }
}
