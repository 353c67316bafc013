package org.oldwood.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.TimeZone;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Trigger;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Windows and reminders on the nights when clocks change, as two readers that share no code hand them over, wherever
 * the reader's machine is. An alarm of a DATE item counts from midnight in the reader's zone (RFC 5545, 3.8.6.3), in
 * exact hours (3.3.6): so it rings once, on the right day, within an hour of eight. The local times expected follow
 * from the zones' published rules.
 */
class ClockChangeTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} on {1} at {2}")
    @CsvSource({"Europe/Berlin, 2027-03-28, 09:00", "Europe/Berlin, 2027-10-31, 07:00",
            "Europe/London, 2027-03-28, 09:00", "Europe/London, 2027-10-31, 07:00",
            "America/New_York, 2027-03-14, 09:00", "America/New_York, 2027-11-07, 07:00",
            "Australia/Hobart, 2027-10-03, 09:00", "Australia/Hobart, 2027-04-04, 07:00",
            "Australia/Lord_Howe, 2027-10-03, 08:30", "Australia/Lord_Howe, 2027-04-04, 07:30",
            "America/Sao_Paulo, 2018-11-04, 09:00", "Atlantic/Azores, 2027-03-28, 09:00",
            "America/Santiago, 2026-09-06, 09:00", "Europe/Berlin, 2027-06-01, 08:00",
            "Pacific/Kiritimati, 2027-06-01, 08:00", "Pacific/Pago_Pago, 2027-06-01, 08:00"})
    void a_reminder_rings_once_on_its_day(ZoneId zone, LocalDate day, LocalTime expected)
            throws IOException, ParserException {
        write(day.minusDays(1), day, day.plusDays(2));
        TimeZone before = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertThat(rings(byIcal4j(1), zone)).isEqualTo(day.atTime(expected));
            assertThat(rings(byBiweekly(1), zone)).isEqualTo(day.atTime(expected));
            for (int i = 0; i < 3; i++) {
                assertThat(byBiweekly(i)).isEqualTo(byIcal4j(i));
            }
            assertThat(List.of(byIcal4j(0).first, byIcal4j(1).first, byIcal4j(2).first))
                    .as("days, which no clock moves").containsExactly(day.minusDays(1), day, day.plusDays(2));
            assertThat(byIcal4j(1).end).isEqualTo(day.plusDays(1));
        } finally {
            TimeZone.setDefault(before);
        }
    }

    /** An event as a reader hands it over: DTSTART, DTEND (not included) and its only TRIGGER. */
    private record Read(LocalDate first, LocalDate end, Duration trigger) {}

    /** The instant by calculation in UTC, shown on a clock in the zone. */
    private static java.time.LocalDateTime rings(Read event, ZoneId zone) {
        Instant midnight = event.first.atStartOfDay(zone).toInstant();
        return ZonedDateTime.ofInstant(midnight.plus(event.trigger), zone).toLocalDateTime();
    }

    private void write(LocalDate... days) throws IOException {
        List<Item> plan = new java.util.ArrayList<>();
        for (int i = 0; i < days.length; i++) {
            LocalDate last = days[i].plusDays(2);
            plan.add(Plans.item("task-" + i, days[i].toString(), last.toString()));
        }
        new Export(Plans.garden(folder), Layout.usual(), days[0].minusDays(9), false).pairs(plan, folder,
                Export.Split.ALL);
    }

    private Read byIcal4j(int i) throws IOException, ParserException {
        List<VEvent> events = new CalendarBuilder().build(new StringReader(text())).getComponents("VEVENT");
        VEvent event = events.get(i);
        DtStart<LocalDate> start = event.getRequiredProperty(Property.DTSTART);
        DtEnd<LocalDate> end = event.getRequiredProperty(Property.DTEND);
        assertThat(event.getAlarms()).hasSize(1);
        VAlarm alarm = event.getAlarms().get(0);
        Trigger trigger = alarm.getRequiredProperty(Property.TRIGGER);
        return new Read(start.getDate(), end.getDate(), Duration.from(trigger.getDuration()));
    }

    private Read byBiweekly(int i) throws IOException {
        biweekly.component.VEvent event = Biweekly.parse(text()).first().getEvents().get(i);
        assertThat(event.getAlarms()).hasSize(1);
        var raw = event.getDateStart().getValue().getRawComponents();
        var rawEnd = event.getDateEnd().getValue().getRawComponents();
        var trigger = event.getAlarms().get(0).getTrigger();
        return new Read(LocalDate.of(raw.getYear(), raw.getMonth(), raw.getDate()),
                LocalDate.of(rawEnd.getYear(), rawEnd.getMonth(), rawEnd.getDate()),
                Duration.ofMillis(trigger.getDuration().toMillis()));
    }

    private String text() throws IOException { return Files.readString(folder.resolve("school-terrace-events.ics")); }
}
