package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Figure;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.words.Words;

/** What the soil tests of a bed say. */
final class SoilRecord {
    private static final int MONTHS_PER_YEAR = 12;
    private static final int MONTHS_TO_TELL_YEARS = 24;
    private static final List<EntryKind> FALSIFYING = List.of(EntryKind.FED, EntryKind.LIMED, EntryKind.ACIDIFIED);

    private SoilRecord() {}

    /**
     * The last measured pH.
     *
     * @param date the day of the test
     */
    public record Ph(double ph, LocalDate date, boolean freeLime) {}

    public static Optional<Ph> ph(BedState bed) {
        return Entries.last(bed.entries(), EntryKind.SOIL_TEST, each -> each.number("ph").isPresent())
                .map(last -> new Ph(last.number("ph").orElseThrow(), last.date(), last.flag("freeLime")));
    }

    /** The last lime, sulphur, feed or manure so shortly before a test that it reads wrong. */
    static Optional<Entry> falsified(FeedingBooks books, BedState bed, LocalDate tested) {
        LocalDate from = tested.minusDays((long) books.tables().limits().retestAfter().is());
        return bed.entries().stream().filter(each -> FALSIFYING.contains(each.kind()))
                .filter(each -> each.date().isAfter(from) && !each.date().isAfter(tested)).reduce((a, b) -> b);
    }

    /** {@code 3 years old}: how old a test is on a day. */
    static String age(LocalDate tested, LocalDate day) {
        long months = ChronoUnit.MONTHS.between(tested, day);
        return months < MONTHS_TO_TELL_YEARS ? Words.count(Math.max(0, months), "month old", "months old")
                : Words.count(months / MONTHS_PER_YEAR, "year old", "years old");
    }

    /** Why a test is too old to give lime or sulphur by; empty where it is young enough. */
    static Optional<String> tooOld(FeedingBooks books, LocalDate tested, LocalDate day) {
        Figure every = books.tables().limits().soilTestEvery();
        return ChronoUnit.MONTHS.between(tested, day) >= every.is() * MONTHS_PER_YEAR
                ? Optional.of("The test of %s is %s, and one holds for %s: test again first."
                        .formatted(tested, age(tested, day), every.inWords()))
                : Optional.empty();
    }
}
