package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Uids;
import org.oldwood.calendar.server.Collection.Stored;
import org.oldwood.store.Problems;

/** One command's way to calendar servers: a login, and one budget of time and requests over all that it asks. */
public final class Session {
    final Optional<Login> login;
    final boolean allowsPlain;
    final Progress progress;
    private final Limits limits;
    private final Wire wire;
    private final long began = System.nanoTime();
    private int requests;

    /**
     * What servers may take of one command.
     *
     * @param answer how long one answer may take
     * @param mostBytes how large it may be
     * @param whole how long all requests may take together
     * @param mostRequests how many there may be
     */
    record Limits(Duration answer, int mostBytes, Duration whole, int mostRequests) {
        static final Limits USUAL = new Limits(Duration.ofSeconds(20), 32 << 20, Duration.ofMinutes(10), 20_000);
    }

    /**
     * Asks nothing yet.
     *
     * @param login if the server asks for one
     * @param allowsPlain whether http without TLS may go to another machine
     * @param certificate a file with the one certificate to trust, where nobody vouches for the server's
     * @param tells who is told what it is at when it lasts
     */
    public static Session with(Optional<Login> login, boolean allowsPlain, Optional<Path> certificate,
            Consumer<String> tells) throws IOException {
        return with(login, allowsPlain, certificate, new Progress(tells), Limits.USUAL);
    }

    static Session with(Optional<Login> login, boolean allowsPlain, Optional<Path> certificate, Progress progress,
            Limits limits) throws IOException {
        Optional<SSLContext> own = certificate.isPresent() ? Optional.of(OwnCertificate.trusted(certificate.get()))
                : Optional.empty();
        return new Session(login, allowsPlain, progress, limits, new JdkWire(limits, progress, own));
    }

    Session(Optional<Login> login, boolean allowsPlain, Progress progress, Limits limits, Wire wire) {
        this.login = login;
        this.allowsPlain = allowsPlain;
        this.progress = progress;
        this.limits = limits;
        this.wire = wire;
    }

    /** An address as it may be told: without a password that somebody wrote into it, wherever that ends. */
    public static String toTell(String address) {
        return address.replaceFirst("^(\\w+:/*)?.*@", "$1");
    }

    /** @throws org.oldwood.store.RecordException where the budget is spent */
    Wire.Reply spend(Wire.Request request) throws IOException {
        boolean isLate = System.nanoTime() - began > limits.whole.toNanos();
        if (isLate || requests++ == limits.mostRequests) {
            throw isLate ? Http.problem(request.to(), "server-budget time", limits.whole.toSeconds())
                    : Http.problem(request.to(), "server-budget requests", limits.mostRequests);
        }
        return wire.send(request);
    }

    Collection at(URI address) { return Collection.at(address, new Http(address, this)); }

    /** The garden's objects in a collection, for {@link ReadBack}. */
    public List<String> fetch(URI address, Export.Garden garden, List<Item> plan) throws IOException {
        CalendarState state = CalendarState.of(garden.folder(), new Problems());
        Uids uids = new Uids(garden.id(), state.adopted());
        Set<String> identities = new LinkedHashSet<>(state.items().keySet());
        plan.forEach(item -> identities.add(item.identity()));
        List<String> wanted = Stream.concat(identities.stream().map(uids::event), identities.stream().map(uids::todo))
                .toList();
        List<String> objects = new ArrayList<>();
        for (Stored stored : at(address).read(wanted).values()) {
            objects.add(ItemObject.text(stored.object()));
        }
        return objects;
    }
}
