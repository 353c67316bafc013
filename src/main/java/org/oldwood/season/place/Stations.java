package org.oldwood.season.place;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The table of weather stations, south to north. Only rows near a place's latitude are read: a command must not wait. */
final class Stations {
    private static final String FILE = "/org/oldwood/season/places.csv";
    private static final double EARTH_KM = 6371;

    /** How far north and south is looked first, degrees; doubled until no station beyond can count. */
    private static final double FIRST_BAND = 2;

    private final List<String> rows;

    /**
     * A station as seen from a place.
     *
     * @param km great-circle distance
     * @param apart the same with the difference in height counted in, km
     */
    record Near(Station station, double km, double apart) {}

    private Stations(List<String> rows) { this.rows = rows; }

    static Stations read() {
        try (InputStream in = Stations.class.getResourceAsStream(FILE)) {
            if (in == null) { throw new IllegalStateException("no bundled table " + FILE); }
            return new Stations(new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.startsWith("#")).skip(1).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Station> all() { return rows.stream().map(Station::of).toList(); }

    /** The stations on the same side of the equator that are wanted, the least apart first. */
    List<Near> near(Spot spot, double leaveOutKm, double kmPerMetre, int count, Predicate<Station> wanted) {
        for (double band = FIRST_BAND;; band *= 2) {
            List<Near> found = rows.subList(south(spot.latitude() - band), south(spot.latitude() + band)).stream()
                    .map(Station::of).filter(each -> each.latitude() * spot.latitude() >= 0 && wanted.test(each))
                    .map(each -> near(each, spot, kmPerMetre)).filter(each -> each.km() >= leaveOutKm)
                    .sorted(Comparator.comparingDouble(Near::apart)).limit(count).toList();
            boolean enough = found.size() == count && found.get(count - 1).apart() <= Math.toRadians(band) * EARTH_KM;
            if (enough || band > 180) { return found; }
        }
    }

    /** How many stations lie south of a latitude. */
    private int south(double latitude) {
        int from = 0;
        for (int to = rows.size(); from < to;) {
            int middle = (from + to) >>> 1;
            if (latitude(rows.get(middle)) < latitude) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    private static double latitude(String row) {
        int from = row.indexOf(',', row.indexOf(',') + 1) + 1;
        return Double.parseDouble(row.substring(from, row.indexOf(',', from)));
    }

    private static Near near(Station station, Spot spot, double kmPerMetre) {
        double a = Math.toRadians(station.latitude());
        double b = Math.toRadians(spot.latitude());
        double south = Math.sin((b - a) / 2);
        double east = Math.sin(Math.toRadians(spot.longitude() - station.longitude()) / 2);
        double half = south * south + Math.cos(a) * Math.cos(b) * east * east;
        double km = 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(half)));
        return new Near(station, km, km + kmPerMetre * Math.abs(station.heightM() - spot.heightM()));
    }
}
