package org.oldwood.store;

import java.util.Map;
import org.oldwood.words.Texts;

/**
 * Something wrong with a record, worded for the person who keeps it.
 *
 * @param name the stable name of this kind of problem, {@code unknown-key} for example
 * @param place where it is
 * @param message what is wrong, with the value seen, and what would be right
 * @param remedy what to do or write instead; may be empty
 */
public record Problem(String name, Place place, String message, String remedy) {
    private static final String LINE = "\u0000";

    private static final class Told {
        static final Map<String, String> WORDS = Texts.sections("problems.txt");
    }

    /**
     * A problem in the words of {@code words/problems.txt}.
     *
     * @param words its name there; where one kind of problem is worded in several ways, a blank and which of them
     * @param said what is put in, in the order of the text
     */
    public static Problem of(String words, Place place, Object... said) {
        String template = Told.WORDS.get(words);
        if (template == null) { throw new IllegalArgumentException("words/problems.txt has no " + words); }
        String[] lines = template.replace("\n", LINE).formatted(said).split(LINE, -1);
        return new Problem(words.split(" ", 2)[0], place, lines[0], lines.length > 1 ? lines[1] : "");
    }

    /** The message on one or two lines: place, what is wrong, and what to do. */
    public String inWords() {
        String key = place.path().isEmpty() ? "" : place.path() + " ";
        String first = place + ": " + key + message;
        return remedy.isEmpty() ? first : first + "\n  " + remedy;
    }
}
