package org.oldwood.calendar;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes the memory of a garden's calendars line by line, as {@link CalendarState} reads it. */
final class StateWriter {
    private static final JsonFactory FACTORY =
            new JsonFactoryBuilder().rootValueSeparator("\n").build();

    private final JsonGenerator out;
    private final Map<String, String> adopted;
    private @Nullable Stamp stamp;
    private String changed = "";

    /** @param adopted UIDs taken over from an older file, by {@link Uids#name} */
    StateWriter(OutputStream out, Map<String, String> adopted) throws IOException {
        this.out = FACTORY.createGenerator(out);
        this.adopted = adopted;
        this.out.writeStartObject();
        this.out.writeNumberField("calendarState", 1);
        this.out.writeEndObject();
    }

    /** What is known of a task already. */
    void line(Remembered task) throws IOException {
        line(task.item(), task.stamp(), task.hash(), task.shown());
    }

    /** A task as it was written. */
    void line(Item item, Stamp itsStamp, long hash, String shown) throws IOException {
        out.writeStartObject();
        out.writeStringField("task", item.identity());
        out.writeNumberField("sequence", itsStamp.sequence());
        out.writeStringField("changed", changed(itsStamp));
        out.writeStringField("hash", Long.toHexString(hash));
        out.writeStringField("shown", shown);
        out.writeStringField("title", item.words().title());
        optional("category", item.words().category());
        optional("place", item.words().place());
        optional("bed", item.bed());
        out.writeStringField("first", item.days().first().toString());
        out.writeStringField("last", item.days().last().toString());
        out.writeStringField("best", item.days().best().toString());
        out.writeStringField("state", item.progress().state().name());
        if (item.progress().day().isPresent()) {
            out.writeStringField("day", item.progress().day().get().toString());
        }
        if (item.progress().percent() > 0) {
            out.writeNumberField("percent", item.progress().percent());
        }
        if (!adopted.isEmpty()) {
            optional("eventUid", adopted.getOrDefault(Uids.name(item.identity(), Uids.EVENT), ""));
            optional("todoUid", adopted.getOrDefault(Uids.name(item.identity(), Uids.TODO), ""));
        }
        out.writeEndObject();
    }

    /** Ends the last line. What is beneath stays open. */
    void end() throws IOException {
        out.writeRaw('\n');
        out.flush();
    }

    private String changed(Stamp itsStamp) {
        if (!itsStamp.equals(stamp)) {
            stamp = itsStamp;
            changed = Stamp.text(itsStamp.changed());
        }
        return changed;
    }

    private void optional(String key, String value) throws IOException {
        if (!value.isEmpty()) {
            out.writeStringField(key, value);
        }
    }
}
