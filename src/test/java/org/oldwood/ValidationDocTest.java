package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A page on what is checked names tests that are there. */
class ValidationDocTest {
    private static final Pattern TEST = Pattern.compile("`([A-Z]\\w*Test)(?:\\.(\\w+))?`");

    @ParameterizedTest
    @ValueSource(strings = {"validation-calendars.md", "validation-trust.md"})
    void every_test_named_is_there(String page) throws IOException {
        Map<String, String> sources = sources();
        List<String> missing = TEST.matcher(Files.readString(Path.of("docs").resolve(page)))
                .results()
                .filter(named -> {
                    String source = sources.getOrDefault(named.group(1), "");
                    String method = named.group(2);
                    return source.isEmpty() || (method != null && !source.contains("void " + method + "("));
                })
                .map(named -> named.group())
                .toList();

        assertThat(missing).isEmpty();
    }

    private static Map<String, String> sources() throws IOException {
        Map<String, String> sources = new HashMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith("Test.java")).toList()) {
                String name = file.getFileName().toString();
                sources.put(name.substring(0, name.length() - 5), Files.readString(file));
            }
        }
        return sources;
    }
}
