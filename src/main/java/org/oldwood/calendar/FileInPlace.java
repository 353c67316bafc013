package org.oldwood.calendar;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.oldwood.garden.RecordFiles;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/**
 * A calendar file that stands where one is to be written.
 *
 * @param adopted whether identities were taken over from other files, so that a calendar may have another UID
 * @param replacing whether the person said that it may be any file
 */
record FileInPlace(Export.Garden garden, boolean adopted, boolean replacing) {
    /** The head of a file of ours ends long before. */
    private static final int HEAD_LINES = 10;

    private static final String UID = "UID:";

    /**
     * Two gardens of one name would write over each other's calendars in one folder, and a slip of the hand over any
     * other file.
     *
     * @throws RecordException where the file is not this calendar as we wrote it
     */
    void mustGiveWay(String calendarUid, Path file) throws IOException {
        Optional<String> there = Files.isRegularFile(file) && !replacing ? uid(file) : Optional.empty();
        if (!adopted && there.filter(uid -> !uid.isEmpty() && !uid.equals(calendarUid)).isPresent()) {
            throw new RecordException(Problem.of("calendar-of-another-garden", Place.of(file.toString())));
        }
        RecordFiles.mayReplace(garden.folder(), file, replacing || there.isPresent());
    }

    /** Whether the file is this calendar as we wrote it. */
    boolean isOurs(String calendarUid, Path file) throws IOException {
        return Files.isRegularFile(file) && uid(file).filter(uid -> adopted || uid.equals(calendarUid)).isPresent();
    }

    /**
     * The calendar's UID (RFC 7986, 5.3), where the file is one of ours as it was written; empty before ours had one.
     */
    private Optional<String> uid(Path file) throws IOException {
        boolean isOurs = false;
        try (BufferedReader lines = Files.newBufferedReader(file)) {
            for (int i = 0; i < HEAD_LINES; i++) {
                String line = lines.readLine();
                if (line == null || line.equals("BEGIN:VEVENT") || line.equals("BEGIN:VTODO")) { break; }
                isOurs |= line.equals("PRODID:" + Export.PRODUCT);
                if (isOurs && line.startsWith(UID)) { return Optional.of(line.substring(UID.length())); }
            }
        } catch (MalformedInputException e) {
            return Optional.empty();
        }
        return isOurs ? Optional.of("") : Optional.empty();
    }
}
