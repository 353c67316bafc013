package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What ical4j, by its rules of RFC 5545, finds wrong with the calendars that we write. */
class LibraryJudgementTest {
    static Stream<Path> calendars() throws IOException {
        return Files.list(Path.of("calendars")).filter(file -> file.toString().endsWith(".ics"));
    }

    @ParameterizedTest
    @MethodSource("calendars")
    void ical4j_finds_no_fault(Path file) throws IOException, ParserException {
        try (InputStream in = Files.newInputStream(file)) {
            Calendar calendar = new CalendarBuilder().build(in);
            ValidationResult found = calendar.validate(true);

            assertThat(calendar.getComponents()).hasSizeGreaterThan(40);
            assertThat(found.getEntries()).isEmpty();
        }
    }

    @Test
    void ical4j_tells_an_event_that_lacks_what_it_must_have() throws IOException, ParserException {
        String lacking = Files.readString(Path.of("calendars/terrace-school-events.ics"))
                .replaceFirst("UID:.*\r\nDTSTAMP:.*\r\n", "");
        Calendar calendar = new CalendarBuilder().build(new StringReader(lacking));

        assertThat(calendar.validate(true).getEntries()).isNotEmpty();
    }
}
