package org.oldwood.store;

/**
 * Something wrong with a record, worded for the person who keeps it.
 *
 * @param name the stable name of this kind of problem, {@code unknown-key} for example
 * @param place where it is
 * @param message what is wrong, with the value seen, and what would be right
 * @param remedy what to do or write instead; may be empty
 */
public record Problem(String name, Place place, String message, String remedy) {

    /** The message on one or two lines: place, what is wrong, and what to do. */
    public String inWords() {
        String key = place.path().isEmpty() ? "" : place.path() + " ";
        String first = place + ": " + key + message;
        return remedy.isEmpty() ? first : first + "\n  " + remedy;
    }
}
