package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An entry that warns of everything warns of nothing: two cautions and 40 words at most. */
class EntryCautionsTest {
    private static final String CARE = "Take care: ";

    static Stream<Path> calendars() throws IOException {
        return Files.list(Path.of("calendars")).filter(file -> file.toString().endsWith(".ics"));
    }

    @ParameterizedTest
    @MethodSource("calendars")
    void no_entry_has_more_than_two_cautions_or_forty_words_of_them(Path file) throws IOException {
        String unfolded = Files.readString(file).replace("\r\n ", "");
        int cautious = 0;
        for (String entry : unfolded.split("BEGIN:V(EVENT|TODO)", -1)) {
            List<String> told = entry.lines().filter(line -> line.startsWith("DESCRIPTION"))
                    .flatMap(line -> Stream.of(line.split("\\\\n", -1))).filter(line -> line.contains(CARE))
                    .map(line -> line.substring(line.indexOf(CARE) + CARE.length())).toList();
            assertThat(told).hasSizeLessThanOrEqualTo(2).doesNotHaveDuplicates();
            assertThat(told.stream().mapToInt(line -> line.split(" ", -1).length).sum()).as(told.toString())
                    .isLessThanOrEqualTo(40);
            cautious += told.isEmpty() ? 0 : 1;
        }
        assertThat(cautious).isGreaterThan(20);
    }
}
