package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.oldwood.words.Texts;

class ProblemTest {
    private static final Pattern TOLD = Pattern.compile(
            "(?:problems\\.tell|Problem\\.of|problem\\(entry,|\\.tell\\([^\\s,()]+,)\\(?\\s*\"([a-z0-9 -]+)\"");

    @Test
    void a_problem_is_worded_by_its_name_and_what_is_put_in() {
        Problem problem = Problem.of("missing-document crop", Place.of("crops/odd/water.json"), "odd");

        assertThat(problem.name()).isEqualTo("missing-document");
        assertThat(problem.message()).isEqualTo("belongs to a crop that has no crop.json");
        assertThat(problem.remedy()).isEqualTo("Write crops/odd/crop.json, or correct the folder's name.");
        assertThatThrownBy(() -> Problem.of("no-such", Place.of("x"))).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no-such");
    }

    @Test
    void every_problem_told_has_words_and_all_words_are_told() throws IOException {
        Set<String> words = Texts.sections("problems.txt").keySet();
        String program;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            program = files.filter(file -> file.toString().endsWith(".java")).map(ProblemTest::text)
                    .collect(Collectors.joining());
        }

        assertThat(words).allMatch(name -> program.contains('"' + name + '"'));
        assertThat(TOLD.matcher(program).results().map(match -> match.group(1))).hasSizeGreaterThan(50)
                .isSubsetOf(words);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
