package org.oldwood.season.place;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The table of weather stations, south to north. Only rows near a place's latitude are read: a command must not wait. */
final class Stations {
    private static final String FILE = "/org/oldwood/season/places.csv";
    private static final double EARTH_KM = 6371;

    /** How far north and south is looked first, degrees; doubled until no station beyond can count. */
    private static final double FIRST_BAND = 2;

    private final String rows;

    /** What was read between two places in the rows. */
    private final Map<String, List<Station>> read = new HashMap<>();

    /**
     * A station as seen from a place.
     *
     * @param km great-circle distance
     * @param apart the same with the difference in height counted in, km
     */
    record Near(Station station, double km, double apart) {}

    private Stations(String rows) { this.rows = rows; }

    static Stations read() {
        try (InputStream in = Stations.class.getResourceAsStream(FILE)) {
            if (in == null) { throw new IllegalStateException("no bundled table " + FILE); }
            String file = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new Stations(file.substring(file.indexOf('\n', file.indexOf("\nname,") + 1) + 1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Station> all() { return rows.lines().map(Station::of).toList(); }

    /** The stations on the same side of the equator that are wanted, the least apart first. */
    List<Near> near(Spot spot, double leaveOutKm, double kmPerMetre, int count, Predicate<Station> wanted) {
        for (double band = FIRST_BAND;; band *= 2) {
            int from = south(spot.latitude() - band);
            int to = south(spot.latitude() + band);
            List<Near> found = new ArrayList<>();
            for (Station each : read.computeIfAbsent(from + "-" + to,
                    any -> rows.substring(from, to).lines().map(Station::of).toList())) {
                Near seen = near(each, spot, kmPerMetre);
                boolean counts = each.latitude() * spot.latitude() >= 0 && seen.km() >= leaveOutKm;
                if (counts && wanted.test(each)) { found.add(seen); }
            }
            found.sort(Comparator.comparingDouble(Near::apart));
            found.subList(Math.min(count, found.size()), found.size()).clear();
            boolean enough = found.size() == count && found.get(count - 1).apart() <= Math.toRadians(band) * EARTH_KM;
            if (enough || band > 180) { return found; }
        }
    }

    /** Where the rows of the stations south of a latitude end. */
    private int south(double latitude) {
        int from = 0;
        for (int to = rows.length(); from < to;) {
            int row = rows.lastIndexOf('\n', (from + to) / 2 - 1) + 1;
            if (latitude(row) < latitude) {
                from = rows.indexOf('\n', row) + 1;
            } else {
                to = row;
            }
        }
        return from;
    }

    private double latitude(int row) {
        int from = rows.indexOf(',', rows.indexOf(',', row) + 1) + 1;
        return Double.parseDouble(rows.substring(from, rows.indexOf(',', from)));
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
