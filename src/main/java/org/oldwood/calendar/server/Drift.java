package org.oldwood.calendar.server;

import java.util.List;
import java.util.regex.Pattern;

/** Tells amounts that only drifted, as they do a little with each day's weather, from those that changed. */
final class Drift {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.]\\d+)?");

    /** Under a tenth nobody measures out otherwise. */
    private static final double SMALL = 0.1;

    private Drift() {}

    /** Whether two texts have the same words, and each number is within a tenth of the other's. */
    static boolean isSmall(String one, String other) {
        if (!words(one).equals(words(other))) { return false; }
        List<Double> first = numbers(one);
        List<Double> second = numbers(other);
        for (int i = 0; i < first.size(); i++) {
            double most = Math.max(first.get(i), second.get(i));
            if (Math.abs(first.get(i) - second.get(i)) > 0 && Math.abs(first.get(i) - second.get(i)) >= SMALL * most) {
                return false;
            }
        }
        return true;
    }

    private static String words(String text) {
        return NUMBER.matcher(text.replace("\\,", ",").replace("\\;", ";")).replaceAll("0");
    }

    private static List<Double> numbers(String text) {
        return NUMBER.matcher(text).results().map(found -> Double.valueOf(found.group())).toList();
    }
}
