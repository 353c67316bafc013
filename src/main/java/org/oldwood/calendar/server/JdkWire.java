package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;
import org.oldwood.store.RecordException;

/** The runtime's own HTTP client, bounded in time and size. TLS is always verified. */
final class JdkWire implements Wire {
    private static final Duration GLANCE = Duration.ofMillis(250);

    private final Session.Limits limits;
    private final Progress progress;
    private final HttpClient client;

    JdkWire(Session.Limits limits, Progress progress, Optional<SSLContext> own) {
        this.limits = limits;
        this.progress = progress;
        HttpClient.Builder builder = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER).connectTimeout(limits.answer());
        own.ifPresent(builder::sslContext);
        client = builder.build();
    }

    @Override
    public Reply send(Request asked) throws IOException {
        HttpRequest.Builder request = HttpRequest.newBuilder(asked.to()).timeout(limits.answer()).method(asked.method(),
                asked.body().isEmpty() ? HttpRequest.BodyPublishers.noBody()
                        : HttpRequest.BodyPublishers.ofString(asked.body()));
        asked.headers().forEach(request::header);
        try {
            HttpResponse<byte[]> response = once(request.build());
            Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
            response.headers().map().forEach((name, values) -> headers.put(name, values.get(0)));
            return new Reply(response.statusCode(), asked.to(), headers, response.body());
        } catch (ExecutionException e) {
            throw failed(asked.to(), e.getCause());
        }
    }

    /** One deadline for the whole answer: a server that drips octets is given up too. */
    private HttpResponse<byte[]> once(HttpRequest request) throws ExecutionException {
        CompletableFuture<HttpResponse<byte[]>> answer = client.sendAsync(request,
                info -> new BoundedBody(limits.mostBytes()));
        long end = System.nanoTime() + limits.answer().toNanos();
        try {
            while (true) {
                long left = Math.min(end - System.nanoTime(), GLANCE.toNanos());
                try {
                    return answer.get(Math.max(left, 0), TimeUnit.NANOSECONDS);
                } catch (TimeoutException e) {
                    if (left < GLANCE.toNanos()) { throw slow(request.uri()); }
                    progress.isStillAt("waiting for " + request.uri().getHost());
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw Http.problem(request.uri(), "stopped");
        } finally {
            answer.cancel(true);
        }
    }

    /** What another try may mend is thrown as it is. */
    private IOException failed(URI address, @Nullable Throwable cause) {
        if (cause instanceof HttpTimeoutException) { throw slow(address); }
        if (cause instanceof BoundedBody.TooLarge) {
            throw Http.problem(address, "answer-too-large", limits.mostBytes() >> 20);
        }
        if (cause instanceof SSLException) { throw Http.problem(address, "not-trusted", reason(cause)); }
        if (cause instanceof ConnectException) { throw Http.problem(address, "not-reached"); }
        return cause instanceof IOException broken ? broken : new IOException(cause);
    }

    /** In the words of the runtime, without the name of its class. */
    static String reason(@Nullable Throwable cause) {
        String words = cause == null ? null : cause.getMessage();
        boolean isForPeople = words != null && !words.isBlank()
                && !words.matches(".*\\b\\w+(\\.\\w+)+\\b.*|[A-Z]\\w*Exception.*");
        return isForPeople ? ": " + words : "";
    }

    private RecordException slow(URI address) { return Http.problem(address, "too-slow", limits.answer().toSeconds()); }
}
