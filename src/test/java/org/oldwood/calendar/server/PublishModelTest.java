package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.Bounds;

/**
 * Plans that change, people who tick, move, word, delete and import, state that is lost, and runs that die, lose the
 * connection or meet another one at any request, in random order: nothing that a person wrote vanishes unsaid, nothing
 * stands twice, a tick is read back once with its day, strangers are untouched, a trial says what the run does. With
 * {@code -Dsequences=N} as many sequences as one likes, from {@code -Dfirst=N} on.
 */
class PublishModelTest {
    private static final int SEQUENCES = Integer.getInteger("sequences", 200);
    private static final int FIRST = Integer.getInteger("first", 0);

    @Test
    void nothing_of_the_persons_is_lost_in_any_order() throws IOException {
        Path root = folder();
        long began = System.nanoTime();
        Bounds bounds = new Bounds(SEQUENCES > 1000);
        List<String> failures = new ArrayList<>();
        try {
            for (int seed = FIRST; seed < FIRST + SEQUENCES; seed++) {
                bounds.begin();
                Path folder = Files.createDirectories(root.resolve("g" + seed));
                try {
                    new ModelSequence(folder, new Random(seed), "sequence " + seed).run();
                } catch (AssertionError | RuntimeException e) {
                    failures.add(String.valueOf(e));
                }
                empty(folder);
                bounds.end();
            }
        } finally {
            empty(root);
        }
        System.out.printf("%d sequences in %d s, the longest %d ms%n", SEQUENCES,
                Duration.ofNanos(System.nanoTime() - began).toSeconds(), bounds.longest().toMillis());
        assertThat(failures.subList(0, Math.min(failures.size(), 5))).as(failures.size() + " sequences").isEmpty();
        assertThat(bounds.longest()).isLessThan(Bounds.LONGEST);
    }

    /** The memory is lost, and of finished work only the to-do stands: the second run found more to do than the first. */
    @ParameterizedTest
    @ValueSource(ints = {903525, 906631})
    void finished_work_of_which_the_to_do_stands_gets_its_event_at_once(int seed) throws IOException { holds(seed); }

    /** A completed to-do that was deleted and made anew, then called otherwise by the plan, or begun by a client. */
    @ParameterizedTest
    @ValueSource(ints = {905903, 907488, 908890})
    void completed_work_is_left_alone(int seed) throws IOException { holds(seed); }

    private static void holds(int seed) throws IOException {
        Path folder = folder();
        try {
            new ModelSequence(folder, new Random(seed), "sequence " + seed).run();
        } finally {
            empty(folder);
        }
    }

    /** In memory where the system has such a place: forcing to a disk, which other tests try, is most of the time. */
    private static Path folder() throws IOException {
        Path memory = Path.of("/dev/shm");
        return Files.isWritable(memory) ? Files.createTempDirectory(memory, "oldwood-model")
                : Files.createTempDirectory("oldwood-model");
    }

    private static void empty(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
