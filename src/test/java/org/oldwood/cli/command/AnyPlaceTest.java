package org.oldwood.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnyPlaceTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"41.5,-81.7,240 | 41.5 N, 81.7 W, 240 m", "41.5,-81.7,240 | 41.5°n,81.7°w,240",
            "-41.3,173.2,40 | 41.3S,173.2E,40", "-41.3,173.2,40 | -41.3, +173.2, 40"})
    void a_place_may_be_told_by_letters(String numbers, String letters) {
        assertThat(suits(letters).out().replace(letters, numbers)).isEqualTo(suits(numbers).out()).contains("haskap");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"41.5E,81.7N", "-41.5S,81.7W", "41.5N,-81.7W", "91N,81W", "41.5N", "N,W"})
    void what_can_be_no_place_is_refused(String place) {
        assertThat(suits(place).exit()).isEqualTo(2);
        assertThat(suits(place).err()).contains("--at must be latitude -90 to 90");
    }

    private Cli.Result suits(String place) { return Cli.in(folder).run("suits", "haskap", "--at", place); }
}
