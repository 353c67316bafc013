package org.oldwood.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of words is short, and holds no word that nothing says. */
class WordsPageTest {
    private static final int MOST = 20;

    @Test
    void at_most_twenty_words_and_each_is_said() throws IOException {
        List<String> words = Files.readAllLines(Path.of("docs/words.md")).stream()
                .filter(line -> line.startsWith("- **")).map(line -> line.substring(4, line.indexOf("**", 4))).toList();
        String said;
        try (Stream<Path> data = Files.walk(Path.of("src/main"))) {
            said = data.filter(Files::isRegularFile)
                    .filter(file -> file.toString().matches(".*\\.(json|java|properties|jte)")).map(WordsPageTest::text)
                    .collect(Collectors.joining());
        }

        assertThat(words).hasSizeBetween(10, MOST).isSortedAccordingTo(String.CASE_INSENSITIVE_ORDER);
        assertThat(words).allSatisfy(word -> assertThat(said).contains(word.toLowerCase(Locale.ROOT).split(" of ")[0]));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file).toLowerCase(Locale.ROOT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
