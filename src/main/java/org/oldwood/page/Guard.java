package org.oldwood.page;

import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.Set;

/**
 * Decides whether a request may be answered. Only requests that were sent to this very address are (the {@code Host}
 * header; a foreign name that leads here is refused), only from our own page (the {@code Origin} header, where there is
 * one), and what tells of the garden only with the token. After too many wrong tokens the guard rests.
 */
final class Guard {
    static final String TOKEN = "X-Oldwood-Token";

    private static final int FORBIDDEN = 403;
    private static final int UNAUTHORIZED = 401;
    private static final int TOO_MANY = 429;
    private static final int WRONG_TOKENS = 20;
    private static final long REST_NANOS = 60_000_000_000L;

    private final Set<String> hosts;
    private final byte[] token;
    private int wrong;
    private long since = System.nanoTime();

    /** {@code hosts} as browsers send them: address and port. */
    Guard(Set<String> hosts, String token) {
        this.hosts = Set.copyOf(hosts);
        this.token = token.getBytes(StandardCharsets.US_ASCII);
    }

    /** Why the request is refused, as an HTTP status; empty where it may be answered. */
    Optional<Integer> refusal(HttpExchange request, boolean needsToken) {
        String host = request.getRequestHeaders().getFirst("Host");
        if (host == null || !hosts.contains(host)) { return Optional.of(FORBIDDEN); }
        String origin = request.getRequestHeaders().getFirst("Origin");
        if (origin != null && !origin.equals("http://" + host)) { return Optional.of(FORBIDDEN); }
        return needsToken ? tokenRefusal(request.getRequestHeaders().getFirst(TOKEN)) : Optional.empty();
    }

    private synchronized Optional<Integer> tokenRefusal(String sent) {
        if (System.nanoTime() - since > REST_NANOS) {
            since = System.nanoTime();
            wrong = 0;
        }
        // the right token is let in whatever others tried: nobody can keep the grower out by guessing
        if (sent != null && MessageDigest.isEqual(token, sent.getBytes(StandardCharsets.UTF_8))) {
            return Optional.empty();
        }
        wrong++;
        return Optional.of(wrong > WRONG_TOKENS ? TOO_MANY : UNAUTHORIZED);
    }
}
