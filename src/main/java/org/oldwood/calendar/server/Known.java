package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oldwood.store.JsonText;
import org.oldwood.store.Output;
import org.oldwood.store.Text;

/**
 * Which entries stood on which server, and which of them the person deleted there: one record a line in {@value #FILE},
 * in the garden's folder. Without it nothing is lost but that deleted entries are published once more.
 */
final class Known {
    static final String FILE = "calendar-servers.jsonl";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Path file;
    private final Map<String, Line> lines = new TreeMap<>();
    private final Set<String> used = new TreeSet<>();

    /** That of the collection that is meant. */
    private Line here = new Line("", Set.of(), Set.of());

    /** One collection: the UIDs there, and those that the person deleted. */
    record Line(String collection, Set<String> there, Set<String> deleted) {}

    Known(Path folder) throws IOException {
        file = folder.resolve(FILE);
        lines.putAll(read());
    }

    /** A line that cannot be read is as none. */
    private Map<String, Line> read() throws IOException {
        Map<String, Line> read = new TreeMap<>();
        if (Text.isThere(file)) {
            for (String text : new String(Text.octets(file), UTF_8).lines().toList()) {
                try {
                    Line line = MAPPER.readValue(text, Line.class);
                    read.put(line.collection,
                            new Line(line.collection, new TreeSet<>(line.there), new TreeSet<>(line.deleted)));
                } catch (JsonProcessingException | RuntimeException e) {
                    // a line that cannot be read tells nothing; the next may
                }
            }
        }
        return read;
    }

    /** From now on this collection is meant. */
    void at(URI address) {
        here = lines.computeIfAbsent(address.toString(), name -> new Line(name, new TreeSet<>(), new TreeSet<>()));
        used.add(here.collection);
    }

    void isThere(String uid) {
        here.there.add(uid);
        here.deleted.remove(uid);
    }

    /** The plan has no use for it any more; that the person deleted it before is not forgotten. */
    void isGone(String uid) {
        here.there.remove(uid);
    }

    boolean wasThere(String uid) { return here.there.contains(uid) || here.deleted.contains(uid); }

    /** Remembers that the person deleted it; returns whether that is news. */
    boolean deleted(String uid) {
        here.there.remove(uid);
        return here.deleted.add(uid);
    }

    /** Another run may have written to another collection meanwhile: its line stays. */
    void keep() throws IOException {
        lines.keySet().retainAll(used);
        Map<String, Line> all = read();
        all.putAll(lines);
        Output.write(file, all.values().stream().map(line -> JsonText.line(line) + "\n").collect(Collectors.joining()));
    }
}
