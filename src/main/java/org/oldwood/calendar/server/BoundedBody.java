package org.oldwood.calendar.server;

import java.io.ByteArrayOutputStream;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;
import java.util.function.Consumer;

/** Gathers a body up to a bound. */
final class BoundedBody implements HttpResponse.BodySubscriber<byte[]> {
    private final int most;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final CompletableFuture<byte[]> body = new CompletableFuture<>();
    private Consumer<Throwable> cancel = reason -> {
    };

    BoundedBody(int most) { this.most = most; }

    @Override
    public CompletionStage<byte[]> getBody() { return body; }

    @Override
    public void onSubscribe(Flow.Subscription subscription) {
        cancel = reason -> subscription.cancel();
        subscription.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(List<ByteBuffer> buffers) {
        for (ByteBuffer buffer : buffers) {
            if (bytes.size() + buffer.remaining() > most) {
                TooLarge reason = new TooLarge();
                cancel.accept(reason);
                body.completeExceptionally(reason);
                return;
            }
            byte[] part = new byte[buffer.remaining()];
            buffer.get(part);
            bytes.writeBytes(part);
        }
    }

    @Override
    public void onError(Throwable reason) { body.completeExceptionally(reason); }

    @Override
    public void onComplete() { body.complete(bytes.toByteArray()); }

    /** Says why an answer was broken off. */
    static final class TooLarge extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
