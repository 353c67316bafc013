package org.oldwood.facts.cuttings;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.oldwood.craft.cuttings.Course;
import org.oldwood.craft.cuttings.parent.ParentHealth;
import org.oldwood.craft.cuttings.parent.ParentWood;
import org.oldwood.craft.pruning.Bush;
import org.oldwood.craft.pruning.Cut;
import org.oldwood.craft.pruning.Why;
import org.oldwood.facts.pruning.PruningCase;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;
import org.oldwood.words.Words;

/**
 * What the garden's own bushes can give in cuttings: the good one-year shoots that this winter's cut list takes out of
 * each, since those it leaves are the bush's next stems; and the health of each.
 *
 * @param bushes all bushes of the crop that stand, in the order of the record
 * @param forTwo what longer shoots give; empty where not known
 */
public record ParentStock(List<ParentBush> bushes, Optional<String> forTwo) {
    private static final List<String> HARDWOOD = List.of("hardwood", "disbudded");

    /** A count of shoots this many days before a season still tells of it. */
    private static final int SINCE = 150;

    /**
     * Bushes of one crop as parents by a method.
     *
     * @param cases each bush as the pruning craft sees it in that season
     */
    public static ParentStock of(Collection<PlantState> plants, Function<PlantState, Optional<PruningCase>> cases,
            LotBook book, Course course, Season season) {
        return new ParentStock(plants.stream().map(plant -> bush(plant, cases, book, course, season)).toList(),
                HARDWOOD.contains(course.method().id())
                        ? ParentWood.forTwoCm(course.method().measures())
                                .map(cm -> "A shoot of " + Words.whole(cm) + " cm or more gives two, not counted here.")
                        : Optional.empty());
    }

    /** In words: {@code bc-1 3, bc-2 0, bc-3 not known}; bushes that are not fit are left out. */
    public String each() {
        return bushes.stream().filter(ParentBush::fit)
                .map(bush -> "%s %s".formatted(bush.plant(),
                        bush.cuttings().isPresent() ? Integer.toString(bush.cuttings().getAsInt()) : "not known"))
                .collect(Collectors.joining(", "));
    }

    /** Cuttings that all fit bushes give, as far as known. */
    public int known() {
        return bushes.stream().mapToInt(bush -> bush.cuttings().orElse(0)).sum();
    }

    /** Whether every fit bush's wood is known. */
    public boolean allKnown() {
        return bushes.stream().allMatch(bush -> bush.cuttings().isPresent());
    }

    /** Whether any bush may be taken from. */
    public boolean anyFit() {
        return bushes.stream().anyMatch(ParentBush::fit);
    }

    private static ParentBush bush(PlantState plant, Function<PlantState, Optional<PruningCase>> cases, LotBook book,
            Course course, Season season) {
        Optional<ParentHealth> health = book.health(plant);
        List<String> warnings = health.map(ParentHealth::warnings).orElse(List.of()).stream()
                .map(ParentHealth.Warning::words).toList();
        String id = plant.plant().id();
        if (!health.map(ParentHealth::fit).orElse(true)) {
            return new ParentBush(id, false, OptionalInt.of(0), "none", warnings);
        }
        Wood wood = switch (course.method().id()) {
            case "hardwood", "disbudded" -> shoots(plant, cases, season);
            case "tip-layer" -> tips(plant, season);
            default -> new Wood(OptionalInt.empty(), UNCOUNTED);
        };
        return new ParentBush(id, true, wood.number(), wood.words(), warnings);
    }

    /** Soft shoots, branches, suckers, roots and crowns are in no count of the record. */
    private static final String UNCOUNTED = "not known: the record does not count the wood for this method; look at the plants";

    /** A number of cuttings and how it came about. */
    private record Wood(OptionalInt number, String words) {
        static Wood of(int number, String words) { return new Wood(OptionalInt.of(number), words); }
    }

    private static Wood shoots(PlantState plant, Function<PlantState, Optional<PruningCase>> cases, Season season) {
        Optional<Entry> noted = shootsNoted(plant, season);
        if (noted.isPresent()) {
            int number = noted.get().count("shoots").orElse(0);
            return Wood.of(number, number + " good shoots to spare, noted " + noted.get().date());
        }
        Optional<PruningCase> one = cases.apply(plant);
        if (one.isEmpty() || !one.get().form().craft().equals("renewal")) { return unknown(false); }
        Optional<Bush> bush = one.get().bush();
        return bush.isPresent() && bush.get().stems().knows(1) ? fromCut(plant, one.get(), season) : unknown(true);
    }

    /** The last count of shoots that still tells of the season. */
    private static Optional<Entry> shootsNoted(PlantState plant, Season season) {
        return Entries.last(plant.entries(), EntryKind.COUNTED,
                entry -> entry.count("shoots").isPresent() && entry.date().isAfter(season.start().minusDays(SINCE)));
    }

    private static Wood tips(PlantState plant, Season season) {
        return Entries
                .last(plant.entries(), EntryKind.CANES,
                        entry -> season.contains(entry.date()) && entry.count("fresh").isPresent())
                .map(entry -> Wood.of(entry.count("fresh").orElse(0),
                        "new canes counted " + entry.date() + ", one tip each; the canes stay"))
                .orElseGet(() -> new Wood(OptionalInt.empty(), "not known: note canes --fresh in summer"));
    }

    private static Wood unknown(boolean wantsCount) {
        return new Wood(OptionalInt.empty(),
                wantsCount
                        ? "not known: the one-year shoots of that winter are not counted; note counted when the leaves"
                                + " are off, --stems 1=…,2=…,3=…,4+=…"
                        : "not known: stems by age do not tell the one-year shoots of this form; count those that"
                                + " pruning takes off anyway, and note them with note counted … --shoots");
    }

    private static Wood fromCut(PlantState plant, PruningCase one, Season season) {
        Cut cut = one.cut();
        int each = cut.taken().stream().filter(taken -> taken.age() == 1 && taken.why() == Why.CROWDED)
                .mapToInt(Cut.Taken::number).sum();
        int number = each * plant.plant().bushes();
        String pruned = Entries.last(plant.entries(), EntryKind.PRUNED).filter(entry -> season.contains(entry.date()))
                .map(entry -> "; it was pruned %s, and what came out then counts only if it was kept cool and moist"
                        .formatted(entry.date()))
                .orElse("");
        return Wood.of(number, "%s of %s one-year shoots come out in this winter's cut; the others are its next stems%s"
                .formatted(number, cut.before().at(1) * plant.plant().bushes(), pruned));
    }

    /**
     * A bush of the garden as a parent of cuttings.
     *
     * @param fit false where its health bars it
     * @param cuttings cuttings that its wood gives beside what the bush needs itself; empty where that is not known; 0
     *     where the bush is not fit
     * @param words how that number came about, or what to note so that it is known
     */
    public record ParentBush(String plant, boolean fit, OptionalInt cuttings, String words, List<String> warnings) {}
}
