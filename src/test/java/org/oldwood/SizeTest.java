package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A file that grows past these lengths has a second room in it. */
class SizeTest {
    @Test
    void no_source_file_is_longer_than_300_lines() throws IOException {
        assertThat(longerThan(Path.of("src/main/java"), 300)).isEmpty();
    }

    @Test
    void no_test_file_is_longer_than_400_lines() throws IOException {
        assertThat(longerThan(Path.of("src/test/java"), 400)).isEmpty();
    }

    /** Arabic or Devanagari figures on a machine that is set so, and other octets for the same record. */
    @Test
    void no_number_is_written_by_the_machines_locale() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                assertThat(Files.readString(file)).as("%s: say %%s", file)
                        .doesNotContainPattern("\"[^\"\\n]*%[0-9]*d[^\"\\n]*\"\\s*\\.formatted");
            }
        }
    }

    private static List<String> longerThan(Path root, int most) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                int lines = Files.readAllLines(file).size();
                if (lines > most) { found.add(file + " has " + lines + " lines; the most is " + most); }
            }
        }
        return found;
    }
}
