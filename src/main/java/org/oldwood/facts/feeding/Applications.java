package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.craft.feeding.Winter;
import org.oldwood.craft.feeding.liming.Lime;
import org.oldwood.craft.mulching.Mulch;
import org.oldwood.craft.mulching.MulchLayer;
import org.oldwood.garden.BedState;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * What was given to a bed, or to plants in it, turned into nutrients per square metre: feeds, the magnesia of dolomitic
 * lime, and what a mulch of compost or manure brings in its first season.
 */
public record Applications(FeedingBooks books, Hemisphere hemisphere) {
    private static final double KG_TO_G = 1000;
    private static final double CM_PER_M = 100;

    private static final String LEFT = ", of whose nitrogen winter leaves about %s %% (assumed)";
    static final String AS_PLANNED = " (as planned, not measured)";

    /**
     * One thing given.
     *
     * @param date the day
     * @param season the season whose crop it feeds
     * @param name the material's name; its id where it is not known
     * @param gPerM2 grams a square metre; for mulch the new layer's weight
     * @param areaM2 the ground it was spread on, m²
     * @param plant the plant that alone got it; empty where the whole bed did
     * @param now nutrients that count in its own season, g/m²
     * @param next nutrients that count in the season after, g/m²
     * @param known whether the material is known, so that its nutrients count
     * @param notRead which figures of the material were never read, each with its mark
     */
    public record Given(LocalDate date, Season season, EntryKind kind, String material, String name, String amount,
            double gPerM2, double areaM2, Optional<String> plant, Nutrients now, Nutrients next, boolean known,
            List<String> notRead) {
        String inWords() {
            return "%s %s, %s%s".formatted(date, name, amount,
                    known ? ": " + FeedPlan.inWords(now) + " g/m²" : ": not known, not counted");
        }
    }

    /** All that was given to the whole bed, oldest first. */
    public List<Given> toBed(BedState bed) {
        return bed.entries().stream().flatMap(entry -> given(entry, bed.bed().areaM2(), bed).stream()).toList();
    }

    /** What was given to plants alone that share so much ground, oldest first. */
    public List<Given> toPlants(BedState bed, List<Entry> entries, double areaM2) {
        return entries.stream().filter(entry -> entry.kind() == EntryKind.FED && entry.text("plant").isPresent())
                .flatMap(entry -> given(entry, areaM2, bed).stream()).toList();
    }

    private Optional<Given> given(Entry entry, double areaM2, BedState bed) {
        Optional<String> material = entry.text("material");
        if (material.isEmpty()) { return Optional.empty(); }
        double grams = entry.number("grams").orElse(0);
        return switch (entry.kind()) {
            case FED -> Optional.of(fed(entry, material.get(), grams, areaM2, bed));
            case LIMED -> {
                Optional<Lime> lime = books.materials().lime(material.get());
                double mgo = lime.map(each -> each.mgoIn(grams / areaM2)).orElse(0.0);
                Nutrients now = new Nutrients(0, 0, 0, mgo);
                yield Optional.of(plain(entry, lime.map(Lime::name), grams, areaM2, now));
            }
            case ACIDIFIED -> {
                Optional<String> name = books.materials().acidifier(material.get()).map(each -> each.name());
                yield Optional.of(plain(entry, name, grams, areaM2, Nutrients.NONE));
            }
            case MULCHED -> Optional.of(mulched(entry, material.get(), bed));
            default -> Optional.empty();
        };
    }

    /** Lime or an acidifier, with what it brings of nutrients. */
    private Given plain(Entry entry, Optional<String> name, double grams, double areaM2, Nutrients now) {
        return given(entry, name, Words.weight(grams), grams / areaM2, areaM2, now, Optional.empty());
    }

    /** Share of a feed's nitrogen that the winter before its crop leaves in the bed, 0 to 1. */
    double keeps(Feed feed, LocalDate day, BedState bed) {
        Winter winter = books.tables().winter();
        return winter.keeps(feed, day, winter.feeds(day, hemisphere),
                books.tables().soils().nitrogen(bed.bed().texture()));
    }

    private Given fed(Entry entry, String material, double grams, double areaM2, BedState bed) {
        Optional<Feed> feed = books.materials().feed(material);
        double keeps = feed.map(each -> keeps(each, entry.date(), bed)).orElse(1.0);
        String amount = Words.weight(grams) + (keeps < 1 ? LEFT.formatted(Words.whole(100 * keeps)) : "");
        Nutrients now = feed.map(each -> each.gives(grams / areaM2)).map(all -> all.withN(all.n() * keeps))
                .orElse(Nutrients.NONE);
        return given(entry, feed.map(Feed::name), amount, grams / areaM2, areaM2, now, feed);
    }

    private Given given(Entry entry, Optional<String> name, String amount, double gPerM2, double areaM2, Nutrients now,
            Optional<Feed> feed) {
        String material = entry.needed("material");
        return new Given(entry.date(), books.tables().winter().feeds(entry.date(), hemisphere), entry.kind(), material,
                name.orElse(material), entry.planned() ? amount + AS_PLANNED : amount, gPerM2, areaM2,
                entry.kind() == EntryKind.FED ? entry.text("plant") : Optional.empty(), now, nextYear(feed, gPerM2),
                name.isPresent(), feed.map(Feed::notRead).orElse(List.of()));
    }

    /** Of organic materials a share of all their nitrogen comes in the second year (RB209 section 2, page 9), g/m². */
    private Nutrients nextYear(Optional<Feed> feed, double gPerM2) {
        double share = books.tables().limits().residualShare().is();
        return feed.filter(Feed::organic).map(each -> Nutrients.NONE.withN(each.holds(gPerM2).n() * share))
                .orElse(Nutrients.NONE);
    }

    /** The new layer is what lies there now less what was left of the layer before. */
    private Given mulched(Entry entry, String material, BedState bed) {
        Optional<Mulch> mulch = books.mulches().mulch(material);
        double depth = entry.number("depthCm").orElse(0);
        double fresh = Math.max(0, depth - depthBefore(entry, bed));
        double grams = mulch.map(each -> fresh / CM_PER_M * each.density().is() * KG_TO_G).orElse(0.0);
        Optional<Feed> feed = mulch.flatMap(Mulch::asFeed).flatMap(books.materials()::feed);
        return given(entry, mulch.map(Mulch::name), Words.amount(depth) + " cm deep", grams, bed.bed().areaM2(),
                feed.map(each -> each.gives(grams)).orElse(Nutrients.NONE), feed);
    }

    private double depthBefore(Entry entry, BedState bed) {
        double before = 0;
        for (Entry earlier : bed.entries()) {
            if (earlier.id().equals(entry.id())) { break; }
            if (earlier.kind() == EntryKind.MULCHED) {
                before = layer(earlier).map(each -> each.depthOn(entry.date())).orElse(0.0);
            }
        }
        return before;
    }

    /** The layer that an entry tells of; empty where its material is not known. */
    public Optional<MulchLayer> layer(Entry mulched) {
        return mulched.text("material").flatMap(books.mulches()::mulch)
                .map(mulch -> new MulchLayer(mulch, mulched.number("depthCm").orElse(0), mulched.date()));
    }

    /** What was given within a season counts in it, g/m². */
    static Nutrients given(List<Given> given, Season season) {
        return given.stream().filter(each -> season.equals(each.season)).map(Given::now).reduce(Nutrients.NONE,
                Nutrients::plus);
    }

    /** How much of which material was fed within a season, g/m². */
    static Map<String, Double> materials(List<Given> given, Season season) {
        return given.stream().filter(each -> season.equals(each.season) && each.kind == EntryKind.FED)
                .collect(Collectors.groupingBy(Given::material, Collectors.summingDouble(Given::gPerM2)));
    }

    /**
     * What earlier seasons left to one: nitrogen of organic materials of the season before, and what was more than
     * needed of the others since the soil was last tested, which shows the rest.
     *
     * @param need the need of a season, g/m²
     */
    Nutrients left(List<Given> given, Season season, Need need, LocalDate tested) {
        List<Given> since = given.stream().filter(each -> each.date.isAfter(tested)).toList();

        double n = given.stream().filter(each -> season.plus(-1).equals(each.season)).mapToDouble(each -> each.next.n())
                .sum();
        Nutrients carried = Nutrients.NONE;
        for (int back = (int) books.tables().limits().soilTestEvery().high(); back > 0; back--) {
            carried = carried.plus(given(since, season.plus(-back))).minus(need.gPerM2()).atLeastZero()
                    .times(books.tables().limits().carried());
        }
        Nutrients all = carried;
        return Nutrients.each(nutrient -> need.known().contains(nutrient) ? all.of(nutrient) : 0).withN(n);
    }
}
