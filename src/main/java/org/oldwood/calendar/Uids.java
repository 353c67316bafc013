package org.oldwood.calendar;

import java.util.Map;
import java.util.UUID;
import org.oldwood.calendar.format.UuidV5;

/**
 * The UIDs of a garden's items: UUIDs of version 5 over the garden's own random id, so that they can be rebuilt and not
 * guessed (RFC 7986, 5.3). An event and a to-do never share one. UIDs that were adopted from an older file go before.
 */
public final class Uids {
    static final String EVENT = "event";
    static final String TODO = "todo";

    /** Occurs in no identity, so that no two names run together. */
    private static final char SEPARATOR = '\u001F';

    private final UUID garden;
    private final Map<String, String> adopted;

    /** @param adopted UIDs to use instead, by {@link #name} */
    public Uids(UUID garden, Map<String, String> adopted) {
        this.garden = garden;
        this.adopted = Map.copyOf(adopted);
    }

    public String event(String identity) { return of(identity, EVENT); }

    public String todo(String identity) { return of(identity, TODO); }

    /** Whether some come from files that were written under another id of the garden. */
    boolean areAdopted() {
        return !adopted.isEmpty();
    }

    /** Of a whole calendar. */
    String calendar(String name) { return of(name, "calendar"); }

    static String name(String identity, String kind) { return identity + SEPARATOR + kind; }

    private String of(String identity, String kind) {
        String name = name(identity, kind);
        return adopted.getOrDefault(name, UuidV5.of(garden, name).toString());
    }
}
