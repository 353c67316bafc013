package org.oldwood.calendar;

import java.time.LocalDate;
import org.oldwood.calendar.format.DayOctets;
import org.oldwood.calendar.format.Fnv;

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

    private static final char END = '\u001F';

    static Remembered of(Item item, Stamp stamp, Layout layout) {
        Item.Words words = item.words();
        Item.Words kept = new Item.Words(words.title(), "", words.category(), words.place());
        Item bare = new Item(item.identity(), kept, item.bed(), item.days(), item.progress());
        long hash = hash(Content.of(item), layout);
        return new Remembered(bare, stamp, Shown.of(item.days(), layout), hash);
    }

    /** Tells contents apart; nobody is kept out by it, so it need not be a secure hash. */
    static long hash(Content content, Layout layout) {
        Item item = content.item();
        Item.Progress progress = item.progress();
        long hash = Fnv.end(content.title().addTo(Fnv.START));
        hash = content.text().addTo(hash);
        hash = Fnv.add(hash, item.words().category());
        hash = Fnv.add(hash, item.words().place());
        hash = days(hash, item.days(), layout);
        hash = Fnv.add(hash, progress.state().name());
        hash = Fnv.add(hash, progress.day().map(LocalDate::toString).orElse(""));
        if (progress.percent() > 0) {
            hash = Fnv.add(hash, Integer.toString(progress.percent()));
        }
        hash = Fnv.add(hash, layout.alarms().name());
        return hash == UNKNOWN ? 1 : hash;
    }

    private static long days(long hash, Item.Days days, Layout layout) {
        byte[] octets = new byte[Shown.MOST + DayOctets.MOST + 2];
        int next = Shown.put(octets, 0, days, layout);
        octets[next] = END;
        next = DayOctets.iso(octets, next + 1, days.best());
        octets[next] = END;
        return Fnv.octets(hash, octets, 0, next + 1);
    }
}
