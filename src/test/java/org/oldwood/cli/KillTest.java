package org.oldwood.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.record.NotingChild;
import org.oldwood.garden.Entry;
import org.oldwood.garden.GardenFolder;

/**
 * A process that notes is killed (SIGKILL) at random moments, again and again: every entry that it acknowledged is
 * there, once, the folder opens, and nothing that was there before is lost. {@code -Dkills=400} makes the long run
 * whose figures stand in {@code docs/validation.md}. A kill does not take from the system what it was given, as a power
 * cut would; that each entry is forced to the disk before it is acknowledged is for {@code Journal} to do, and was seen
 * in system calls.
 */
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 12);
    private static final int LIVES_A_FOLDER = 10;
    private static final long SEED = 20261125;

    @TempDir
    Path scratch;

    private final Random random = new Random(SEED);
    private final Set<String> acknowledged = new HashSet<>();
    private int all;
    private int unsaid;
    private int torn;

    @Test
    void every_acknowledged_entry_survives_a_kill() throws Exception {
        Path folder = scratch;
        for (int kill = 0; kill < KILLS; kill++) {
            if (kill % LIVES_A_FOLDER == 0) {
                folder = NotingChild.garden(Files.createDirectory(scratch.resolve("g" + kill)));
                acknowledged.clear();
            }
            live(folder, kill);
        }

        assertThat(all).as("entries acknowledged").isGreaterThan(KILLS);
        System.out.printf(
                "kills %d, entries acknowledged %d, lost 0, written but not yet acknowledged %d, torn lines %d%n",
                KILLS, all, unsaid, torn);
    }

    private void live(Path folder, int kill) throws Exception {
        int before = GardenFolder.open(folder).journal().size();
        byte[] journal = Files.readAllBytes(folder.resolve("journal.jsonl"));
        Path printed = scratch.resolve("printed-" + kill);
        Process child = NotingChild.started(folder, "life-" + kill, Integer.MAX_VALUE).redirectOutput(printed.toFile())
                .start();
        // most kills while it notes, some while it starts
        boolean waits = kill % 8 != 7;
        while (waits && Files.size(printed) == 0 && child.isAlive()) {
            Thread.sleep(5);
        }
        Thread.sleep(random.nextInt(waits ? 300 : 500));
        child.destroyForcibly().waitFor();
        List<String> ids = NotingChild.acknowledged(Files.readString(printed));
        acknowledged.addAll(ids);
        all += ids.size();

        GardenFolder opened = GardenFolder.open(folder);
        opened.on(java.time.LocalDate.MAX);
        assertThat(opened.problems().list()).as("life %d, seed %d", kill, SEED).isEmpty();
        List<String> there = opened.journal().stream().map(Entry::id).toList();
        assertThat(there).doesNotHaveDuplicates().containsAll(acknowledged);
        assertThat(Files.readAllBytes(folder.resolve("journal.jsonl")))
                .as("what was there stays, byte for byte, up to a torn line").startsWith(whole(journal));
        unsaid += there.size() - before - ids.size();
        torn += opened.notices().isEmpty() ? 0 : 1;
    }

    /** Up to the last line end: a torn line is set aside by the next writer. */
    private static byte[] whole(byte[] journal) {
        int end = journal.length;
        while (end > 0 && journal[end - 1] != '\n') {
            end--;
        }
        return java.util.Arrays.copyOf(journal, end);
    }

    @Test
    void two_processes_that_note_at_once_lose_nothing() throws Exception {
        Path folder = NotingChild.garden(scratch);
        int before = GardenFolder.open(folder).journal().size();

        List<Process> children = new ArrayList<>();
        for (String name : List.of("one", "two", "three")) {
            children.add(NotingChild.start(folder, name, 15));
        }
        List<String> ids = new ArrayList<>();
        for (Process child : children) {
            ids.addAll(NotingChild.acknowledged(new String(child.getInputStream().readAllBytes(), UTF_8)));
            assertThat(child.waitFor()).isZero();
        }

        GardenFolder opened = GardenFolder.open(folder);
        assertThat(opened.problems().list()).isEmpty();
        assertThat(opened.notices()).isEmpty();
        assertThat(ids).hasSize(45).doesNotHaveDuplicates();
        assertThat(opened.journal()).hasSize(before + 45);
        assertThat(opened.journal().stream().map(Entry::id)).containsAll(ids);
    }

    @Test
    void a_copy_taken_while_entries_are_written_opens() throws Exception {
        Path folder = NotingChild.garden(scratch.resolve("garden"));
        Process child = NotingChild.start(folder, "busy", Integer.MAX_VALUE);
        try {
            int atLeast = 0;
            for (int i = 0; i < 40 || (atLeast <= 10 && i < 2000); i++) {
                Path copy = Files.createDirectory(scratch.resolve("copy" + i));
                for (String name : List.of("garden.json", "journal.jsonl")) {
                    Files.copy(folder.resolve(name), copy.resolve(name));
                }
                GardenFolder opened = GardenFolder.open(copy);
                opened.on(java.time.LocalDate.MAX);
                assertThat(opened.problems().list()).isEmpty();
                assertThat(opened.journal().size()).isGreaterThanOrEqualTo(atLeast);
                atLeast = opened.journal().size();
                Thread.sleep(25);
            }
            assertThat(atLeast).as("it was writing meanwhile").isGreaterThan(10);
        } finally {
            child.destroyForcibly().waitFor();
        }
    }
}
