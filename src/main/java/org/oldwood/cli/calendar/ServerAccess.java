package org.oldwood.cli.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import org.oldwood.calendar.server.Login;
import org.oldwood.calendar.server.Session;
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
    private static final int MOST_PASSWORD = 4096;
    private static final Set<PosixFilePermission> PRIVATE = PosixFilePermissions.fromString("rw-------");

    @Option(names = "--user", paramLabel = "NAME")
    Optional<String> user = Optional.empty();

    @Option(names = "--password-file", paramLabel = "FILE",
            description = {"a file with your password, readable by you alone (chmod 600);",
                    "otherwise " + VARIABLE + ", or you are asked"})
    Optional<Path> passwordFile = Optional.empty();

    @Option(names = "--plain-http")
    boolean plainHttp;

    @Option(names = "--certificate", paramLabel = "FILE")
    Optional<Path> certificate = Optional.empty();

    Session session(GardenCommand command) throws IOException {
        return Session.with(login(command), plainHttp, certificate.map(command::path), command::tell);
    }

    static boolean isAddress(String text) { return text.startsWith("http:") || text.startsWith("https:"); }

    static URI address(GardenCommand command, String text) {
        try {
            return new URI(text);
        } catch (URISyntaxException e) {
            throw command.usage("\"" + Session.toTell(text) + "\" is no web address");
        }
    }

    private Optional<Login> login(GardenCommand command) throws IOException {
        if (user.isEmpty()) { return Optional.empty(); }
        command.refuseIf(user.get().contains(":"), "a user name cannot hold a colon");
        return Optional.of(new Login(user.get(), password(command)));
    }

    private String password(GardenCommand command) throws IOException {
        if (passwordFile.isPresent()) { return fromFile(command.path(passwordFile.get())); }
        String given = command.around().environment().get(VARIABLE);
        if (given != null) { return given; }
        return command.around().hidden().answerTo("Password: ").orElseThrow(
                () -> command.usage("there is no password: set " + VARIABLE + ", or give --password-file FILE"));
    }

    /** A pipe, as a password manager gives one, has nobody's rights but is read once by us alone. */
    private static String fromFile(Path file) throws IOException {
        Place place = Place.of(file.toString());
        if (!Files.exists(file) || Files.isDirectory(file)) {
            throw new RecordException(Problem.of("no-password-file", place));
        }
        boolean hasRights = Files.isRegularFile(file) && Files.getFileStore(file).supportsFileAttributeView("posix");
        if (hasRights && !PRIVATE.containsAll(Files.getPosixFilePermissions(file))) {
            throw new RecordException(Problem.of("password-file-open", place, file));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] octets = in.readNBytes(MOST_PASSWORD);
            return UTF_8.newDecoder().decode(ByteBuffer.wrap(octets)).toString().strip();
        } catch (CharacterCodingException e) {
            throw new RecordException(Problem.of("password-not-utf8", place));
        }
    }
}
