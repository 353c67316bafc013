package org.oldwood.facts;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something known of a subject, or known to be unknown.
 *
 * @param words for people: what it is with its value, or what to note so that it becomes known
 * @param sources source keys, for values that rest on figures
 */
public record Fact(OptionalDouble number, Optional<String> text, Optional<LocalDate> day, String words,
        List<String> sources) {
    public static Fact number(double value, String words) {
        return new Fact(OptionalDouble.of(value), Optional.empty(), Optional.empty(), words, List.of());
    }

    public static Fact text(String value, String words) {
        return new Fact(OptionalDouble.empty(), Optional.of(value), Optional.empty(), words, List.of());
    }

    /** A fact that is {@code yes} or {@code no}. */
    public static Fact yes(boolean value, String words) {
        return text(value ? "yes" : "no", words);
    }

    public static Fact day(LocalDate value, String words) {
        return new Fact(OptionalDouble.empty(), Optional.empty(), Optional.of(value), words, List.of());
    }

    /** Not known; {@code words} say what to note or measure. */
    public static Fact unknown(String words) {
        return new Fact(OptionalDouble.empty(), Optional.empty(), Optional.empty(), words, List.of());
    }

    /** The same with the sources of the figures that it rests on. */
    public Fact from(Collection<String> keys) {
        return new Fact(number, text, day, words, List.copyOf(keys));
    }

    public boolean known() { return number.isPresent() || text.isPresent() || day.isPresent(); }
}
