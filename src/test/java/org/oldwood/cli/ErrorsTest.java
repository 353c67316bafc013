package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oldwood.cli.command.Cli;

/**
 * Each folder under {@code errors/} holds one bad input, laid over the good garden in {@code base}, the command given,
 * and in {@code message.txt} the exit code and exactly what is said. No file may be changed by it.
 */
class ErrorsTest {
    private static final Path CASES = Path.of("src/test/resources/errors");
    private static final String HOLD = ".hold-the-lock";

    /** Not a temporary folder, because messages name it: their lines must break alike everywhere. */
    private static final Path WORK = Path.of("target/errors");

    private Path folder = WORK;

    static List<String> names() throws IOException {
        try (Stream<Path> cases = Files.list(CASES)) {
            return cases.map(path -> path.getFileName().toString()).filter(name -> !name.equals("base")).sorted()
                    .toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void says_what_is_wrong_and_writes_nothing(String name) throws IOException {
        Path bad = CASES.resolve(name);
        folder = emptied(WORK.resolve(name));
        layOut(CASES.resolve("base"), bad);
        layOut(bad, bad);
        List<String> command = Files.readAllLines(bad.resolve("command.txt"));
        Map<String, String> before = contents();

        Cli.Result result = run(command.toArray(String[]::new));

        String said = "exit " + result.exit() + "\n" + result.out() + result.err();
        if (Boolean.getBoolean("golden.update")) { Files.writeString(bad.resolve("message.txt"), said); }
        assertThat(said).isEqualTo(Files.readString(bad.resolve("message.txt")));
        assertThat(contents()).isEqualTo(before);
    }

    private static Path emptied(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
        return Files.createDirectories(folder);
    }

    private Cli.Result run(String... command) throws IOException {
        if (!Files.exists(folder.resolve(HOLD))) { return Cli.in(folder).run(command); }
        Path lock = folder.resolve(".journal.jsonl.lock");
        try (FileChannel other = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            other.lock();
            return Cli.in(folder).run(command);
        }
    }

    /** Copies a case's files, except those that the case itself has as a folder. */
    private void layOut(Path from, Path bad) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = from.relativize(file).toString();
                boolean ours = name.equals("command.txt") || name.equals("message.txt");
                if (!ours && !Files.isDirectory(bad.resolve(name))) {
                    Path to = folder.resolve(name);
                    Files.createDirectories(to.getParent());
                    Files.deleteIfExists(to);
                    Files.copy(file, to);
                }
            }
        }
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.toString().endsWith(".lock")) {
                    all.put(folder.relativize(file).toString(),
                            new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
                }
            }
        }
        return all;
    }
}
