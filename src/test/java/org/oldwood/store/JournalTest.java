package org.oldwood.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {
    @TempDir
    Path folder;

    private Path file() { return folder.resolve("journal.jsonl"); }

    private static void append(Journal journal, String... lines) throws IOException {
        try (Journal.Writing writing = journal.begin()) {
            writing.append(List.of(lines));
        }
    }

    @Test
    void what_was_appended_is_read_back_in_order() throws IOException {
        Journal journal = new Journal(file());
        append(journal, "{\"a\":1}", "{\"a\":2}");
        append(journal, "{\"a\":3}");

        assertThat(journal.read().lines()).extracting(Journal.Line::text).containsExactly("{\"a\":1}", "{\"a\":2}",
                "{\"a\":3}");
    }

    @Test
    void a_tail_torn_at_any_byte_is_set_aside_and_nothing_else_is_lost() throws IOException {
        String whole = "{\"a\":1}\n{\"b\":\"grün\"}\n";
        byte[] bytes = whole.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        for (int cut = 9; cut < bytes.length - 1; cut++) {
            Files.write(file(), java.util.Arrays.copyOf(bytes, cut));
            Journal journal = new Journal(file());
            boolean torn = cut < bytes.length - 1 && cut > 8;
            assertThat(journal.read().torn().isPresent()).as("cut at " + cut).isEqualTo(torn);

            append(journal, "{\"c\":3}");

            assertThat(journal.read().lines()).as("cut at " + cut).extracting(Journal.Line::text)
                    .containsExactly("{\"a\":1}", "{\"c\":3}");
        }
        try (var files = Files.list(folder)) {
            assertThat(files.filter(path -> path.getFileName().toString().contains("torn")).count())
                    .isEqualTo(bytes.length - 10);
        }
    }

    @Test
    void a_whole_last_line_without_its_end_counts() throws IOException {
        Files.writeString(file(), "{\"a\":1}");
        Journal journal = new Journal(file());
        append(journal, "{\"b\":2}");

        assertThat(Files.readString(file())).isEqualTo("{\"a\":1}\n{\"b\":2}\n");
    }

    @Test
    void two_writers_are_kept_apart() throws IOException {
        Path lock = folder.resolve(".journal.jsonl.lock");
        try (FileChannel other = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            other.lock();

            assertThatThrownBy(() -> append(new Journal(file()), "{}")).isInstanceOf(RecordException.class)
                    .hasMessageContaining("being written by another program");
        }
        assertThat(file()).doesNotExist();
    }
}
