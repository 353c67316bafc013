package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Outgoing;
import org.oldwood.calendar.format.ContentLines;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawProperty;

/** An item as an object of its own, as a server stores it (RFC 4791, 4.1). */
final class ItemObject {
    private ItemObject() {}

    static Ours ours(RawComponent item, Outgoing out, boolean isNeeded) {
        item.properties().add(RawProperty.of("%s:%s".formatted(Merge.CONTENT, out.hash())));
        return new Ours(item, out.title(), isNeeded);
    }

    static RawComponent alone(RawComponent item) {
        RawComponent calendar = RawComponent.named("VCALENDAR");
        calendar.properties().add(RawProperty.of("VERSION:2.0"));
        calendar.properties().add(RawProperty.of("PRODID:" + Export.PRODUCT));
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
