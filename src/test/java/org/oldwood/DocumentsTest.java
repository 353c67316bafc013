package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The documents are short, and hold together: their words are counted, their links and tables looked at. */
class DocumentsTest {
    private static final int MOST_WORDS = 20_000;

    private static final Pattern LINK = Pattern.compile("]\\(([^)#\\s]+)(?:#[^)]*)?\\)");

    static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        try (Stream<Path> files = Files.list(Path.of("docs"))) {
            files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages;
    }

    /** Counted as {@code wc -w} does: what white space parts, the bars of tables too. */
    @Test
    void all_together_they_keep_to_their_number_of_words() throws IOException {
        long words = 0;
        for (Path page : pages()) {
            words += Files.readString(page).strip().split("\\s+").length;
        }

        assertThat(words).as("words in README.md, DEVELOPERS.md and docs/*.md").isBetween(10_000L, (long) MOST_WORDS);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void every_link_leads_to_a_file(Path page) throws IOException {
        Path folder = page.toAbsolutePath().getParent();
        List<String> dead = LINK.matcher(Files.readString(page)).results().map(link -> link.group(1))
                .filter(link -> !link.contains("://") && !Files.exists(folder.resolve(link))).toList();

        assertThat(dead).isEmpty();
    }

    /** A row with fewer or more cells than its head is shown torn, or loses what is over. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void every_table_is_whole(Path page) throws IOException {
        long cells = 0;
        for (String line : Files.readAllLines(page)) {
            long here = line.startsWith("|") ? cells(line) : 0;
            if (cells > 0 && here > 0) { assertThat(here).as(line).isEqualTo(cells); }
            cells = here;
        }
    }

    private static long cells(String line) {
        return line.replaceAll("`[^`]*`|\\\\\\|", "").chars().filter(sign -> sign == '|').count() - 1;
    }

    /** Every page is found from README or the contributor's guide, by one link or more. */
    @Test
    void every_page_is_linked() throws IOException {
        StringBuilder links = new StringBuilder();
        for (Path page : pages()) {
            LINK.matcher(Files.readString(page)).results()
                    .forEach(link -> links.append(' ').append(Path.of(link.group(1)).getFileName()).append(' '));
        }
        assertThat(pages()).allSatisfy(page -> {
            if (!page.endsWith("README.md")) { assertThat(links.toString()).contains(" " + page.getFileName() + " "); }
        });
    }
}
