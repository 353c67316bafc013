package org.oldwood.calendar.server;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Base64;

/** A user's name and password on a calendar server. Never shows itself. */
public record Login(String user, String password) {
    public Login {
        if (user.indexOf(':') >= 0) {
            throw new IllegalArgumentException("a user name with a colon cannot be sent (RFC 7617)");
        }
    }

    String header() { return "Basic " + Base64.getEncoder().encodeToString((user + ":" + password).getBytes(UTF_8)); }

    @Override
    public String toString() { return "Login of " + user; }
}
