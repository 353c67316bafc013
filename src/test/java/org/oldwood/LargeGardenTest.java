package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oldwood.cli.command.Cli;

/**
 * Ten times the plants cost at most eleven times the work. Work is measured in bytes allocated, which do not hang on
 * what else the machine does; how long it takes stands in docs/benchmarks.md.
 */
class LargeGardenTest {
    private static final int FEW = 100;
    private static final double MOST_TIMES = 11;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"check", "tasks", "calendar"})
    void work_grows_with_the_plants(String command) {
        garden("warm", FEW);
        work(command, "warm");
        garden("few", FEW);
        garden("many", 10 * FEW);

        double few = work(command, "few");
        double many = work(command, "many");

        assertThat(many / few).isLessThanOrEqualTo(MOST_TIMES);
    }

    @Test
    void every_plant_of_a_large_garden_is_in_its_calendar() throws IOException {
        garden("many", 1000);
        Cli.Result result = Cli.in(folder).run("calendar", "--each", "--garden", "many", "--today", "2026-11-25");
        assertThat(result.exit()).as(result.err()).isZero();

        Path todos = folder.resolve("many/calendars/long-rows-todos.ics");
        try (Stream<String> lines = Files.lines(todos)) {
            assertThat(lines.filter(line -> line.equals("BEGIN:VTODO")).count()).isGreaterThanOrEqualTo(1000);
        }
    }

    private void garden(String name, int plants) { LargeGarden.write(plants, folder.resolve(name)); }

    private long work(String command, String garden) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        Cli.Result result = Cli.in(folder).run(command, "--garden", garden, "--today", "2026-11-25");
        assertThat(result.exit()).as(result.err()).isZero();
        return threads.getCurrentThreadAllocatedBytes() - before;
    }
}
