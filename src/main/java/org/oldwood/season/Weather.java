package org.oldwood.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The days' weather at one place, in the order of the days, each day at most once. */
public final class Weather {
    private static final Weather NONE = new Weather(new TreeMap<>());

    private final SortedMap<LocalDate, WeatherDay> days;

    private Weather(SortedMap<LocalDate, WeatherDay> days) {
        this.days = days;
    }

    public static Weather none() {
        return NONE;
    }

    /** Of two entries for a day the later one counts. */
    public static Weather of(Collection<WeatherDay> days) {
        SortedMap<LocalDate, WeatherDay> sorted = new TreeMap<>();
        days.forEach(day -> sorted.put(day.date(), day));
        return new Weather(sorted);
    }

    public Optional<WeatherDay> on(LocalDate date) {
        return Optional.ofNullable(days.get(date));
    }

    public List<WeatherDay> days() {
        return List.copyOf(days.values());
    }

    /** The days from {@code first} to {@code last}, both included. */
    public Collection<WeatherDay> between(LocalDate first, LocalDate last) {
        return first.isAfter(last) ? List.of() : days.subMap(first, last.plusDays(1)).values();
    }

    public boolean isEmpty() {
        return days.isEmpty();
    }

    public int count() {
        return days.size();
    }

    /** The first day; there must be one. */
    public LocalDate first() {
        return days.firstKey();
    }

    /** The last day; there must be one. */
    public LocalDate last() {
        return days.lastKey();
    }
}
