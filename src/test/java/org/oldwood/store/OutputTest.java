package org.oldwood.store;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputTest {
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"abcdef,abc,def", "abcdef,abX,def", "abcdef,abc,deX", "abcdef,abc,d", "abcdef,abc,defg", "abcdef,'',''",
            "'',abc,def"})
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
        Path left = Files.writeString(folder.resolve(".oldwood-1.new"), "of a run that was stopped");
        Files.setLastModifiedTime(left, LONG_AGO);

        try (Output output = Output.to(file)) {
            output.out().write("abX".getBytes(US_ASCII));
        }

        assertThat(file).hasContent("abcdef");
        assertThat(names()).containsExactly("file");
    }

    @Test
    void until_it_is_finished_the_old_file_stands() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "abcdef");

        try (Output output = Output.to(file)) {
            output.out().write("abX".getBytes(US_ASCII));
            assertThat(file).hasContent("abcdef");
            output.finish();
        }

        assertThat(file).hasContent("abX");
    }

    @Test
    void a_link_stays_a_link_and_a_mode_stays_a_mode() throws IOException {
        Path real = Files.writeString(Files.createDirectory(folder.resolve("real")).resolve("file"), "old");
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("real", "file"));

        assertThat(Output.write(link, "new")).isTrue();

        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(real))).isEqualTo("rw-r-----");
    }

    @Test
    void a_link_to_nothing_is_filled_and_one_to_itself_refused() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("file"));
        Path ring = Files.createSymbolicLink(folder.resolve("ring"), Path.of("ring"));

        assertThat(Output.write(link, "new")).isTrue();

        assertThat(folder.resolve("file")).hasContent("new");
        assertThatThrownBy(() -> Output.write(ring, "new")).hasMessageContaining("leads to itself");
        assertThatThrownBy(() -> Output.write(folder, "new")).hasMessageContaining("no file");
    }

    @Test
    void many_that_write_at_once_tear_nothing() throws Exception {
        Path file = folder.resolve("file");
        List<Future<Boolean>> runs = new ArrayList<>();
        ExecutorService pool = Executors.newFixedThreadPool(4);
        for (int i = 0; i < 40; i++) {
            String text = String.valueOf((char) ('a' + i % 26)).repeat(300_000);
            runs.add(pool.submit(() -> Output.write(file, text)));
        }
        for (Future<Boolean> run : runs) {
            run.get();
        }
        pool.shutdown();

        assertThat(Files.readString(file).chars().distinct().count()).isEqualTo(1);
        assertThat(Files.size(file)).isEqualTo(300_000);
        assertThat(names()).containsExactly("file");
    }

    private static boolean write(Path file, String one, String two) throws IOException {
        try (Output output = Output.to(file)) {
            output.out().write(one.getBytes(US_ASCII));
            output.out().write(two.getBytes(US_ASCII));
            return output.finish();
        }
    }

    private Stream<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList().stream();
        }
    }
}
