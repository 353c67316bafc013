package org.oldwood.calendar;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplaceTest {
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "abcdef,abc,def",
        "abcdef,abX,def",
        "abcdef,abc,deX",
        "abcdef,abc,d",
        "abcdef,abc,defg",
        "abcdef,'',''",
        "'',abc,def"
    })
    void what_stands_is_what_was_written(String before, String one, String two) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), before);
        Files.setLastModifiedTime(file, LONG_AGO);

        boolean isChanged = write(file, one, two);

        assertThat(isChanged).isEqualTo(!before.equals(one + two));
        assertThat(file).hasContent(one + two);
        assertThat(Files.getLastModifiedTime(file).equals(LONG_AGO)).isEqualTo(!isChanged);
        assertThat(names()).containsExactly("file");
    }

    @Test
    void a_new_file_is_written() throws IOException {
        assertThat(write(folder.resolve("file"), "abc", "def")).isTrue();

        assertThat(folder.resolve("file")).hasContent("abcdef");
        assertThat(names()).containsExactly("file");
    }

    @Test
    void what_was_not_finished_leaves_no_trace() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "abcdef");
        Files.writeString(folder.resolve(".file.new"), "of a run that was stopped");

        assertThatThrownBy(() -> Replace.file(file, out -> {
                    out.write("abX".getBytes(US_ASCII));
                    throw new IOException("no room");
                }))
                .hasMessage("no room");

        assertThat(file).hasContent("abcdef");
        assertThat(names()).containsExactly("file");
    }

    @Test
    void until_it_is_finished_the_old_file_stands() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "abcdef");

        Replace.file(file, out -> {
            out.write("abX".getBytes(US_ASCII));
            assertThat(file).hasContent("abcdef");
        });

        assertThat(file).hasContent("abX");
    }

    private static boolean write(Path file, String one, String two) throws IOException {
        return Replace.file(file, out -> {
            out.write(one.getBytes(US_ASCII));
            out.write(two.getBytes(US_ASCII));
        });
    }

    private Stream<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList().stream();
        }
    }
}
