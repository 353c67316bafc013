package org.oldwood.garden;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.oldwood.garden.Bed.Roof;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.Problems;

/** Reads {@code garden.json}. The format is described in {@code docs/record.md}. */
public final class GardenReader {
    /** The format version that this program writes. */
    public static final int FORMAT = 1;

    private static final Pattern ID = Pattern.compile("[a-z0-9]([a-z0-9-]{0,62}[a-z0-9])?");

    private GardenReader() {}

    /** The garden, or nothing where the file has problems; all of them go to {@code problems}. */
    public static Optional<Garden> read(Json json, Problems problems) {
        int before = problems.count();
        Fields fields = Fields.of(json, problems);
        if (isNewer(fields)) { return Optional.empty(); }
        fields.count("format", 1, FORMAT);
        fields.optionalText("$schema");
        Garden garden = new Garden(fields.text("name"), id(fields), fields.optionalDate("since"), site(fields),
                fields.raw("climate"), beds(fields), workDays(fields), fields.count("minutesPerDay", 0, 1440, 0),
                fields.texts("materials"), Wishes.read(fields), choices(fields));
        fields.done();
        return problems.count() == before ? Optional.of(garden) : Optional.empty();
    }

    /** What a later format means cannot be guessed, so nothing else is said of it. */
    private static boolean isNewer(Fields fields) {
        if (fields.raw("format").orElse(null) instanceof Json.Num num && num.value() > FORMAT) {
            fields.tell("format", "newer-format", num.written(), FORMAT);
            return true;
        }
        return false;
    }

    private static UUID id(Fields fields) {
        String text = fields.text("id");
        try {
            if (text.length() == 36) { return UUID.fromString(text); }
        } catch (IllegalArgumentException e) {
            // told below
        }
        if (!text.isEmpty()) { fields.tell("id", "not-a-uuid", text); }
        return new UUID(0, 0);
    }

    private static Site site(Fields fields) {
        Optional<Fields> found = fields.object("site");
        if (found.isEmpty()) {
            fields.tell("site", "missing-key site");
            return new Site(0, 0, 0, "UTC");
        }
        Fields site = found.get();
        Site read = new Site(site.number("latitude", -90, 90), site.number("longitude", -180, 180),
                site.number("heightM", -430, 6000, 0), zone(site));
        site.done();
        return read;
    }

    private static String zone(Fields site) {
        String name = site.text("zone", "UTC");
        if (!name.isEmpty() && Site.zone(name).isEmpty()) { site.tell("zone", "unknown-zone", name); }
        return name;
    }

    private static List<Bed> beds(Fields fields) {
        List<Bed> beds = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Fields bed : fields.objects("beds")) {
            Bed read = bed(bed);
            if (!ids.add(read.id())) { bed.tell("id", "duplicate-id bed", read.id()); }
            beds.add(read);
        }
        return beds;
    }

    private static Bed bed(Fields bed) {
        String id = bed.text("id");
        if (!id.isEmpty() && !isId(id)) { bed.tell("id", "not-an-id", idRule(id)); }
        Bed read = new Bed(id, bed.text("name", id), area(bed), bed.optionalText("texture"),
                bed.optionalNumber("rootableDepthCm", 5, 300), bed.number("stonesPercent", 0, 80, 0),
                bed.number("shade", 0, 1, 0), bed.flag("windy", false), bed.object("roof").map(GardenReader::roof),
                bed.number("competing", 0, 0.9, 0), bed.optionalNumber("tapLitresPerMinute", 0.1, 1000),
                bed.optionalNumber("organicPercent", 0, 100), bed.optionalNumber("tubLitres", 1, 100_000),
                bed.flag("sheltered", false), rows(bed));
        bed.done();
        return read;
    }

    /** Rows of plants, each a text of ids with commas between; no plant stands in two places. */
    private static List<List<String>> rows(Fields bed) {
        List<List<String>> rows = bed.texts("rows").stream().map(row -> List.of(row.strip().split("\\s*,\\s*")))
                .toList();
        Set<String> seen = new HashSet<>();
        rows.stream().flatMap(List::stream).filter(id -> !isId(id) || !seen.add(id)).findFirst().ifPresent(
                id -> bed.tell("rows", "bad-rows", isId(id) ? "names \"%s\" twice".formatted(id) : idRule(id)));
        return rows;
    }

    private static double area(Fields bed) {
        OptionalDouble area = bed.optionalNumber("areaM2", 0.01, 100_000);
        if (area.isEmpty()) { bed.tell("areaM2", "missing-key area"); }
        return area.orElse(1);
    }

    private static Roof roof(Fields fields) {
        Roof roof = new Roof(fields.number("areaM2", 0.1, 10_000), fields.text("surface"));
        fields.done();
        return roof;
    }

    private static Set<DayOfWeek> workDays(Fields fields) {
        List<String> names = Stream.of(DayOfWeek.values()).map(day -> day.name().toLowerCase(Locale.ROOT)).toList();
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String word : fields.texts("workDays")) {
            int at = names.indexOf(word);
            if (at < 0) {
                fields.tell("workDays", "unknown-word day", word);
            } else {
                days.add(DayOfWeek.of(at + 1));
            }
        }
        return days.isEmpty() ? EnumSet.allOf(DayOfWeek.class) : days;
    }

    private static Map<String, String> choices(Fields fields) {
        Map<String, String> choices = new LinkedHashMap<>();
        fields.object("choices").ifPresent(inner -> inner.keys().forEach(key -> choices.put(key, inner.text(key))));
        return choices;
    }

    /** True of ids: small letters, digits and hyphens, at most 64, no hyphen at the ends. */
    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    static String idRule(String seen) {
        return "must be made of small letters, digits and hyphens, at most 64, but is \"" + seen + "\"";
    }
}
