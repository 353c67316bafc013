package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;

/**
 * What the README shows is what the program says. Run with {@code -Dgolden.update=true} to put the present output into
 * it, then read the difference.
 */
class ReadmeTest {
    private static final String PROMPT = "$ target/oldwood/bin/oldwood ";

    @Test
    void the_output_shown_is_real() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int at = readme.indexOf(PROMPT);
        String block = readme.substring(at, readme.indexOf("\n…\n```", at));
        String command = block.substring(PROMPT.length(), block.indexOf('\n'));
        String shown = block.substring(block.indexOf('\n') + 1);

        Cli.Result result = Cli.in(Path.of("")).run(command.split(" "));

        assertThat(result.exit()).isZero();
        if (Boolean.getBoolean("golden.update")) {
            String now = first(result.out(), shown.lines().count());
            Files.writeString(Path.of("README.md"), readme.replace(shown, now));
            return;
        }
        assertThat(shown.lines().count()).isGreaterThan(10);
        assertThat(result.out()).startsWith(shown);
    }

    private static String first(String text, long lines) {
        return text.lines().limit(lines).collect(Collectors.joining("\n"));
    }

    @Test
    void the_commands_for_an_own_garden_run(@TempDir Path folder) throws IOException {
        List<String> lines = Files.readString(Path.of("README.md")).lines().filter(line -> line.startsWith("oldwood "))
                .toList();
        assertThat(lines).hasSize(2);

        for (String line : lines) {
            String[] words = line.substring(8).replace("\"Our garden\"", "Ours").split(" ");
            Cli.Result result = Cli.in(folder).run(words);
            assertThat(result.exit()).as(line + "\n" + result.err()).isZero();
        }
        assertThat(folder.resolve("our-garden/garden.json")).exists();
    }

    @Test
    void every_place_that_the_contributors_guide_names_is_there() throws IOException {
        List<String> named = Pattern.compile("`([\\w./-]+[./][\\w./-]+)`")
                .matcher(Files.readString(Path.of("DEVELOPERS.md"))).results().map(match -> match.group(1))
                .filter(place -> place.contains("/") || place.matches("[a-z]+(\\.\\w+)+") && !place.endsWith(".json"))
                .filter(place -> !place.startsWith("target/") && !place.equals("pom.xml")).toList();

        assertThat(named).hasSizeGreaterThan(40).allMatch(ReadmeTest::isThere);
    }

    private static boolean isThere(String place) {
        String path = place.contains("/") ? place : place.replace('.', '/');
        return Stream.of("", "src/main/java/org/oldwood/", "src/main/resources/org/oldwood/")
                .anyMatch(root -> Files.exists(Path.of(root + path)) || Files.exists(Path.of(root + path + ".java")));
    }
}
