package org.oldwood.cli.command;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.oldwood.garden.Site;
import org.oldwood.store.IsoDate;
import picocli.CommandLine.TypeConversionException;

/**
 * What day it is where nobody says: that of {@code SOURCE_DATE_EPOCH} (seconds since 1970, UTC) if it is set, else that
 * of the clock in the garden's time zone.
 */
final class Today {
    public static final String VARIABLE = "SOURCE_DATE_EPOCH";

    private Today() {}

    public static LocalDate of(Map<String, String> environment, Optional<String> zone) {
        String epoch = environment.getOrDefault(VARIABLE, "").trim();
        if (!epoch.isEmpty()) {
            try {
                Instant instant = Instant.ofEpochSecond(Long.parseLong(epoch));
                return IsoDate.find(LocalDate.ofInstant(instant, ZoneOffset.UTC).toString())
                        .orElseThrow(() -> new DateTimeException(IsoDate.RULE));
            } catch (NumberFormatException | DateTimeException e) {
                throw new TypeConversionException(
                        "%s must be whole seconds since 1970 but is \"%s\". Unset it, or give --today DATE."
                                .formatted(VARIABLE, epoch));
            }
        }
        // a zone that is not known is check's to report; here the machine's own will do
        return LocalDate.now(zone.flatMap(Site::zone).orElseGet(ZoneId::systemDefault));
    }

    /** Reads dates on the command line. */
    static LocalDate read(String text) {
        return IsoDate.find(text).orElseThrow(
                () -> new TypeConversionException("must be %s, but is \"%s\"".formatted(IsoDate.RULE, text)));
    }
}
