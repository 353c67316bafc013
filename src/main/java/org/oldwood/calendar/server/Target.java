package org.oldwood.calendar.server;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.net.ssl.SSLContext;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Uids;
import org.oldwood.calendar.server.Collection.Stored;
import org.oldwood.store.Problems;

/**
 * Where to publish.
 *
 * @param events the collection for events
 * @param todos the collection for to-dos; may be the same
 * @param login if the server asks for one
 * @param allowsPlain whether http without TLS may go to another machine
 * @param certificate a file with the one certificate to trust, where nobody vouches for the server's
 */
public record Target(URI events, URI todos, Optional<Login> login, boolean allowsPlain, Optional<Path> certificate) {
    public Target(URI events, URI todos, Optional<Login> login, boolean allowsPlain) {
        this(events, todos, login, allowsPlain, Optional.empty());
    }

    Http http(URI address, Http.Limits limits) throws IOException {
        Optional<SSLContext> own =
                certificate.isPresent() ? Optional.of(OwnCertificate.trusted(certificate.get())) : Optional.empty();
        return new Http(address, login, allowsPlain, limits, own);
    }

    /** What the collections hold, for {@link ReadBack}. */
    public List<String> fetch(Export.Garden garden, List<Item> plan) throws IOException {
        CalendarState state = CalendarState.of(garden.folder(), new Problems());
        Uids uids = new Uids(garden.id(), state.adopted());
        Set<String> identities = new LinkedHashSet<>(state.tasks().keySet());
        plan.forEach(item -> identities.add(item.identity()));
        List<String> wanted = new ArrayList<>();
        identities.forEach(identity -> wanted.add(uids.event(identity)));
        identities.forEach(identity -> wanted.add(uids.todo(identity)));
        List<String> objects = new ArrayList<>();
        for (URI address : List.of(events, todos).stream().distinct().toList()) {
            Http http = http(address, Http.Limits.USUAL);
            for (Stored stored : Collection.at(address, http).read(wanted).values()) {
                objects.add(ItemObject.text(stored.object()));
            }
        }
        return objects;
    }
}
