package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A calendar collection in memory, as RFC 4791 has it: objects with entity tags, conditions on writing, one object for
 * each UID, and the reports that are asked for.
 */
public final class LoopbackServer implements AutoCloseable {
    public static final String COLLECTION = "/user/garden/";
    private static final Pattern HREF = Pattern.compile("<D:href>([^<]+)</D:href>");
    private static final Pattern WANTED = Pattern.compile("i;octet\">([^<]+)</C:text-match>");
    private static final Pattern UID = Pattern.compile("(?m)^UID:(\\S+)");

    public final Map<String, String> objects = new TreeMap<>();
    public final List<String> log = new ArrayList<>();
    public String components = "<C:comp name=\"VEVENT\"/><C:comp name=\"VTODO\"/>";
    public Hook beforePut = path -> {};
    private final Map<String, Integer> versions = new TreeMap<>();
    private final HttpServer server;

    /** Something another client does in between. */
    public interface Hook {
        void on(String path);
    }

    public LoopbackServer() throws IOException {
        // or each answer waits 40 ms for an acknowledgement
        System.setProperty("sun.net.httpserver.nodelay", "true");
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::handle);
        server.start();
    }

    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + COLLECTION);
    }

    public void put(String path, String text) {
        objects.put(path, text);
        versions.merge(path, 1, Integer::sum);
    }

    private void handle(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        String body = new String(exchange.getRequestBody().readAllBytes(), UTF_8);
        log.add(exchange.getRequestMethod() + " " + path);
        switch (exchange.getRequestMethod()) {
            case "PROPFIND" -> answer(exchange, 207, body.contains("getetag") ? list() : describe());
            case "REPORT" -> answer(exchange, 207, report(body));
            case "GET" -> get(exchange, path);
            case "PUT" -> put(exchange, path, body);
            case "DELETE" -> delete(exchange, path);
            default -> answer(exchange, 405, "");
        }
    }

    private String describe() {
        return multistatus("<D:response><D:href>"
                + COLLECTION
                + "</D:href><D:propstat><D:prop><D:resourcetype><D:collection/><C:calendar/>"
                + "</D:resourcetype><C:supported-calendar-component-set>"
                + components
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
            all.append(response(href.group(1), true));
        }
        Matcher wanted = WANTED.matcher(body);
        if (wanted.find()) {
            objects.forEach((path, text) -> {
                if (text.contains("UID:" + wanted.group(1))) {
                    all.append(response(path, true));
                }
            });
        }
        return multistatus(all.toString());
    }

    private String response(String path, boolean hasData) {
        String data = hasData
                ? "<C:calendar-data>"
                        + objects.get(path).replace("&", "&amp;").replace("<", "&lt;")
                        + "</C:calendar-data>"
                : "";
        return "<D:response><D:href>"
                + path
                + "</D:href><D:propstat><D:prop><D:getetag>"
                + etag(path)
                + "</D:getetag>"
                + data
                + "</D:prop></D:propstat></D:response>";
    }

    private static String multistatus(String responses) {
        return "<?xml version=\"1.0\"?><D:multistatus xmlns:D=\"DAV:\""
                + " xmlns:C=\"urn:ietf:params:xml:ns:caldav\">"
                + responses
                + "</D:multistatus>";
    }

    private String etag(String path) {
        return "\"" + versions.get(path) + "\"";
    }

    private void get(HttpExchange exchange, String path) throws IOException {
        if (!objects.containsKey(path)) {
            answer(exchange, 404, "");
            return;
        }
        exchange.getResponseHeaders().add("ETag", etag(path));
        answer(exchange, 200, objects.get(path));
    }

    private void put(HttpExchange exchange, String path, String body) throws IOException {
        beforePut.on(path);
        boolean isThere = objects.containsKey(path);
        String none = exchange.getRequestHeaders().getFirst("If-None-Match");
        String match = exchange.getRequestHeaders().getFirst("If-Match");
        if ((none != null && isThere) || (match != null && !(isThere && match.equals(etag(path))))) {
            answer(exchange, 412, "");
        } else if (hasUidElsewhere(path, body)) {
            answer(exchange, 409, "<C:no-uid-conflict/>");
        } else {
            put(path, body);
            answer(exchange, isThere ? 204 : 201, "");
        }
    }

    private boolean hasUidElsewhere(String path, String body) {
        Matcher uid = UID.matcher(body);
        return uid.find()
                && objects.entrySet().stream()
                        .anyMatch(other ->
                                !other.getKey().equals(path) && other.getValue().contains("UID:" + uid.group(1)));
    }

    private void delete(HttpExchange exchange, String path) throws IOException {
        String match = exchange.getRequestHeaders().getFirst("If-Match");
        if (match == null || !match.equals(etag(path))) {
            answer(exchange, 412, "");
            return;
        }
        objects.remove(path);
        answer(exchange, 204, "");
    }

    private static void answer(HttpExchange exchange, int status, String body) throws IOException {
        byte[] bytes = body.getBytes(UTF_8);
        exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
