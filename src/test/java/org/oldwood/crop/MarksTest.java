package org.oldwood.crop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure that was not read in print says so where a person meets it. */
class MarksTest {
    /** A figure put into words by its number alone, or without its mark. */
    private static final Pattern BARE = Pattern.compile(
            "\\.plain\\(\\)|(Words\\.(amount|fixed|one|whole|weight)|\\b(percent|number|one|whole))\\((?=\\w)[\\w.()]*\\.is\\(\\)[,)]");

    /** They make the words and add the mark at their end. */
    private static final Set<String> OWN = Set.of("Figure.java", "Measures.java", "MeasureWords.java",
            "CropSeason.java");

    @ParameterizedTest
    @CsvSource({"READ, 3.5 g/m²", "QUOTED, 3.5 g/m² (quoted)", "COMPUTED, 3.5 g/m² (computed)",
            "MEMORY, 3.5 g/m² (from memory)", "COMMON_PRACTICE, 3.5 g/m² (common practice)",
            "ASSUMED, 3.5 g/m² (our assumption)"})
    void a_figure_in_words_carries_its_mark(Seen seen, String words) {
        assertThat(new Figure(3.5, 3, 4, "g/m2", List.of("key"), seen, "").inWords()).isEqualTo(words);
    }

    @Test
    void no_sentence_takes_a_figure_without_its_mark() throws IOException {
        List<String> bare = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
                for (String statement : Files.readString(file).split(";")) {
                    boolean marked = statement.matches("(?s).*(\\.seen\\(\\)|mark\\(|\\.inWords\\(\\)).*");
                    if (BARE.matcher(statement).find() && !marked && !OWN.contains(file.getFileName().toString())) {
                        bare.add(file.getFileName() + ": " + statement.strip());
                    }
                }
            }
        }
        assertThat(bare).isEmpty();
    }
}
