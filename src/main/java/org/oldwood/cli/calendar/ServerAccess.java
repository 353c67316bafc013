package org.oldwood.cli.calendar;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.server.Login;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Option;

/**
 * The options for a calendar server. A password is never an argument, where other users of the machine and the shell's
 * history would see it.
 */
final class ServerAccess {
    private static final String VARIABLE = "OLDWOOD_CALENDAR_PASSWORD";
    private static final Set<PosixFilePermission> PRIVATE = PosixFilePermissions.fromString("rw-------");

    @Option(names = "--user", paramLabel = "NAME", description = "your name on the server")
    Optional<String> user = Optional.empty();

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = {
                "a file with your password, readable by you alone (chmod 600);",
                "otherwise " + VARIABLE + ", or you are asked"
            })
    Optional<Path> passwordFile = Optional.empty();

    @Option(
            names = "--plain-http",
            description = "allow http without TLS to another machine: the password goes in the open")
    boolean plainHttp;

    static boolean isAddress(String text) {
        return text.startsWith("http://") || text.startsWith("https://");
    }

    static URI address(GardenCommand command, String text) {
        try {
            return new URI(text);
        } catch (URISyntaxException e) {
            throw command.usage("\"" + withoutUser(text) + "\" is no web address");
        }
    }

    /** Some write their password into the address; it is not said again. */
    private static String withoutUser(String address) {
        int user = address.lastIndexOf('@');
        int host = address.indexOf("//");
        return user < 0 || host < 0 ? address : address.substring(0, host + 2) + address.substring(user + 1);
    }

    Optional<Login> login(GardenCommand command) throws IOException {
        if (user.isEmpty()) {
            return Optional.empty();
        }
        if (user.get().contains(":")) {
            throw command.usage("a user name cannot hold a colon");
        }
        return Optional.of(new Login(user.get(), password(command)));
    }

    private String password(GardenCommand command) throws IOException {
        if (passwordFile.isPresent()) {
            return fromFile(command.path(passwordFile.get()));
        }
        String given = command.around().environment().get(VARIABLE);
        if (given != null) {
            return given;
        }
        return command.around()
                .hidden()
                .answerTo("Password: ")
                .orElseThrow(() ->
                        command.usage("there is no password: set " + VARIABLE + ", or give --password-file FILE"));
    }

    private static String fromFile(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new RecordException(new Problem("no-password-file", Place.of(file.toString()), "is no file", ""));
        }
        boolean hasRights = Files.getFileStore(file).supportsFileAttributeView("posix");
        if (hasRights && !PRIVATE.containsAll(Files.getPosixFilePermissions(file))) {
            throw new RecordException(new Problem(
                    "password-file-open",
                    Place.of(file.toString()),
                    "can be read by others than you",
                    "Make it yours alone: chmod 600 " + file));
        }
        return Files.readString(file).strip();
    }
}
