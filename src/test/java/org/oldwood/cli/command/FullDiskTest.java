package org.oldwood.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.calendar.LoopbackServer;
import org.oldwood.cli.Main;
import org.oldwood.cli.record.NotingChild;
import org.oldwood.garden.Entry;
import org.oldwood.garden.GardenFolder;

/**
 * Writing that fails half-way. The fault is injected by the system: a process may write no file beyond a size
 * ({@code ulimit -f}), so that a write ends in the middle of a line, as on a full disk.
 * {@code src/test/scripts/full-disk.sh} does the same on a real, tiny file system.
 */
class FullDiskTest {
    @TempDir
    Path scratch;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 9, 16})
    void a_full_disk_loses_no_acknowledged_entry_and_leaves_no_half_one(int kilobytes) throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "a shell sets the limit");
        Path folder = NotingChild.garden(scratch);

        Process child = NotingChild.start(folder, "full", 1000, "/bin/bash", "-c",
                "ulimit -f " + kilobytes + "; exec \"$@\"", "limited");
        String printed = text(child.getInputStream().readAllBytes());
        String said = text(child.getErrorStream().readAllBytes());

        assertThat(child.waitFor()).as(said).isEqualTo(Failures.UNEXPECTED);
        assertThat(said).contains("journal.jsonl", "the disk is not full").doesNotContain("fault of the program");
        GardenFolder opened = GardenFolder.open(folder);
        assertThat(opened.problems().list()).isEmpty();
        assertThat(opened.notices()).as("no half line").isEmpty();
        assertThat(opened.journal().stream().map(Entry::id)).doesNotHaveDuplicates()
                .containsAll(NotingChild.acknowledged(printed));
        assertThat(note(folder).exit()).as("with room again it goes on").isZero();
    }

    @Test
    void calendars_that_do_not_fit_leave_the_old_ones_whole() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "a shell sets the limit");
        Path folder = NotingChild.garden(scratch);
        calendar(folder, "2026-11-25");
        List<String> before = files(folder);
        Process child = limited("calendar", "--garden=" + folder, "--today=2027-02-01", "--out=" + folder);
        String said = text(child.getInputStream().readAllBytes());

        assertThat(child.waitFor()).as(said).isEqualTo(Failures.UNEXPECTED);
        assertThat(files(folder)).isEqualTo(before);
        Cli.Result again = calendar(folder, "2027-02-01");
        assertThat(again.exit()).as(again.err()).isZero();
    }

    @Test
    void what_was_published_and_does_not_fit_to_be_remembered_is_told() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "a shell sets the limit");
        Path folder = NotingChild.garden(scratch);
        try (LoopbackServer server = new LoopbackServer()) {
            String address = server.address().toString();
            Process child = limited("calendar", "publish", address, "--garden=" + folder, "--today=2026-11-25");
            String said = text(child.getInputStream().readAllBytes()).replaceAll("\\s+", " ");

            assertThat(child.waitFor()).as(said).isEqualTo(1);
            assertThat(said).contains("Published as said, but not remembered: ", "calendar-state.jsonl", "run it again")
                    .doesNotContain("fault of the program");
            int there = server.objects.size();
            assertThat(there).isPositive();
            Cli.Result again = Cli.in(folder).run("calendar", "publish", address, "--today=2026-11-25");
            assertThat(again.exit()).as(again.err()).isZero();
            assertThat(server.objects).hasSize(there);
        }
    }

    private static Process limited(String... command) throws IOException {
        List<String> all = new ArrayList<>(List.of("/bin/bash", "-c", "ulimit -f 2; exec \"$@\"", "limited",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Main.class.getName()));
        all.addAll(List.of(command));
        return new ProcessBuilder(all).redirectErrorStream(true).start();
    }

    @Test
    void a_folder_that_may_not_be_written_can_be_read_and_says_so_when_noting() throws IOException {
        Path folder = NotingChild.garden(Files.createDirectory(scratch.resolve("garden")));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeTrue(!Files.isWritable(folder), "rights bind all but the superuser");
            Cli.Result noted = note(folder);
            Cli.Result tasks = Cli.in(folder).run("tasks", "--today=2026-11-25");
            Cli.Result calendar = calendar(folder, "2026-11-25");

            assertThat(noted.exit()).isEqualTo(Failures.UNEXPECTED);
            assertThat(noted.err()).contains("that you may write in it");
            assertThat(tasks.exit()).as(tasks.err()).isZero();
            assertThat(calendar.exit()).isEqualTo(Failures.UNEXPECTED);
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private static String text(byte[] bytes) { return new String(bytes, StandardCharsets.UTF_8); }

    private static Cli.Result calendar(Path folder, String today) {
        return Cli.in(folder).run("calendar", "--out=.", "--today=" + today);
    }

    private static Cli.Result note(Path folder) {
        return Cli.in(folder).run("note", "watered", "--bed=" + NotingChild.BED, "--litres=5", "--today=2026-11-25");
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).sorted().map(file -> {
                try {
                    return file.getFileName() + "\n" + Files.readString(file);
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }).toList();
        }
    }
}
