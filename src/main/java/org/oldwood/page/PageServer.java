package org.oldwood.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.oldwood.sheet.SheetPage;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.JsonText;
import org.oldwood.store.Problems;
import org.oldwood.words.Texts;

/**
 * Serves the garden's page on one address of one machine, by the JDK's own HTTP server. The page itself holds nothing
 * of the garden; all that does is given out only with the token. One request at a time asks the desk, so that notes of
 * two phones follow each other; the journal's own lock holds against other processes.
 */
public final class PageServer implements AutoCloseable {
    /** The most octets that a phone may send at once. */
    private static final int MOST_OCTETS = 64 * 1024;

    /** Of what is too much, so much is read all the same: a socket closed on unread octets loses the answer. */
    private static final int MOST_READ = 1 << 20;

    private static final int MOST_ROWS = 200;
    private static final int THREADS = 4;
    private static final String JSON = "application/json";
    private static final String HTML = "text/html; charset=utf-8";
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
            + " img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final String SHEET_POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none';"
            + " frame-ancestors 'none'";

    /** What was sent asks for nothing that can be done. */
    private static final Asking<Desk.Reply> NOTHING = () -> new Desk.Reply(false, List.of());

    private final HttpServer server;
    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    private final Guard guard;
    private final Desk desk;
    private final String token;
    private final AtomicReference<String> ticket = new AtomicReference<>("");

    private PageServer(HttpServer server, String token, Desk desk, Set<String> hosts) {
        this.server = server;
        this.token = token;
        this.desk = desk;
        this.guard = new Guard(hosts, token);
    }

    /**
     * Opens the page.
     *
     * @param port the port; 0 for any that is free
     * @throws IOException where the address is not this machine's, or the port is taken
     */
    public static PageServer open(InetAddress address, int port, Desk desk) throws IOException {
        // a request that is not there within seconds is given up; without these a silent visitor holds a thread for
        // ever
        System.setProperty("sun.net.httpserver.maxReqTime", "10");
        // each answer at once, not held back for more to go with it: that takes a phone 40 ms a request
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxRspTime", "30");
        HttpServer server = HttpServer.create(new InetSocketAddress(address, port), 0);
        String token = key();
        String suffix = ":" + server.getAddress().getPort();
        String host = address.getHostAddress();
        Set<String> hosts = address.isLoopbackAddress() ? Set.of(host + suffix, "localhost" + suffix)
                : Set.of(host + suffix);
        PageServer page = new PageServer(server, token, desk, hosts);
        page.routes();
        server.setExecutor(page.threads);
        server.start();
        return page;
    }

    /** 128 random bits. */
    private static String key() {
        byte[] bits = new byte[16];
        new SecureRandom().nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }

    /** The page's address with the token in its fragment, which no browser sends over the network. */
    public String link() {
        return address() + "#t=" + token;
    }

    /** The page's address alone. */
    public String address() {
        InetSocketAddress at = server.getAddress();
        return "http://" + at.getAddress().getHostAddress() + ":" + at.getPort() + "/";
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }

    private void routes() {
        on("/", "GET", false, exchange -> send(exchange, 200, HTML, SheetPage.render("walk.jte", Map.of())));
        on("/page.js", "GET", false, exchange -> send(exchange, 200, "text/javascript; charset=utf-8",
                Texts.resource(PageServer.class, "page.js")));
        on("/page.css", "GET", false, exchange -> send(exchange, 200, "text/css; charset=utf-8",
                Texts.resource(PageServer.class, "page.css")));
        on("/garden", "GET", true, this::garden);
        on("/notes", "POST", true, this::notes);
        on("/back", "POST", true, this::back);
        on("/sheet", "POST", true, this::ticket);
        on("/sheet/", "GET", false, this::sheet);
    }

    private void on(String path, String method, boolean needsToken, HttpHandler answering) {
        server.createContext(path, exchange -> {
            try (exchange) {
                Optional<Integer> refusal = guard.refusal(exchange, needsToken);
                boolean whole = path.endsWith("/") && path.length() > 1;
                if (refusal.isPresent()) {
                    send(exchange, refusal.get(), JSON,
                            said("Not allowed. Open the page by the link that the program printed."));
                } else if (!whole && !exchange.getRequestURI().getPath().equals(path)) {
                    send(exchange, 404, JSON, said("There is nothing here."));
                } else if (!exchange.getRequestMethod().equals(method)) {
                    send(exchange, 405, JSON, said("Only " + method + " is answered here."));
                } else {
                    answering.handle(exchange);
                }
            } catch (RuntimeException e) {
                // told to the phone in plain words; the record is as it was, since nothing is written but whole
                send(exchange, 500, JSON, said("The program could not answer: " + e.getMessage()));
            }
        });
    }

    private interface Asking<T> {
        T ask() throws IOException;
    }

    private synchronized <T> T asked(Asking<T> asking) throws IOException { return asking.ask(); }

    /** The garden, unless the phone has it as it is. */
    private void garden(HttpExchange exchange) throws IOException {
        String stamp = '"' + asked(desk::stamp) + '"';
        if (stamp.equals(exchange.getRequestHeaders().getFirst("If-None-Match"))) {
            exchange.sendResponseHeaders(304, -1);
            return;
        }
        exchange.getResponseHeaders().set("ETag", stamp);
        send(exchange, 200, JSON, JsonText.line(asked(desk::view)));
    }

    private void notes(HttpExchange exchange) throws IOException {
        reply(exchange, "A note has a key and from 1 to %s rows of texts.".formatted(MOST_ROWS), body -> {
            String key = body.text("key");
            List<Map<String, String>> rows = new ArrayList<>();
            for (Fields row : body.objects("rows")) {
                Map<String, String> values = new LinkedHashMap<>();
                row.keys().forEach(name -> values.put(name, row.text(name)));
                rows.add(values);
            }
            return rows.isEmpty() || rows.size() > MOST_ROWS ? NOTHING : () -> desk.note(key, rows);
        });
    }

    private void back(HttpExchange exchange) throws IOException {
        reply(exchange, "To take an entry back, say its id, and whether all noted at once with it.", body -> {
            String entry = body.text("entry");
            boolean whole = body.flag("whole", false);
            return () -> desk.takeBack(entry, whole);
        });
    }

    /** Reads what the phone sent and does what it asks for; says what it should be where it cannot be read. */
    private void reply(HttpExchange exchange, String rule, Function<Fields, Asking<Desk.Reply>> asking)
            throws IOException {
        byte[] octets;
        try (InputStream in = exchange.getRequestBody()) {
            octets = in.readNBytes(MOST_READ);
        }
        if (octets.length > MOST_OCTETS) {
            send(exchange, 413, JSON, said("That is more than a page may send at once."));
            return;
        }
        Problems problems = new Problems();
        Asking<Desk.Reply> wanted = JsonReader.read(new ByteArrayInputStream(octets), "what the phone sent", problems)
                .filter(Json.Obj.class::isInstance).map(json -> asking.apply(Fields.of(json, problems)))
                .orElse(NOTHING);
        if (wanted == NOTHING || !problems.isEmpty()) {
            send(exchange, 400, JSON, said(rule));
            return;
        }
        Desk.Reply reply = asked(wanted);
        send(exchange, reply.accepted() ? 200 : 422, JSON, JsonText.line(reply));
    }

    /** A sheet is opened by navigation, which carries no header: a ticket in the path is good for one look. */
    private void ticket(HttpExchange exchange) throws IOException {
        ticket.set(key());
        send(exchange, 200, JSON, JsonText.line(Map.of("at", "/sheet/" + ticket.get())));
    }

    private void sheet(HttpExchange exchange) throws IOException {
        String shown = exchange.getRequestURI().getPath().substring("/sheet/".length());
        if (shown.isEmpty() || !shown.equals(ticket.getAndUpdate(one -> one.equals(shown) ? "" : one))) {
            send(exchange, 404, JSON, said("Open the sheet anew from the page."));
            return;
        }
        exchange.getResponseHeaders().set("Content-Security-Policy", SHEET_POLICY);
        send(exchange, 200, HTML, asked(desk::sheet));
    }

    private static String said(String words) { return JsonText.line(new Desk.Reply(false, List.of(words))); }

    private static void send(HttpExchange exchange, int status, String type, String text) throws IOException {
        byte[] octets = text.getBytes(StandardCharsets.UTF_8);
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", type);
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.putIfAbsent("Content-Security-Policy", List.of(POLICY));
        exchange.sendResponseHeaders(status, octets.length);
        exchange.getResponseBody().write(octets);
    }
}
