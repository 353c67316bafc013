package org.oldwood.store;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The members of a small JSON object, in the order of the file, in one array: a journal of a large garden holds half a
 * million of them, and a hash table for each takes three times the memory. Unchangeable.
 */
public class Members extends AbstractMap<String, Json> {
    /** Beyond this, looking through all keys takes longer than a table. */
    private static final int MOST = 8;

    /** Beyond this, no bit of an int is left to say of each key that it was asked for. */
    private static final int MOST_BITS = 31;

    private final @Nullable Object[] keysAndValues;

    Members(Object[] keysAndValues) {
        this.keysAndValues = keysAndValues;
    }

    /** The same members, kept small where they are few. */
    public static Map<String, Json> of(Map<String, Json> members) {
        if (members.size() > MOST) {
            return members;
        }
        Object[] all = new Object[2 * members.size()];
        int at = 0;
        for (Map.Entry<String, Json> member : members.entrySet()) {
            all[at++] = member.getKey();
            all[at++] = member.getValue();
        }
        return new Members(all);
    }

    /** Gathers members one by one, each key once; may be used again after {@link #take()}. */
    public static final class Gathering {
        private Object[] parts = new Object[2 * MOST];
        private int used;

        public void put(String key, Json value) {
            if (used == parts.length) {
                parts = Arrays.copyOf(parts, 2 * used);
            }
            parts[used++] = key;
            parts[used++] = value;
        }

        /** False, and nothing is put, where the key is there already. */
        boolean putNew(String key, Json value) {
            if (indexOf(parts, used, key) >= 0) {
                return false;
            }
            put(key, value);
            return true;
        }

        void clear() {
            used = 0;
        }

        /** What was gathered since the last time, in that order. */
        public Map<String, Json> take() {
            Members members = new Members(Arrays.copyOf(parts, used));
            used = 0;
            return members.size() > MOST ? new LinkedHashMap<>(members) : members;
        }
    }

    /** The position of a key, from 0; -1 where it is not there. */
    int position(String key) {
        int at = indexOf(keysAndValues, keysAndValues.length, key);
        return at < 0 ? at : at / 2;
    }

    /** The value at a position. */
    Json value(int position) {
        return Objects.requireNonNull(made(position));
    }

    /** The value at a position, if it was made already. */
    final @Nullable Json made(int position) {
        return (Json) keysAndValues[2 * position + 1];
    }

    final void keep(int position, Json value) {
        keysAndValues[2 * position + 1] = value;
    }

    final String key(int position) {
        return (String) Objects.requireNonNull(keysAndValues[2 * position]);
    }

    /** Whether they are few enough to be marked in the bits of an int, and to be looked through. */
    final boolean isSmall() {
        return keysAndValues.length <= 2 * MOST_BITS;
    }

    /** Most often the key itself is there, or keys differ in length: both are seen at once. */
    private static int indexOf(Object[] keysAndValues, int end, String key) {
        for (int at = 0; at < end; at += 2) {
            if (keysAndValues[at] == key) {
                return at;
            }
        }
        int length = key.length();
        for (int at = 0; at < end; at += 2) {
            String known = (String) keysAndValues[at];
            if (known.length() == length && known.equals(key)) {
                return at;
            }
        }
        return -1;
    }

    @Override
    public @Nullable Json get(@Nullable Object key) {
        int at = key instanceof String text ? position(text) : -1;
        return at < 0 ? null : value(at);
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return key instanceof String text && position(text) >= 0;
    }

    @Override
    public int size() {
        return keysAndValues.length / 2;
    }

    @Override
    public Set<Map.Entry<String, Json>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Map.Entry<String, Json>> iterator() {
                return new InOrder();
            }

            @Override
            public int size() {
                return Members.this.size();
            }
        };
    }

    /** Goes through the members in the order of the file. */
    private final class InOrder implements Iterator<Map.Entry<String, Json>> {
        private int at;

        @Override
        public boolean hasNext() {
            return at < size();
        }

        @Override
        public Map.Entry<String, Json> next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            int position = at++;
            return Map.entry(key(position), value(position));
        }
    }
}
