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
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A calendar collection in memory, reached through HTTP. */
public final class LoopbackServer extends DavStore implements AutoCloseable {
    public final List<String> logins = new ArrayList<>();
    /** What becomes of an answer on its way. */
    public UnaryOperator<Reply> onItsWay = reply -> reply;

    private final HttpServer server;

    public LoopbackServer() throws IOException {
        // or each answer waits 40 ms for an acknowledgement
        System.setProperty("sun.net.httpserver.nodelay", "true");
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::handle);
        server.start();
    }

    public URI address() { return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + COLLECTION); }

    private void handle(HttpExchange exchange) throws IOException {
        String body = new String(exchange.getRequestBody().readAllBytes(), UTF_8);
        Optional.ofNullable(exchange.getRequestHeaders().getFirst("Authorization")).ifPresent(logins::add);
        Reply reply = onItsWay.apply(answer(exchange.getRequestMethod(), exchange.getRequestURI().getPath(),
                exchange.getRequestHeaders()::getFirst, body));
        byte[] bytes = reply.body().getBytes(UTF_8);
        if (!reply.etag().isEmpty()) { exchange.getResponseHeaders().add("ETag", reply.etag()); }
        exchange.sendResponseHeaders(reply.status(), bytes.length == 0 ? -1 : bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    @Override
    public void close() { server.stop(0); }
}
