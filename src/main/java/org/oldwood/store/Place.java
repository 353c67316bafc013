package org.oldwood.store;

/**
 * A place in a file that a person can go to.
 *
 * @param file the file's name as the user knows it
 * @param line the line, from 1; 0 when the whole file is meant
 * @param column the column, from 1; 0 when the whole line is meant
 * @param path the key inside the file, {@code beds[2].areaM2} for example; may be empty
 */
public record Place(String file, int line, int column, String path) {

    /** The whole file. */
    public static Place of(String file) {
        return new Place(file, 0, 0, "");
    }

    /** A line of a file. */
    public static Place of(String file, int line) {
        return new Place(file, line, 0, "");
    }

    /** The same place, one key further in. */
    public Place at(String key) {
        return new Place(file, line, column, path.isEmpty() ? key : path + "." + key);
    }

    /** As it stands before a message: {@code garden.json:14:22}. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
