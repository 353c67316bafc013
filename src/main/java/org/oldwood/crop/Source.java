package org.oldwood.crop;

/**
 * A publication, or another ground for a figure.
 *
 * @param key short name, unique: {@code fao-56}
 * @param by authors or publisher
 * @param year year, or empty where unknown
 * @param address where it can be found; may be empty
 * @param grade A university, research or government; B society, handbook, press; C other; empty for grounds that are no
 *     publication
 * @param note what it was used for, or what to know about it; may be empty
 */
public record Source(String key, @Key(maybe = true) String by, String title, @Key(maybe = true) String year,
        @Key(maybe = true) String address, @Key(maybe = true, words = {
                "A", "B", "C"}) String grade,
        Seen seen, String note){

    /** One line: who, title, year, address. */
    public String inWords() {
        StringBuilder line = new StringBuilder(by);
        line.append(by.isEmpty() ? "" : ": ").append(title);
        if (!year.isEmpty()) { line.append(", ").append(year); }
        if (!address.isEmpty()) { line.append(", ").append(address); }
        return line.toString();
    }
}
