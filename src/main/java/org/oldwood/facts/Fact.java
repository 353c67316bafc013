package org.oldwood.facts;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something known of a subject, or known to be unknown.
 *
 * @param name its name in the rules, {@code age} for example
 * @param number its value, where it is a number
 * @param text its value, where it is a word
 * @param day its value, where it is a day
 * @param words for people: what it is with its value, or what to note so that it becomes known
 * @param sources source keys, for values that rest on figures
 */
public record Fact(
        String name,
        OptionalDouble number,
        Optional<String> text,
        Optional<LocalDate> day,
        String words,
        List<String> sources) {

    public Fact {
        sources = List.copyOf(sources);
    }

    public static Fact number(String name, double value, String words, String... sources) {
        return new Fact(name, OptionalDouble.of(value), Optional.empty(), Optional.empty(), words, List.of(sources));
    }

    public static Fact text(String name, String value, String words, String... sources) {
        return new Fact(name, OptionalDouble.empty(), Optional.of(value), Optional.empty(), words, List.of(sources));
    }

    /** A fact that is {@code yes} or {@code no}. */
    public static Fact yes(String name, boolean value, String words, String... sources) {
        return text(name, value ? "yes" : "no", words, sources);
    }

    public static Fact day(String name, LocalDate value, String words, String... sources) {
        return new Fact(name, OptionalDouble.empty(), Optional.empty(), Optional.of(value), words, List.of(sources));
    }

    /** Not known; {@code words} say what to note or measure. */
    public static Fact unknown(String name, String words) {
        return new Fact(name, OptionalDouble.empty(), Optional.empty(), Optional.empty(), words, List.of());
    }

    public boolean known() {
        return number.isPresent() || text.isPresent() || day.isPresent();
    }
}
