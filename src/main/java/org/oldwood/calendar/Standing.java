package org.oldwood.calendar;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/** A calendar file that stands where one is to be written. */
final class Standing {
    /** The head of a file of ours ends long before. */
    private static final int HEAD_LINES = 10;

    private static final String UID = "UID:";

    private Standing() {}

    /**
     * Two gardens of one name would write over each other's calendars in one folder.
     *
     * @throws RecordException where the file is that of another garden
     */
    static void mustBe(String calendarUid, Path file) throws IOException {
        Optional<String> there = Files.isRegularFile(file) ? uid(file) : Optional.empty();
        if (there.isPresent() && !there.get().equals(calendarUid)) {
            throw new RecordException(new Problem(
                    "calendar-of-another-garden",
                    Place.of(file.toString()),
                    "holds the calendar of another garden of this name",
                    "Name another folder with --out; or, if that garden is gone, take its" + " file away first."));
        }
    }

    /** The calendar's UID (RFC 7986, 5.3), where the file is one of ours as it was written. */
    private static Optional<String> uid(Path file) throws IOException {
        boolean isOurs = false;
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            for (int i = 0; i < HEAD_LINES; i++) {
                String line = lines.readLine();
                if (line == null || line.equals("BEGIN:VEVENT") || line.equals("BEGIN:VTODO")) {
                    return Optional.empty();
                }
                isOurs |= line.equals("PRODID:" + IcsWriter.PRODUCT);
                if (isOurs && line.startsWith(UID)) {
                    return Optional.of(line.substring(UID.length()));
                }
            }
        } catch (MalformedInputException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }
}
