package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.oldwood.calendar.format.RawComponent;
import org.oldwood.calendar.format.RawReader;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/**
 * A calendar collection on a server (RFC 4791, 4.2): one object for each UID. Never writes over something that it has
 * not read: creates with If-None-Match, changes and deletes with If-Match (5.3.2).
 */
final class Collection {
    /** So that no request or answer grows with the garden. */
    private static final int AT_ONCE = 50;

    private static final String XML = "application/xml; charset=utf-8";

    private final Http http;
    private final URI address;
    private final Dav.Resource described;

    /** An object as it stands on the server. */
    record Stored(URI address, String etag, RawComponent object) {}

    private Collection(Http http, URI address, Dav.Resource described) {
        this.http = http;
        this.address = address;
        this.described = described;
    }

    /** Asks the server what is at the address; it must be a calendar collection. */
    static Collection at(URI address, Http http) {
        URI folder = address.getPath().endsWith("/") ? address : URI.create(address + "/");
        Wire.Reply reply = http.send("PROPFIND", folder, Dav.DESCRIBE, "Depth", "0", "Content-Type", XML);
        List<Dav.Resource> found = resources(reply);
        if (found.isEmpty() || !found.get(0).isCalendar) { throw Http.problem(address, "no-calendar"); }
        return new Collection(http, reply.from(), found.get(0));
    }

    boolean takes(String component) { return described.takes(component); }

    /**
     * Those of the objects named that are there, by UID. An object that a client made, as by an import, has a name of
     * its own, so the rest is searched too where some were not found.
     */
    Map<String, Stored> read(List<String> uids) {
        Wire.Reply reply = http.send("PROPFIND", address, Dav.LIST, "Depth", "1", "Content-Type", XML);
        Map<String, String> names = new LinkedHashMap<>();
        resources(reply).forEach(there -> names.put(there.href.substring(there.href.lastIndexOf('/') + 1), there.href));
        Set<String> wanted = Set.copyOf(uids);
        Map<String, Stored> stored = new HashMap<>();
        List<String> hrefs = uids.stream().flatMap(uid -> Stream.ofNullable(names.remove(objectName(uid)))).toList();
        fetch(hrefs, wanted, stored);
        if (hrefs.size() < wanted.size()) {
            List<String> others = names.values().stream().filter(href -> !href.endsWith("/")).toList();
            fetch(others, wanted, stored);
        }
        return stored;
    }

    private void fetch(List<String> hrefs, Set<String> wanted, Map<String, Stored> stored) {
        for (int from = 0; from < hrefs.size(); from += AT_ONCE) {
            List<String> some = hrefs.subList(from, Math.min(hrefs.size(), from + AT_ONCE));
            Wire.Reply reply = http.send("REPORT", address, Dav.multiget(some), "Depth", "1", "Content-Type", XML);
            resources(reply).stream().flatMap(there -> stored(there).stream())
                    .forEach(one -> one.object().items().stream().map(RawComponent::uid).filter(wanted::contains)
                            .forEach(uid -> stored.putIfAbsent(uid, one)));
        }
    }

    /** Every item of one kind, whatever its name. */
    Optional<Stored> find(String component, String uid) {
        Wire.Reply reply = http.send("REPORT", address, Dav.find(component, uid), "Depth", "1", "Content-Type", XML);
        return resources(reply).stream().map(this::stored).flatMap(Optional::stream)
                .filter(one -> Merge.itemOf(one.object(), uid).isPresent()).findFirst();
    }

    /** Reads one object anew. */
    Optional<Stored> again(URI object) {
        Wire.Reply reply = http.send("GET", object, "");
        return reply.isGood()
                ? Optional.of(new Stored(object, reply.header("etag").orElse(""), parsed(object, reply.text())))
                : Optional.empty();
    }

    Wire.Reply create(String uid, String text) {
        return put(address.resolve(objectName(uid)), text, "If-None-Match", "*");
    }

    /** What an object is called. A UID adopted from a file may hold anything, but it must not lead to another place. */
    private static String objectName(String uid) {
        boolean isPlain = uid.chars().allMatch(c -> c == '-' || (c < 0x80 && Character.isLetterOrDigit(c)));
        return (isPlain ? uid : UUID.nameUUIDFromBytes(uid.getBytes(UTF_8)).toString()) + ".ics";
    }

    Wire.Reply change(Stored old, String text) { return put(old.address, text, "If-Match", old.etag); }

    Wire.Reply delete(Stored old) { return http.send("DELETE", old.address, "", "If-Match", old.etag); }

    private Wire.Reply put(URI to, String text, String condition, String value) {
        return http.send("PUT", to, text, "Content-Type", "text/calendar; charset=utf-8", condition, value);
    }

    private Optional<Stored> stored(Dav.Resource there) {
        if (there.data.isBlank()) { return Optional.empty(); }
        URI object = inside(there.href);
        if (there.etag.isEmpty()) { return again(object); }
        return Optional.of(new Stored(object, there.etag, parsed(object, there.data.strip())));
    }

    /** A server must not send us to objects elsewhere. */
    private URI inside(String href) {
        URI object;
        try {
            object = address.resolve(href);
        } catch (IllegalArgumentException e) {
            throw Http.problem(address, "object-without-address");
        }
        if (!address.getAuthority().equals(object.getAuthority())
                || !object.normalize().getPath().startsWith(address.getPath())) {
            throw Http.problem(address, "object-elsewhere", object);
        }
        return object;
    }

    private static RawComponent parsed(URI from, String text) {
        try {
            return RawReader.read(new ByteArrayInputStream(text.getBytes(UTF_8)), from.toString(), new Problems());
        } catch (IOException e) {
            throw new IllegalStateException("bytes in memory cannot fail to be read", e);
        }
    }

    private static List<Dav.Resource> resources(Wire.Reply reply) {
        if (reply.status() != 207) { throw unreadable(reply, "answers HTTP " + reply.status() + ": " + reply.start()); }
        try {
            return Dav.resources(reply.text());
        } catch (XMLStreamException | RuntimeException e) {
            throw unreadable(reply, "answers with XML that cannot be read");
        }
    }

    private static RecordException unreadable(Wire.Reply reply, String message) {
        return Http.problem(reply.from(), "bad-answer", message);
    }
}
