package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the program says. */
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
        assertThat(shown.lines().count()).isGreaterThan(10);
        assertThat(result.out()).startsWith(shown);
    }

    @Test
    void the_commands_for_an_own_garden_run(@TempDir Path folder) throws IOException {
        List<String> lines =
                Files.readString(Path.of("README.md"))
                        .lines()
                        .filter(line -> line.startsWith("oldwood "))
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
    void every_page_it_links_to_is_there() throws IOException {
        for (String page :
                List.of(
                        "README.md",
                        "DEVELOPERS.md",
                        "docs/method.md",
                        "docs/validation.md",
                        "docs/benchmarks.md")) {
            Path parent = Path.of(page).toAbsolutePath().getParent();
            String text = Files.readString(Path.of(page));
            for (int at = text.indexOf("]("); at >= 0; at = text.indexOf("](", at + 1)) {
                String target = text.substring(at + 2, text.indexOf(')', at));
                if (!target.contains("://")) {
                    assertThat(parent.resolve(target)).as(page + " links to " + target).exists();
                }
            }
        }
    }
}
