package org.oldwood.craft.feeding;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Figure;
import org.oldwood.crop.Key;
import org.oldwood.crop.Notes;
import org.oldwood.crop.RecordReader;
import org.oldwood.store.Fields;

/**
 * What a crop asks of its soil and food: the section {@code feeding} of its profile.
 *
 * @param targetPh the pH to hold, with the range that is allowed
 * @param acidSoil true of a crop of acid soils, which is never limed unless a test says so
 * @param limeOnlyBelow the measured pH below which such a crop may be limed
 * @param ureaBelowPh the pH below which urea replaces ammonium sulphate, where that is told
 * @param schools published ways to reckon its need; the first is the default
 * @param cultivars tables for cultivars whose names start with given words
 * @param planting tables for the ground before planting
 * @param chlorideFreeAbove K2O in g/m² above which potash must be free of chloride
 * @param exclude tags of materials that it must not get, with the reason
 */
@Notes("perAge")
public record FeedingProfile(Figure targetPh, boolean acidSoil, Optional<Figure> limeOnlyBelow,
        Optional<Figure> ureaBelowPh, List<School> schools, List<Cultivars> cultivars, Map<Nutrient, String> planting,
        String timing, Optional<Figure> chlorideFreeAbove, List<Excluded> exclude) {

    /**
     * One published way to reckon the need.
     *
     * @param tables the table's id by nutrient; a nutrient that is not named has no published need
     */
    public record School(String id, String name, Map<Nutrient, String> tables) {}

    /** Cultivars whose names start with one of {@code starts} take nitrogen by another table. */
    public record Cultivars(List<String> starts, @Key("N") String nitrogenTable) {}

    /** Materials with {@code tag} are not given, because of {@code reason}. */
    @Notes("seen")
    public record Excluded(String tag, String reason, List<String> sources) {}

    /** The crop's section; empty where neither the crop nor the one it is like has one. */
    public static Optional<FeedingProfile> of(Crop crop) {
        return crop.section("feeding", FeedingProfile.class, FeedingProfile::read);
    }

    static FeedingProfile read(Fields fields) {
        fields.count("format", 1, 1);
        List<School> schools = fields.objects("schools").stream()
                .map(each -> new School(each.text("id"), each.text("name"), tables(each))).toList();
        Map<Nutrient, String> planting = fields.object("planting").map(FeedingProfile::tables).orElse(Map.of());
        return RecordReader.read(fields, FeedingProfile.class, Map.of("schools", schools, "planting", planting));
    }

    private static Map<Nutrient, String> tables(Fields fields) {
        Map<Nutrient, String> tables = new EnumMap<>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            fields.optionalText(nutrient.symbol()).ifPresent(id -> tables.put(nutrient, id));
        }
        return tables;
    }

    /** The tables that it names. */
    Stream<String> tableIds() {
        return Stream.of(schools.stream().flatMap(school -> school.tables().values().stream()),
                planting.values().stream(), cultivars.stream().map(Cultivars::nitrogenTable))
                .flatMap(Function.identity());
    }

    public Optional<School> school(String id) {
        return schools.stream().filter(school -> school.id().equals(id)).findFirst();
    }

    /** Why a material with these tags must not be given; empty where nothing speaks against it. */
    public Optional<Excluded> excludes(List<String> tags) {
        return exclude.stream().filter(each -> tags.contains(each.tag())).findFirst();
    }

    Optional<String> nitrogenTableFor(String cultivar) {
        return cultivars.stream().filter(group -> group.starts().stream().anyMatch(cultivar::startsWith))
                .map(Cultivars::nitrogenTable).findFirst();
    }
}
