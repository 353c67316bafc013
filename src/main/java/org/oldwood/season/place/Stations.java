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
import java.util.stream.Stream;
import org.oldwood.store.Documents;

/** The table of weather stations, south to north. Only rows near a place's latitude are read: a command must not wait. */
final class Stations {
    private static final String FILE = "/org/oldwood/season/places.csv";
    private static final double EARTH_KM = 6371;

    /** How far north and south is looked first, degrees; doubled until no station beyond can count. */
    private static final double FIRST_BAND = 2;

    private final String rows;
    private final int first;

    /** What was read about a place. */
    private final Map<String, List<Station>> read = new HashMap<>();

    /**
     * A station as seen from a place.
     *
     * @param km great-circle distance
     * @param apart the same with the difference in height counted in, km
     */
    record Near(Station station, double km, double apart) {}

    private Stations(String rows, int first) {
        this.rows = rows;
        this.first = first;
    }

    /** The bundled table; read once for a command. */
    static Stations read(Documents documents) {
        return documents.made("season/places.json", Stations.class, methods -> read()).orElseThrow();
    }

    private static Stations read() {
        try (InputStream in = Stations.class.getResourceAsStream(FILE)) {
            if (in == null) { throw new IllegalStateException("no bundled table " + FILE); }
            // read as octets: names are decoded with their rows
            String file = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
            return new Stations(file, file.indexOf('\n', file.indexOf("\nname,") + 1) + 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Station> all() { return rows(first, rows.length()).map(Station::of).toList(); }

    private Stream<String> rows(int from, int to) {
        byte[] octets = rows.substring(from, to).getBytes(StandardCharsets.ISO_8859_1);
        return new String(octets, StandardCharsets.UTF_8).lines();
    }

    /** Stations of about a place's latitude, but for those that lie farther east or west than the band is wide. */
    private List<Station> within(Spot spot, double band) {
        double wide = Math.sin(Math.toRadians(Math.min(band, 90)));
        double narrow = Math.cos(Math.toRadians(spot.latitude()));
        return rows(south(spot.latitude() - band), south(spot.latitude() + band)).filter(row -> {
            double apart = Math.toRadians(Math.min(90, eastward(row, spot)));
            return band > 90 || narrow * Math.sin(apart) <= wide;
        }).map(Station::of).toList();
    }

    private static double eastward(String row, Spot spot) {
        int from = row.indexOf(',', row.indexOf(',', row.indexOf(',') + 1) + 1) + 1;
        double degrees = Math.abs(Double.parseDouble(row.substring(from, row.indexOf(',', from))) - spot.longitude());
        return Math.min(degrees, 360 - degrees);
    }

    /** The stations on the same side of the equator that are wanted, the least apart first. */
    List<Near> near(Spot spot, double leaveOutKm, double kmPerMetre, int count, Predicate<Station> wanted) {
        for (double band = FIRST_BAND;; band *= 2) {
            double degrees = band;
            List<Near> all = new ArrayList<>();
            for (Station each : read.computeIfAbsent(spot + " " + band, any -> within(spot, degrees))) {
                Near seen = near(each, spot, kmPerMetre);
                if (each.latitude() * spot.latitude() >= 0 && seen.km() >= leaveOutKm) { all.add(seen); }
            }
            all.sort(Comparator.comparingDouble(Near::apart));
            List<Near> found = new ArrayList<>();
            for (int i = 0; i < all.size() && found.size() < count; i++) {
                if (wanted.test(all.get(i).station())) { found.add(all.get(i)); }
            }
            boolean enough = found.size() == count && found.get(count - 1).apart() <= Math.toRadians(band) * EARTH_KM;
            if (enough || band > 180) { return found; }
        }
    }

    /** Where the rows of the stations south of a latitude end. */
    private int south(double latitude) {
        int from = first;
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
