package org.oldwood.calendar;

import java.time.LocalDate;

/**
 * What was last written for one task.
 *
 * @param item as it was written, without its text
 * @param stamp the revision written
 * @param shown the dates as they stood in event and to-do; when they change, SEQUENCE does
 * @param hash of all content but the stamp
 */
record Remembered(Item item, Stamp stamp, String shown, long hash) {
    /** A hash that no content has been seen with: after adoption the content is not known. */
    static final long UNKNOWN = 0;

    static Remembered of(Item item, Stamp stamp, Layout layout) {
        String shown = shown(item, layout);
        Item.Words words = item.words();
        Item.Words kept = new Item.Words(words.title(), "", words.category(), words.place());
        Item bare = new Item(item.identity(), kept, item.bed(), item.days(), item.progress());
        return new Remembered(bare, stamp, shown, hash(item, shown, layout));
    }

    Remembered with(Stamp other) {
        return new Remembered(item, other, shown, hash);
    }

    private static String shown(Item item, Layout layout) {
        Item.Days days = item.days();
        return layout.eventStart(days)
                + "/"
                + layout.eventEnd(days)
                + " "
                + days.first()
                + "/"
                + layout.due(days);
    }

    /** Tells contents apart; nobody is kept out by it, so it need not be a secure hash. */
    private static long hash(Item item, String shown, Layout layout) {
        Item.Words words = item.words();
        long hash = Fnv.add(Fnv.START, words.title());
        hash = Fnv.add(hash, words.text());
        hash = Fnv.add(hash, words.category());
        hash = Fnv.add(hash, words.place());
        hash = Fnv.add(hash, shown);
        hash = Fnv.add(hash, item.days().best().toString());
        hash = Fnv.add(hash, item.progress().state().name());
        hash = Fnv.add(hash, item.progress().day().map(LocalDate::toString).orElse(""));
        if (item.progress().percent() > 0) {
            hash = Fnv.add(hash, Integer.toString(item.progress().percent()));
        }
        hash = Fnv.add(hash, layout.alarms().name());
        return hash == UNKNOWN ? 1 : hash;
    }

    /** FNV-1a in 64 bits, over characters. */
    private static final class Fnv {
        static final long START = 0xcbf29ce484222325L;
        private static final long PRIME = 0x100000001b3L;

        /** One copy of the characters costs less than a call for each. */
        static long add(long hash, String text) {
            long h = hash;
            char[] characters = text.toCharArray();
            for (char c : characters) {
                h = (h ^ c) * PRIME;
            }
            return (h ^ 0x1F) * PRIME;
        }
    }
}
