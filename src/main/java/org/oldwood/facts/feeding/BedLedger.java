package org.oldwood.facts.feeding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.crop.Crops;
import org.oldwood.garden.Bed;
import org.oldwood.garden.BedState;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Season;

/**
 * All that was ever given to one bed: feeds, lime, acidifiers and mulch, with the nutrients that they bring, and the
 * sums by season. A plain record for commands and sheets to show.
 *
 * @param lines what was given, oldest first
 * @param seasons the sums, oldest first; only seasons in which something counts
 */
public record BedLedger(Bed bed, List<Applications.Given> lines, List<Sum> seasons) {

    /**
     * What counts in one season, on the whole area of the bed; what one plant got is spread over it.
     *
     * @param given nutrients of what was given in it, g/m²
     * @param left nutrients that the season before left, g/m²
     * @param limestone lime given, as ground limestone, g/m²
     * @param sulphur acidifiers given, as elemental sulphur, g/m²
     */
    public record Sum(Season season, Nutrients given, Nutrients left, double limestone, double sulphur) {}

    public static List<BedLedger> all(FeedingBooks books, GardenState state, Crops crops) {
        return state.beds().values().stream().map(bed -> of(books, state, crops, bed)).toList();
    }

    /** The ledger of one bed; without lines where nothing was ever given. */
    public static BedLedger of(FeedingBooks books, GardenState state, Crops crops, BedState bed) {
        Applications applications = new Applications(books, state.garden().hemisphere());
        List<Applications.Given> given = new ArrayList<>(applications.toBed(bed));
        state.plants().values().stream().filter(plant -> plant.plant().bed().equals(bed.bed().id())).forEach(
                plant -> given.addAll(applications.toPlants(bed, plant.entries(), Grounds.ofOne(bed, plant, crops))));
        given.sort(Comparator.comparing(Applications.Given::date));
        Map<Season, Sum> sums = new TreeMap<>();
        for (Applications.Given each : given) {
            Season season = each.season();
            sums.merge(season, of(books, season, each, bed), BedLedger::plus);
            if (each.next().sum() > 0) {
                sums.merge(season.plus(1),
                        new Sum(season.plus(1), Nutrients.NONE, each.next().times(share(each, bed)), 0, 0),
                        BedLedger::plus);
            }
        }
        return new BedLedger(bed.bed(), List.copyOf(given), List.copyOf(sums.values()));
    }

    private static Sum of(FeedingBooks books, Season season, Applications.Given each, BedState bed) {
        return new Sum(season, each.now().times(share(each, bed)), Nutrients.NONE,
                each.kind() == EntryKind.LIMED ? books.asLimestone(each.material(), each.gPerM2()) : 0,
                each.kind() == EntryKind.ACIDIFIED ? books.asSulphur(each.material(), each.gPerM2()) : 0);
    }

    private static double share(Applications.Given each, BedState bed) { return each.areaM2() / bed.bed().areaM2(); }

    private static Sum plus(Sum a, Sum b) {
        return new Sum(a.season, a.given.plus(b.given), a.left.plus(b.left), a.limestone + b.limestone,
                a.sulphur + b.sulphur);
    }
}
