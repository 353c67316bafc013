package org.oldwood.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Key;
import org.oldwood.crop.RecordReader;
import org.oldwood.crop.Seen;
import org.oldwood.crop.Stage;
import org.oldwood.store.Fields;

/**
 * Stage dates by month and hemisphere, from the {@code calendar} part of a crop's {@code stages} section: a temperate
 * lowland date for the north, six months later in the south. Knows no climate; its ± says so.
 */
public final class CalendarStages implements Stages {
    private final Map<String, Map<Stage, Row>> byCrop = new HashMap<>();

    private record Row(MonthDay north, @Key(least = 0, most = 120) int plusMinusDays, List<String> sources, Seen seen,
            String note) {}

    @Override
    public StageDate date(Crop crop, Season season, Stage stage) {
        Row row = byCrop.computeIfAbsent(crop.id(), id -> read(crop)).get(stage);
        if (row == null) {
            throw new IllegalStateException("crop " + crop.id() + " has no calendar date for " + stage.key());
        }
        // a leaf fall that ends after 1 November lies, by the nominal day, in the season that follows
        boolean startsNext = stage.compareTo(Stage.RIPE) > 0 && row.north.getMonthValue() >= 11;
        Season of = startsNext ? season.plus(1) : season;
        LocalDate day = of.day(row.north);
        String words = "%s by the calendar, the same all over the %s half of the earth (%s)%s".formatted(stage.words(),
                season.hemisphere() == Hemisphere.NORTH ? "northern" : "southern", row.seen.words(),
                row.note.isEmpty() ? "" : "; " + row.note);
        return new StageDate(day, row.plusMinusDays, Basis.CALENDAR, words, row.sources);
    }

    /** Reads a crop's table, so that its problems are told. */
    public static void check(Crop crop) { read(crop); }

    private static Map<Stage, Row> read(Crop crop) {
        Map<Stage, Row> rows = new EnumMap<>(Stage.class);
        Optional<Fields> calendar = crop.section("stages").flatMap(section -> section.object("calendar"));
        if (calendar.isEmpty()) { return rows; }
        Optional<Row> before = Optional.empty();
        for (Stage stage : Stage.values()) {
            Optional<Row> earlier = before; // a crop of a garden's own may know fewer stages than there are
            before = calendar.get().object(stage.key()).map(fields -> RecordReader.read(fields, Row.class))
                    .or(() -> earlier.map(row -> new Row(row.north, row.plusMinusDays, row.sources, row.seen,
                            "the crop gives no day of its own for it")));
            before.ifPresent(row -> rows.put(stage, row));
        }
        return rows;
    }
}
