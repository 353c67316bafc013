package org.oldwood.season.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.oldwood.season.Climate;
import org.oldwood.season.Months;
import org.oldwood.season.place.Stations.Near;
import org.oldwood.store.Documents;

/**
 * The mean climate of a place, from the weather stations around it with their distance and height corrected. How, and
 * how sure: {@code docs/places.md}.
 */
public final class PlaceClimate {
    /** Where a station's share is less it is not named. */
    private static final double NAMED_SHARE = 0.1;

    private static final int MOST_NAMED = 3;
    private static final double SAME_HEIGHT_M = 50;

    private final Spot spot;
    private final Stations stations;
    private final PlaceMethods methods;
    private final double leaveOutKm;
    private final List<Near> near;
    private final double[] shares;

    PlaceClimate(Spot spot, Stations stations, PlaceMethods methods, double leaveOutKm) {
        this.spot = spot;
        this.stations = stations;
        this.methods = methods;
        this.leaveOutKm = leaveOutKm;
        this.near = near(Station.Column.MAXIMUM);
        this.shares = shares(near);
    }

    /** The climate of a place; empty where no station lies near enough to tell. */
    public static Optional<PlaceClimate> at(Spot spot, Documents documents) {
        PlaceClimate found = new PlaceClimate(spot, Stations.read(documents), PlaceMethods.read(documents), 0);
        return found.isKnown() ? Optional.of(found) : Optional.empty();
    }

    /** Why nothing is known of a place, in sentences. */
    @SuppressWarnings("ArgumentSelectionDefectChecker") // turned round on purpose
    public static String whyNot(Spot spot, Documents documents) {
        PlaceMethods methods = PlaceMethods.read(documents);
        Spot turned = new Spot(spot.longitude(), spot.latitude(), spot.heightM());
        boolean swapped = Math.abs(spot.longitude()) <= 90 && at(turned, documents).isPresent();
        String hint = swapped
                ? " Are latitude and longitude swapped? At %s there are stations.".formatted(turned.degrees())
                : "";
        if (Math.abs(spot.latitude()) < methods.least().is() && spot.heightM() < methods.mountains().is()) {
            return "At %s, in or near the tropics, no climate is known below %.0f m: these crops want a winter.%s"
                    .formatted(spot.degrees(), methods.mountains().is(), hint);
        }
        return "No weather station lies within %.0f km of %s: open sea, ice, desert or tropics.%s"
                .formatted(methods.farthest().is(), spot.degrees(), hint);
    }

    private boolean isKnown() {
        boolean hot = Math.abs(spot.latitude()) < methods.least().is() && spot.heightM() < methods.mountains().is();
        return !hot && near.stream().anyMatch(each -> each.km() <= methods.farthest().is());
    }

    private List<Near> near(Station.Column column) { return near(column, methods.heightCounts().is()); }

    private List<Near> near(Station.Column column, double heightCounts) {
        return stations.near(spot, leaveOutKm, heightCounts, (int) methods.nearest().is(), each -> each.has(column));
    }

    private double[] shares(List<Near> from) {
        double[] weights = from.stream().mapToDouble(each -> 1 / (each.apart() * each.apart() + methods.soften().is()))
                .toArray();
        double all = Arrays.stream(weights).reduce(0, Double::sum);
        return Arrays.stream(weights).map(weight -> weight / all).toArray();
    }

    /** Means of the days' greatest temperature, °C. */
    public Months maximum() {
        return Months.of(blend(near, shares, Station.Column.MAXIMUM, Optional.of(methods.maximum())));
    }

    /** Means of the days' least temperature, °C. */
    public Months minimum() {
        return Months.of(blend(near, shares, Station.Column.MINIMUM, Optional.of(methods.minimum())));
    }

    /** Monthly rain, mm. */
    public Months rain() {
        List<Near> from = near(Station.Column.RAIN);
        return Months.of(blend(from, shares(from), Station.Column.RAIN, Optional.empty()));
    }

    /** The dew point, °C, never above the mean temperature. */
    public Months dewPoint() {
        List<Near> from = near(Station.Column.DEW_POINT);
        double[] dew = blend(from, shares(from), Station.Column.DEW_POINT, Optional.of(methods.dewPoint()));
        Months mean = maximum().mean(minimum());
        Arrays.setAll(dew, month -> Math.min(dew[month], mean.in(month + 1)));
        return Months.of(dew);
    }

    /** Sunshine in percent of day length; empty where no station near enough measures it. */
    public Optional<Months> sunPercent() {
        List<Near> from = near(Station.Column.SUN);
        if (from.isEmpty() || from.get(0).apart() > methods.farthestSun().is()) { return Optional.empty(); }
        return Optional.of(Months.of(blend(from, shares(from), Station.Column.SUN, Optional.empty())));
    }

    private double[] blend(List<Near> from, double[] weights, Station.Column column,
            Optional<PlaceMethods.Slope> slope) {
        double[] sum = new double[12];
        for (int i = 0; i < from.size(); i++) {
            double[] year = corrected(from.get(i).station(), column, slope);
            for (int month = 0; month < sum.length; month++) {
                sum[month] += weights[i] * year[month];
            }
        }
        return sum;
    }

    /** A station's months, brought to the place's height and latitude; sunshine kept within what it can be. */
    private double[] corrected(Station station, Station.Column column, Optional<PlaceMethods.Slope> slope) {
        double shift = slope.map(by -> by.perKm().is() * (station.heightM() - spot.heightM()) / 1000
                + by.perDegree().is() * (Math.abs(station.latitude()) - Math.abs(spot.latitude()))).orElse(0.0);
        return Arrays.stream(station.year(column))
                .map(is -> column == Station.Column.SUN ? Math.min(95, Math.max(3, is)) : is + shift).toArray();
    }

    /** Standard error of the spring mean, °C. */
    public double errorC() {
        double here = spring(maximum().toArray(), minimum().toArray());
        double spread = 0;
        double hundredKm = 0;
        for (int i = 0; i < near.size(); i++) {
            Station station = near.get(i).station();
            double there = spring(corrected(station, Station.Column.MAXIMUM, Optional.of(methods.maximum())),
                    corrected(station, Station.Column.MINIMUM, Optional.of(methods.minimum())));
            spread += shares[i] * (there - here) * (there - here);
            hundredKm += shares[i] * near.get(i).km() / 100;
        }
        PlaceMethods.SpringError error = methods.error();
        double bySpread = error.ofSpread().is() * Math.sqrt(spread);
        double byDistance = error.perHundredKm().is() * hundredKm;
        double always = error.always().is();
        return Math.sqrt(always * always + bySpread * bySpread + byDistance * byDistance);
    }

    /** Mean of March to May in the north, of September to November in the south. */
    private double spring(double[] maximum, double[] minimum) {
        int first = spot.latitude() >= 0 ? 2 : 8;
        return IntStream.range(first, first + 3).mapToDouble(month -> (maximum[month] + minimum[month]) / 2).reduce(0,
                Double::sum) / 3;
    }

    /** The stations that count most: {@code Crosby 14 km, Shawbury 62 km, 78 m lower}. */
    public String from() {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < near.size() && words.size() < MOST_NAMED; i++) {
            if (words.isEmpty() || shares[i] >= NAMED_SHARE) { words.add(words(near.get(i))); }
        }
        return String.join(", ", words);
    }

    private String words(Near each) {
        double higher = each.station().heightM() - spot.heightM();
        String height = Math.abs(higher) < SAME_HEIGHT_M ? ""
                : ", " + Math.round(Math.abs(higher)) + (higher > 0 ? " m higher" : " m lower");
        return each.station().name() + " " + Math.round(each.km()) + " km" + height;
    }

    /** What to say where the stations tell little, and where the place is taken to lie at the sea's level among hills. */
    public Optional<String> warning() {
        double apart = IntStream.range(0, shares.length).mapToDouble(i -> shares[i] * near.get(i).apart()).sum();
        String guess = apart > methods.far().is()
                ? "This climate is a guess: the stations lie far off, or much higher or lower."
                : "";
        List<Near> nearest = near(Station.Column.MAXIMUM, 0);
        double[] weights = shares(nearest);
        double around = IntStream.range(0, weights.length)
                .mapToDouble(i -> weights[i] * nearest.get(i).station().heightM()).sum();
        boolean high = spot.heightM() == 0 && around >= methods.highAround().is();
        String height = high
                ? "The height is taken as 0 m, but the stations around lie at %.0f m. Give site.heightM in garden.json, or --at LAT,LON,M: 100 m make about half a degree, and some days."
                        .formatted(around)
                : "";
        return Optional.of((guess + " " + height).strip()).filter(words -> !words.isEmpty());
    }

    /** The same as a garden's climate. */
    public Climate climate() {
        return new Climate("this place (from %s; 2003-2021)".formatted(from()), Optional.of(spot.latitude()), maximum(),
                minimum(), Optional.of(rain()), List.of("dwd-climat"),
                "Datenbasis: Deutscher Wetterdienst, Einzelwerte gemittelt.", errorC());
    }
}
