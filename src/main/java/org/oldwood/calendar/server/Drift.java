package org.oldwood.calendar.server;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Tells amounts that only drifted, as they do a little with each day's weather, from those that changed. */
final class Drift {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.]\\d+)?");

    /** Under a tenth nobody measures out otherwise. */
    private static final double SMALL = 0.1;

    private Drift() {}

    /** Whether two texts have the same words, and each number is within a tenth of the other's. */
    static boolean isSmall(String one, String other) {
        List<Double> first = numbers(one);
        List<Double> second = numbers(other);
        return words(one).equals(words(other))
                && IntStream.range(0, first.size()).allMatch(i -> isSmall(first.get(i), second.get(i)));
    }

    private static boolean isSmall(double one, double other) {
        return one == other || Math.abs(one - other) < SMALL * Math.max(one, other);
    }

    private static String words(String text) {
        return NUMBER.matcher(text.replace("\\,", ",").replace("\\;", ";")).replaceAll("0");
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text).results().map(found -> Double.valueOf(found.group())).toList();
    }
}
