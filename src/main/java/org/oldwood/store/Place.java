package org.oldwood.store;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A place in a file that a person can go to. Its path is put together when it is asked for, since a reader makes a
 * place for every value and few are ever shown. A large journal holds millions, so a place on the line of what it
 * stands in does not keep that line's number again.
 */
public sealed class Place {
    /** What it stands in: a place, or the file's name. */
    private final Object in;

    /** Where in there: a key, or a number in a list. */
    private final Object step;

    private final int column;

    private Place(Object in, Object step, int column) {
        this.in = in;
        this.step = step;
        this.column = column;
    }

    /** A place on a line of its own. */
    private static final class OnLine extends Place {
        private final int line;

        OnLine(Object in, Object step, int line, int column) {
            super(in, step, column);
            this.line = line;
        }

        @Override
        public int line() { return line; }
    }

    /**
     * A place.
     *
     * @param file the file's name as the user knows it
     * @param line the line, from 1; 0 when the whole file is meant
     * @param column the column, from 1; 0 when the whole line is meant
     * @param path the key inside the file, {@code beds[2].areaM2} for example; may be empty
     */
    public static Place of(String file, int line, int column, String path) {
        return new OnLine(file, path, line, column);
    }

    public static Place of(String file) { return of(file, 0, 0, ""); }

    public static Place of(String file, int line) { return of(file, line, 0, ""); }

    /** The file's name as the user knows it. */
    public String file() {
        return in instanceof Place outer ? outer.file() : (String) in;
    }

    /** The line, from 1; 0 when the whole file is meant. */
    public int line() { return ((Place) in).line(); }

    /** The column, from 1; 0 when the whole line is meant. */
    public int column() { return column; }

    /** The key inside the file, {@code beds[2].areaM2} for example; may be empty. */
    public String path() {
        if (!(in instanceof Place outer)) { return (String) step; }
        String before = outer.path();
        if (step instanceof Integer) { return before + "[" + step + "]"; }
        return before.isEmpty() ? (String) step : before + "." + step;
    }

    /** The same place, one key further in. */
    public Place at(String key) { return new Place(this, key, column); }

    /** A value under a key of an object that stands here, or of that number, from 0, in a list that does. */
    Place of(Object step, int line, int column) {
        return line == line() ? new Place(this, step, column) : new OnLine(this, step, line, column);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Place place && line() == place.line() && column == place.column
                && file().equals(place.file()) && path().equals(place.path());
    }

    @Override
    public int hashCode() { return Objects.hash(file(), line(), column, path()); }

    /** As it stands before a message: {@code garden.json:14:22}. */
    @Override
    public String toString() {
        if (line() == 0) { return file(); }
        String onLine = file() + ":" + line();
        return column == 0 ? onLine : onLine + ":" + column;
    }
}
