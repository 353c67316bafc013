package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.oldwood.calendar.Content;
import org.oldwood.calendar.IcsWriter;
import org.oldwood.calendar.ItemLines;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.Memory;
import org.oldwood.calendar.Ours;
import org.oldwood.calendar.Outgoing;
import org.oldwood.calendar.format.ContentLines;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;
import org.oldwood.calendar.format.RawReader;
import org.oldwood.garden.Zone;
import org.oldwood.store.Problems;

/** An item as an object of its own, as a server stores it (RFC 4791, 4.1). */
final class ItemObject {
    private ItemObject() {}

    static Ours ours(Memory memory, Outgoing task, String component, Layout layout, Zone zone) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Content content = memory.content(task);
        ItemLines lines = new ItemLines(layout);
        lines.make(content, task.stamp());
        IcsWriter writer = new IcsWriter(out, lines, memory.uids(), zone);
        writer.begin();
        if (component.equals("VEVENT")) {
            writer.event();
        } else {
            writer.todo();
        }
        writer.end();
        RawComponent object = RawReader.read(new ByteArrayInputStream(out.toByteArray()), "ours", new Problems());
        RawComponent item = object.items().get(0);
        String hash = Long.toHexString(task.hash);
        item.properties().add(RawProperty.of(Merge.CONTENT + ":" + hash));
        return new Ours(item, content.item().words().title());
    }

    static RawComponent alone(RawComponent item) {
        RawComponent calendar = RawComponent.named("VCALENDAR");
        calendar.properties().add(RawProperty.of("VERSION:2.0"));
        calendar.properties().add(RawProperty.of("PRODID:" + IcsWriter.PRODUCT));
        calendar.parts().add(item);
        RawComponent object = RawComponent.named("");
        object.parts().add(calendar);
        return object;
    }

    static String text(RawComponent object) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ContentLines lines = new ContentLines(out);
        for (RawComponent calendar : object.parts()) {
            calendar.write(lines);
        }
        lines.flush();
        return out.toString(UTF_8);
    }
}
