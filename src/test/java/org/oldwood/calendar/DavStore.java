package org.oldwood.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A calendar collection in memory, as RFC 4791 has it: objects with entity tags, conditions on writing, one object for
 * each UID, and the reports that are asked for.
 */
public class DavStore {
    public static final String COLLECTION = "/user/garden/";
    private static final Pattern HREF = Pattern.compile("<D:href>([^<]+)</D:href>");
    private static final Pattern WANTED = Pattern.compile("i;octet\">([^<]+)</C:text-match>");
    private static final Pattern UID = Pattern.compile("(?m)^UID:(\\S+)");

    public final Map<String, String> objects = new TreeMap<>();
    public final List<String> log = new ArrayList<>();
    public String components = "<C:comp name=\"VEVENT\"/><C:comp name=\"VTODO\"/>";
    public Hook beforePut = path -> {
    };
    public boolean hasTags = true;
    private final Map<String, Integer> versions = new TreeMap<>();

    /** Something another client does in between. */
    public interface Hook {
        void on(String path);
    }

    /** What the store answers; an empty tag is none. */
    public record Reply(int status, String etag, String body) {
        Reply(int status) { this(status, "", ""); }
    }

    /** Gives a header of the request, or null. */
    public interface Headers {
        @Nullable
        String named(String name);
    }

    public void put(String path, String text) {
        objects.put(path, text);
        versions.merge(path, 1, Integer::sum);
    }

    /** Answers one request. */
    public Reply answer(String method, String path, Headers headers, String body) {
        log.add(method + " " + path);
        return switch (method) {
            case "PROPFIND" -> new Reply(207, "", body.contains("getetag") ? list() : describe());
            case "REPORT" -> new Reply(207, "", report(body));
            case "GET" -> objects.containsKey(path) ? new Reply(200, etag(path), objects.get(path)) : new Reply(404);
            case "PUT" -> put(headers, path, body);
            case "DELETE" -> delete(headers, path);
            default -> new Reply(405);
        };
    }

    private String describe() {
        return multistatus("<D:response><D:href>" + COLLECTION
                + "</D:href><D:propstat><D:prop><D:resourcetype><D:collection/><C:calendar/>"
                + "</D:resourcetype><C:supported-calendar-component-set>" + components
                + "</C:supported-calendar-component-set></D:prop></D:propstat></D:response>");
    }

    private String list() {
        StringBuilder all = new StringBuilder();
        objects.keySet().forEach(path -> all.append(response(path, false)));
        return multistatus(all.toString());
    }

    private String report(String body) {
        StringBuilder all = new StringBuilder();
        Matcher href = HREF.matcher(body);
        while (href.find()) {
            if (objects.containsKey(href.group(1))) { all.append(response(href.group(1), true)); }
        }
        Matcher wanted = WANTED.matcher(body);
        if (wanted.find()) {
            objects.forEach((path, text) -> {
                if (text.contains("UID:" + wanted.group(1))) { all.append(response(path, true)); }
            });
        }
        return multistatus(all.toString());
    }

    private String response(String path, boolean hasData) {
        String data = hasData
                ? "<C:calendar-data>" + objects.get(path).replace("&", "&amp;").replace("<", "&lt;")
                        + "</C:calendar-data>"
                : "";
        return "<D:response><D:href>" + path + "</D:href><D:propstat><D:prop><D:getetag>" + etag(path) + "</D:getetag>"
                + data + "</D:prop></D:propstat></D:response>";
    }

    private static String multistatus(String responses) {
        return "<?xml version=\"1.0\"?><D:multistatus xmlns:D=\"DAV:\" xmlns:C=\"urn:ietf:params:xml:ns:caldav\">"
                + responses + "</D:multistatus>";
    }

    private String etag(String path) { return hasTags ? "\"" + versions.get(path) + "\"" : ""; }

    private Reply put(Headers headers, String path, String body) {
        beforePut.on(path);
        boolean isThere = objects.containsKey(path);
        String none = headers.named("If-None-Match");
        String match = headers.named("If-Match");
        if ((none != null && isThere) || (match != null && !(isThere && match.equals(etag(path))))) {
            return new Reply(412);
        }
        if (hasUidElsewhere(path, body)) { return new Reply(409, "", "<C:no-uid-conflict/>"); }
        put(path, body);
        return new Reply(isThere ? 204 : 201);
    }

    private boolean hasUidElsewhere(String path, String body) {
        Matcher uid = UID.matcher(body);
        return uid.find() && objects.entrySet().stream()
                .anyMatch(other -> !other.getKey().equals(path) && other.getValue().contains("UID:" + uid.group(1)));
    }

    private Reply delete(Headers headers, String path) {
        String match = headers.named("If-Match");
        if (match == null || !match.equals(etag(path))) { return new Reply(412); }
        objects.remove(path);
        return new Reply(204);
    }
}
