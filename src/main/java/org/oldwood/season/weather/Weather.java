package org.oldwood.season.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The days' weather at one place, in the order of the days, each day at most once. */
public final class Weather {
    private static final Weather NONE = new Weather(List.of());

    private final List<WeatherDay> days;
    private final long[] epochDays;

    private Weather(List<WeatherDay> days) {
        this.days = days;
        this.epochDays = days.stream().mapToLong(day -> day.date().toEpochDay()).toArray();
    }

    public static Weather none() { return NONE; }

    /** Of two entries for a day the later one counts. */
    public static Weather of(Collection<WeatherDay> days) {
        SortedMap<LocalDate, WeatherDay> sorted = new TreeMap<>();
        days.forEach(day -> sorted.put(day.date(), day));
        return new Weather(List.copyOf(sorted.values()));
    }

    public Optional<WeatherDay> on(LocalDate date) {
        int at = Arrays.binarySearch(epochDays, date.toEpochDay());
        return at < 0 ? Optional.empty() : Optional.of(days.get(at));
    }

    public List<WeatherDay> days() { return days; }

    /** The days from {@code first} to {@code last}, both included. */
    public List<WeatherDay> between(LocalDate first, LocalDate last) {
        int from = from(first);
        return days.subList(from, Math.max(from, from(last.plusDays(1))));
    }

    private int from(LocalDate date) {
        int at = Arrays.binarySearch(epochDays, date.toEpochDay());
        return at < 0 ? -at - 1 : at;
    }

    /**
     * What it leaves to the climate's means from {@code first} to {@code last}, for people; nothing where there is no
     * weather at all. A lag of two days is nothing to tell.
     */
    public List<String> lacks(LocalDate first, LocalDate last) {
        List<String> words = new ArrayList<>();
        if (isEmpty()) { return words; }
        if (last().isBefore(last.minusDays(2))) {
            words.add(
                    "weather.csv ends on %s: the days since then are the climate's means. Add newer ones: oldwood weather add FILE"
                            .formatted(last()));
        }
        LocalDate from = first.isBefore(first()) ? first() : first;
        LocalDate to = last.isBefore(last()) ? last : last();
        List<WeatherDay> days = between(from, to);
        long all = Math.max(0, to.toEpochDay() - from.toEpochDay() + 1);
        long rain = all - days.stream().filter(day -> day.rainMm().isPresent()).count();
        long warmth = all - days.stream().filter(WeatherDay::hasTemperatures).count();
        if (rain + warmth > 0) {
            words.add(
                    "of the %s days from %s to %s weather.csv lacks the rain of %s and the temperatures of %s: the climate's means stand for them"
                            .formatted(all, from, to, rain, warmth));
        }
        return words;
    }

    public boolean isEmpty() { return days.isEmpty(); }

    public int count() { return days.size(); }

    /** The first day; there must be one. */
    public LocalDate first() { return days.get(0).date(); }

    /** The last day; there must be one. */
    public LocalDate last() { return days.get(days.size() - 1).date(); }
}
