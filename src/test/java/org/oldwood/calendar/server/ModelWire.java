package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.Map;
import org.oldwood.calendar.DavStore;

/** Reaches a store in this process, and dies or loses the connection when it is told to. */
final class ModelWire implements Wire {
    private final DavStore store;
    private Fault fault = Fault.NONE;
    private int before;

    /** Looks at how things stand at each request. */
    interface Look {
        void take() throws IOException;
    }

    Look atEach = () -> {
    };

    /** The process is killed between two requests. */
    static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** What happens at one request. */
    enum Fault {
        NONE,
        KILLED_BEFORE,
        KILLED_AFTER,
        ANSWER_LOST,
        GONE
    }

    ModelWire(DavStore store) { this.store = store; }

    /** Lets something happen at the request after so many others. */
    void plan(Fault what, int requests) {
        fault = what;
        before = requests;
    }

    @Override
    public Reply send(Request request) throws IOException {
        atEach.take();
        boolean isNow = fault != Fault.NONE && before-- <= 0;
        if (isNow && fault == Fault.KILLED_BEFORE) { throw new Killed(); }
        DavStore.Reply reply = store.answer(request.method(), request.to().getPath(), request.headers()::get,
                request.body());
        if (isNow && fault == Fault.KILLED_AFTER) { throw new Killed(); }
        if (isNow) {
            fault = fault == Fault.ANSWER_LOST ? Fault.NONE : fault;
            throw new IOException("the connection broke off");
        }
        Map<String, String> headers = reply.etag().isEmpty() ? Map.of() : Map.of("etag", reply.etag());
        return new Reply(reply.status(), request.to(), headers, reply.body().getBytes(UTF_8));
    }
}
