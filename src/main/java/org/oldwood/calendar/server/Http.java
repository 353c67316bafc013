package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;
import org.oldwood.calendar.format.Hygiene;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/**
 * Speaks HTTP to one calendar server: bounded in time and size, never to another host than the one named, never in the
 * open but to this machine itself or when insisted on. TLS is always verified.
 */
final class Http {
    private static final int MOST_REDIRECTS = 3;
    private static final int TRIES = 3;

    private final URI base;
    private final Optional<Login> login;
    private final Limits limits;
    private final HttpClient client;
    private final long began = System.nanoTime();
    private int requests;

    /**
     * What a server may take of us.
     *
     * @param answer how long one answer may take
     * @param mostBytes how large it may be
     * @param whole how long all requests to one collection may take together
     * @param mostRequests how many there may be
     */
    record Limits(Duration answer, int mostBytes, Duration whole, int mostRequests) {
        static final Limits USUAL = new Limits(Duration.ofSeconds(30), 32 << 20, Duration.ofMinutes(15), 50_000);

        Limits(Duration answer, int mostBytes) {
            this(answer, mostBytes, USUAL.whole, USUAL.mostRequests);
        }
    }

    /** What a server answered. */
    record Reply(int status, URI from, Optional<String> etag, String body) {
        boolean isGood() {
            return status >= 200 && status < 300;
        }

        String start() {
            return Hygiene.line(body.substring(0, Math.min(body.length(), 200)));
        }
    }

    Http(URI base, Optional<Login> login, boolean allowsPlain, Limits limits, Optional<SSLContext> own) {
        this.base = checked(base, allowsPlain);
        this.login = login;
        this.limits = limits;
        HttpClient.Builder builder = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER)
                .connectTimeout(limits.answer);
        own.ifPresent(builder::sslContext);
        this.client = builder.build();
    }

    private static URI checked(URI address, boolean allowsPlain) {
        String scheme = String.valueOf(address.getScheme());
        if (address.getHost() == null || !(scheme.equals("https") || scheme.equals("http"))) {
            throw problem(
                    address,
                    "no-server-address",
                    "is no web address",
                    "Write for example: https://calendar.example/user/garden/");
        }
        if (address.getUserInfo() != null) {
            throw problem(
                    address,
                    "password-in-address",
                    "holds a user name or password",
                    "Leave it out of the address; give --user, and the password in a file or the environment.");
        }
        if (scheme.equals("http") && !allowsPlain && !isThisMachine(address.getHost())) {
            throw problem(
                    address,
                    "plain-http",
                    "would send your password in the open",
                    "Write https://, or add --plain-http if you are sure of the network.");
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
    Reply send(String method, URI to, String body, String... headers) {
        URI address = to;
        for (int hop = 0; hop <= MOST_REDIRECTS; hop++) {
            HttpResponse<byte[]> response = exchange(request(method, address, body, headers));
            Optional<String> location = response.headers().firstValue("Location");
            boolean isElsewhere = response.statusCode() / 100 == 3 && location.isPresent();
            if (!isElsewhere) {
                return reply(response, address);
            }
            address = onSameHost(address, location.get());
        }
        throw problem(
                base,
                "endless-redirects",
                "sends from one address to the next without end",
                "Give the collection's own address.");
    }

    private Reply reply(HttpResponse<byte[]> response, URI address) {
        int status = response.statusCode();
        if (response.headers()
                .firstValue("Content-Encoding")
                .filter(e -> !e.equals("identity"))
                .isPresent()) {
            throw problem(
                    address,
                    "packed-answer",
                    "answers packed, which was not asked for",
                    "Check the address, or the server's settings.");
        }
        if (status == 401 || (status == 403 && login.isEmpty())) {
            throw problem(
                    address,
                    "not-let-in",
                    "does not let this user in (HTTP " + status + ")",
                    "Check --user and the password.");
        }
        return new Reply(status, address, response.headers().firstValue("ETag"), new String(response.body(), UTF_8));
    }

    private URI onSameHost(URI from, String location) {
        URI to;
        try {
            to = from.resolve(location);
        } catch (IllegalArgumentException e) {
            throw problem(from, "bad-redirect", "sends on to something that is no address", "");
        }
        boolean isSame = base.getScheme().equals(to.getScheme())
                && base.getHost().equalsIgnoreCase(String.valueOf(to.getHost()))
                && base.getPort() == to.getPort();
        if (!isSame) {
            throw problem(
                    from,
                    "redirect-elsewhere",
                    "sends on to another server, " + to.getScheme() + "://" + to.getAuthority(),
                    "If you trust that one, give its address instead.");
        }
        return to;
    }

    private HttpRequest request(String method, URI to, String body, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(to)
                .timeout(limits.answer)
                .header("User-Agent", "Oldwood")
                .method(
                        method,
                        body.isEmpty()
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString(body, UTF_8));
        login.ifPresent(known -> request.header("Authorization", known.header()));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return request.build();
    }

    /**
     * A server may close a connection that we still hold open; then the request is sent again. That is safe: nothing is
     * written without a condition (RFC 4791, 5.3.2).
     */
    private HttpResponse<byte[]> exchange(HttpRequest request) {
        for (int tried = 1; ; tried++) {
            spend(request.uri());
            try {
                return once(request);
            } catch (ExecutionException e) {
                if (tried == TRIES || !isBrokenOff(e.getCause())) {
                    throw failed(request.uri(), e.getCause());
                }
            }
        }
    }

    private void spend(URI address) {
        boolean isLate = System.nanoTime() - began > limits.whole.toNanos();
        if (isLate || requests++ == limits.mostRequests) {
            throw problem(
                    address,
                    "server-budget",
                    isLate
                            ? "took more than %d seconds for all".formatted(limits.whole.toSeconds())
                            : "needs more than %d requests".formatted(limits.mostRequests),
                    "Run it again later: it goes on with what is missing.");
        }
    }

    private static boolean isBrokenOff(@Nullable Throwable cause) {
        return cause instanceof IOException
                && !(cause instanceof HttpTimeoutException
                        || cause instanceof SSLException
                        || cause instanceof ConnectException);
    }

    /** One deadline for the whole answer: a server that drips octets is given up too. */
    private HttpResponse<byte[]> once(HttpRequest request) throws ExecutionException {
        CompletableFuture<HttpResponse<byte[]>> answer =
                client.sendAsync(request, info -> new BoundedBody(limits.mostBytes));
        try {
            return answer.get(limits.answer.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            answer.cancel(true);
            throw slow(request.uri());
        } catch (InterruptedException e) {
            answer.cancel(true);
            Thread.currentThread().interrupt();
            throw problem(request.uri(), "stopped", "was not waited for", "");
        }
    }

    private RecordException failed(URI address, @Nullable Throwable cause) {
        if (cause instanceof HttpTimeoutException) {
            return slow(address);
        }
        if (cause instanceof BoundedBody.TooLarge) {
            return problem(
                    address,
                    "answer-too-large",
                    "answers with more than " + (limits.mostBytes >> 20) + " MB",
                    "Publish to a collection of its own.");
        }
        if (cause instanceof SSLException) {
            return problem(
                    address,
                    "not-trusted",
                    "does not prove who it is" + reason(cause),
                    "Check the address. If the certificate is your own, give it with --certificate FILE.");
        }
        if (cause instanceof ConnectException) {
            return problem(address, "not-reached", "cannot be reached", "Check the address, and that the server runs.");
        }
        return problem(
                address,
                "no-answer",
                "gives no answer that can be read" + reason(cause),
                "Try again later, and check the address.");
    }

    /** In the words of the runtime, without the name of its class. */
    private static String reason(@Nullable Throwable cause) {
        String words = cause == null ? null : cause.getMessage();
        return words == null || words.isBlank() ? "" : ": " + words;
    }

    private RecordException slow(URI address) {
        return problem(
                address,
                "too-slow",
                "did not answer within " + limits.answer.toSeconds() + " seconds",
                "Try again later.");
    }

    static RecordException problem(URI address, String name, String message, String remedy) {
        return new RecordException(new Problem(name, Place.of(withoutUser(address)), message, remedy));
    }

    private static String withoutUser(URI address) {
        return address.getRawUserInfo() == null
                ? address.toString()
                : address.toString().replace(address.getRawUserInfo() + "@", "");
    }
}
