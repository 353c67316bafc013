package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URI;
import java.util.Map;
import java.util.Optional;
import org.oldwood.calendar.format.Hygiene;
import org.oldwood.store.RecordException;

/** Carries one request to a server, and its answer back. */
interface Wire {
    /**
     * Waits for the whole answer.
     *
     * @throws IOException where the connection broke off: the server may have heard the request or not
     * @throws RecordException where asking again would not help
     */
    Reply send(Request request) throws IOException;

    /** What is asked of a server; an empty body is none. */
    record Request(String method, URI to, Map<String, String> headers, String body) {}

    /** What it answered. Headers are named in small letters. */
    // nobody compares replies, and octets are what a server sends
    @SuppressWarnings("ArrayRecordComponent")
    record Reply(int status, URI from, Map<String, String> headers, byte[] body) {
        boolean isGood() { return status >= 200 && status < 300; }

        Optional<String> header(String name) { return Optional.ofNullable(headers.get(name)); }

        String text() { return new String(body, UTF_8); }

        String start() {
            String text = text();
            return Hygiene.line(text.substring(0, Math.min(text.length(), 200)));
        }
    }
}
