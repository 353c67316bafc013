package org.oldwood.store;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A place in a file that a person can go to. Its path is put together when it is asked for, since a
 * reader makes a place for every value and few are ever shown.
 */
public final class Place {
    private final String file;
    private final int line;
    private final int column;
    private final @Nullable Place within;
    private final String key;
    private final int index;

    private Place(
            String file, int line, int column, @Nullable Place within, String key, int index) {
        this.file = file;
        this.line = line;
        this.column = column;
        this.within = within;
        this.key = key;
        this.index = index;
    }

    /**
     * A place.
     *
     * @param file the file's name as the user knows it
     * @param line the line, from 1; 0 when the whole file is meant
     * @param column the column, from 1; 0 when the whole line is meant
     * @param path the key inside the file, {@code beds[2].areaM2} for example; may be empty
     */
    public Place(String file, int line, int column, String path) {
        this(file, line, column, null, path, -1);
    }

    /** The whole file. */
    public static Place of(String file) {
        return new Place(file, 0, 0, "");
    }

    /** A line of a file. */
    public static Place of(String file, int line) {
        return new Place(file, line, 0, "");
    }

    /** The file's name as the user knows it. */
    public String file() {
        return file;
    }

    /** The line, from 1; 0 when the whole file is meant. */
    public int line() {
        return line;
    }

    /** The column, from 1; 0 when the whole line is meant. */
    public int column() {
        return column;
    }

    /** The key inside the file, {@code beds[2].areaM2} for example; may be empty. */
    public String path() {
        if (within == null) {
            return key;
        }
        String before = within.path();
        if (index >= 0) {
            return before + "[" + index + "]";
        }
        return before.isEmpty() ? key : before + "." + key;
    }

    /** The same place, one key further in. */
    public Place at(String key) {
        return new Place(file, line, column, this, key, -1);
    }

    /** A value under a key of an object that stands here. */
    Place of(String key, int line, int column) {
        return new Place(file, line, column, this, key, -1);
    }

    /** The value of that number, from 0, in a list that stands here. */
    Place of(int index, int line, int column) {
        return new Place(file, line, column, this, "", index);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Place place
                && line == place.line
                && column == place.column
                && file.equals(place.file)
                && path().equals(place.path());
    }

    @Override
    public int hashCode() {
        return Objects.hash(file, line, column, path());
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
