package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/**
 * Speaks HTTP to one calendar server: never to another host than the one named, never in the open but to this machine
 * itself or when insisted on.
 */
final class Http {
    private static final int MOST_REDIRECTS = 3;
    private static final int TRIES = 3;

    private final URI base;
    private final Session session;

    Http(URI base, Session session) {
        this.base = checked(base, session.allowsPlain);
        this.session = session;
    }

    private static URI checked(URI address, boolean allowsPlain) {
        String scheme = String.valueOf(address.getScheme());
        if (address.getHost() == null || !(scheme.equals("https") || scheme.equals("http"))) {
            throw problem(address, "no-server-address");
        }
        if (address.getUserInfo() != null) { throw problem(address, "password-in-address"); }
        if (scheme.equals("http") && !allowsPlain && !isThisMachine(address.getHost())) {
            throw problem(address, "plain-http");
        }
        return address;
    }

    private static boolean isThisMachine(String host) {
        boolean isLiteral = host.equals("localhost") || host.startsWith("[") || host.startsWith("127.");
        try {
            return isLiteral && InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** Sends a request; headers are name and value by turns. Follows redirects on the same host. */
    Wire.Reply send(String method, URI to, String body, String... headers) {
        Map<String, String> all = new TreeMap<>(Map.of("User-Agent", "Oldwood"));
        session.login.ifPresent(login -> all.put("Authorization", login.header()));
        for (int i = 0; i < headers.length; i += 2) {
            all.put(headers[i], headers[i + 1]);
        }
        URI address = to;
        for (int hop = 0; hop <= MOST_REDIRECTS; hop++) {
            Wire.Reply reply = exchange(new Wire.Request(method, address, all, body));
            Optional<String> location = reply.header("location");
            if (reply.status() / 100 != 3 || location.isEmpty()) { return checked(reply); }
            address = onSameHost(address, location.get());
        }
        throw problem(base, "endless-redirects");
    }

    /**
     * A server may close a connection that we still hold open; then the request is sent again. That is safe: nothing is
     * written without a condition (RFC 4791, 5.3.2).
     */
    private Wire.Reply exchange(Wire.Request request) {
        for (int tried = 1;; tried++) {
            try {
                return session.spend(request);
            } catch (IOException e) {
                if (tried == TRIES) { throw problem(request.to(), "no-answer", JdkWire.reason(e)); }
            }
        }
    }

    private Wire.Reply checked(Wire.Reply reply) {
        int status = reply.status();
        if (reply.header("content-encoding").filter(e -> !e.equals("identity")).isPresent()) {
            throw problem(reply.from(), "packed-answer");
        }
        if (status == 401 || (status == 403 && session.login.isEmpty())) {
            throw problem(reply.from(), "not-let-in", status);
        }
        return reply;
    }

    private URI onSameHost(URI from, String location) {
        URI to;
        try {
            to = from.resolve(location);
        } catch (IllegalArgumentException e) {
            throw problem(from, "bad-redirect");
        }
        boolean isSame = base.getScheme().equals(to.getScheme())
                && base.getHost().equalsIgnoreCase(String.valueOf(to.getHost())) && base.getPort() == to.getPort();
        if (!isSame) { throw problem(from, "redirect-elsewhere", to.getScheme(), to.getAuthority()); }
        return to;
    }

    static RecordException problem(URI address, String words, Object... said) {
        return new RecordException(Problem.of(words, Place.of(toTell(address)), said));
    }

    private static String toTell(URI address) {
        boolean isPlain = address.getHost() != null && address.getUserInfo() == null;
        return isPlain ? address.toString() : Session.toTell(address.toString());
    }
}
