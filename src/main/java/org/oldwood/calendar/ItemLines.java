package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.oldwood.calendar.format.Colours;
import org.oldwood.calendar.format.ContentLines;
import org.oldwood.calendar.format.DayOctets;
import org.oldwood.calendar.format.Folding;
import org.oldwood.calendar.format.Passage;
import org.oldwood.calendar.format.Text;

/**
 * The content lines that an item's event and its to-do have in common, made once for both: folded and with their ends,
 * ready to be copied. A line does not depend on those before it.
 */
public final class ItemLines {
    private static final byte[] SUMMARY = "SUMMARY:".getBytes(US_ASCII);
    private static final byte[] DESCRIPTION = "DESCRIPTION:".getBytes(US_ASCII);
    private static final byte[] LINE_FEED = "\\n".getBytes(US_ASCII);

    /** More than a property's name, what we put before a title, and the window in words. */
    private static final int ROOM = 64 + WindowWords.MOST;

    private final Layout layout;
    private final Map<Where, byte[]> places = new HashMap<>();
    private byte[] line = new byte[4096];
    private byte[] made = new byte[4096];
    private int titleEnd;
    private int wordsEnd;
    private int alarmEnd;
    private int doneEnd;
    private byte[] stampLines = new byte[0];
    private @Nullable Stamp stamp;
    private @Nullable Item item;

    private record Where(String category, String place) {}

    public ItemLines(Layout layout) {
        this.layout = layout;
    }

    Layout layout() {
        return layout;
    }

    /** Makes the lines of an item; those of the one before are gone. */
    public void make(Content content, Stamp itsStamp) throws IOException {
        Item now = content.item();
        item = now;
        if (!itsStamp.equals(stamp)) {
            stampLines = lines(itsStamp);
            stamp = itsStamp;
        }
        Item.State state = now.progress().state();
        byte[] title = content.title().escaped();
        titleEnd = titled(SUMMARY, Title.beforeTodo(state), title, 0);
        byte[] where = where(now.words());
        int described = described(content.text(), now.days());
        makeRoom(described + where.length);
        wordsEnd = DayOctets.put(made, described, where);
        boolean reminds = state.isDue() && layout.alarms() != Layout.Alarms.NONE;
        alarmEnd = reminds ? titled(DESCRIPTION, Title.NOTHING, title, wordsEnd) : wordsEnd;
        boolean isDone = state == Item.State.DONE;
        doneEnd = isDone ? titled(SUMMARY, Title.DONE_BEFORE, title, alarmEnd) : alarmEnd;
    }

    Item item() {
        if (item == null) {
            throw new IllegalStateException("no item was made yet");
        }
        return item;
    }

    /** DTSTAMP, LAST-MODIFIED, SEQUENCE. */
    void stampTo(ContentLines to) throws IOException {
        to.add(stampLines);
    }

    /** SUMMARY, DESCRIPTION, CATEGORIES, LOCATION and COLOR of a to-do. */
    void todoWordsTo(ContentLines to) throws IOException {
        to.add(made, 0, wordsEnd);
    }

    /** The same of an event, whose title says what its status cannot. */
    void eventWordsTo(ContentLines to) throws IOException {
        if (doneEnd == alarmEnd) {
            todoWordsTo(to);
        } else {
            to.add(made, alarmEnd, doneEnd);
            to.add(made, titleEnd, wordsEnd);
        }
    }

    /** The DESCRIPTION of a reminder. */
    void alarmTo(ContentLines to) throws IOException {
        to.add(made, wordsEnd, alarmEnd);
    }

    private int titled(byte[] name, byte[] before, byte[] title, int at) {
        makeRoomInLine(title.length);
        int length = DayOctets.put(line, DayOctets.put(line, 0, name), before);
        return folded(DayOctets.put(line, length, title), at);
    }

    /** The window in words, and what the item says. */
    private int described(Text text, Item.Days days) {
        int at = WindowWords.put(line, DayOctets.put(line, 0, DESCRIPTION), days, layout);
        if (!text.isEmpty()) {
            for (Passage passage : text.lines()) {
                byte[] escaped = passage.escaped();
                makeRoomInLine(at + escaped.length);
                at = DayOctets.put(line, DayOctets.put(line, at, LINE_FEED), escaped);
            }
        }
        return folded(at, titleEnd);
    }

    private int folded(int length, int at) {
        makeRoom(at + Folding.most(length));
        return Folding.fold(line, length, made, at);
    }

    /** The craft, the place, and the craft's colour (RFC 7986, 5.9). */
    private byte[] where(Item.Words words) throws IOException {
        Where key = new Where(words.category(), words.place());
        byte[] known = places.get(key);
        if (known == null) {
            ByteArrayOutputStream octets = new ByteArrayOutputStream();
            ContentLines lines = new ContentLines(octets);
            lines.text("CATEGORIES", words.category());
            lines.text("LOCATION", words.place());
            lines.line("COLOR", Colours.of(words.category()));
            lines.flush();
            known = octets.toByteArray();
            places.put(key, known);
        }
        return known;
    }

    private static byte[] lines(Stamp stamp) throws IOException {
        ByteArrayOutputStream octets = new ByteArrayOutputStream();
        ContentLines lines = new ContentLines(octets);
        String changed = Stamp.utc(stamp.changed());
        lines.line("DTSTAMP", changed);
        lines.line("LAST-MODIFIED", changed);
        lines.line("SEQUENCE", Integer.toString(stamp.sequence()));
        lines.flush();
        return octets.toByteArray();
    }

    private void makeRoomInLine(int length) {
        if (length + ROOM > line.length) {
            line = Arrays.copyOf(line, 2 * (length + ROOM));
        }
    }

    private void makeRoom(int length) {
        if (length > made.length) {
            made = Arrays.copyOf(made, 2 * length);
        }
    }
}
